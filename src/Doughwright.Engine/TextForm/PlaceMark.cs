using System.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>The fingerprint of one place of a recipe: it changes when what stands there changes, and with nothing else.</summary>
internal static class PlaceMark
{
    private const int Digits = 12;

    /// <summary>
    /// The mark of a place such as "steps.mix" or "parts.dough.salt". A place deeper than the text goes is that of what it stands in; the empty
    /// place is the whole recipe.
    /// </summary>
    public static string Of(Recipe recipe, string place)
    {
        TextNode node = RecipeWriter.Write(recipe with { Accepted = [] });
        var path = new StringBuilder();
        foreach (var name in place.Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            if (node is not TextMapping mapping || mapping.Entries.FirstOrDefault(entry => Slug.Of(entry.Key) == name) is not { } entry)
            {
                break;
            }

            path.Append(name).Append('.');
            node = entry.Value;
        }

        Tell(node, path);
        return StateId.OfText(path.ToString())[..Digits];
    }

    private static void Tell(TextNode node, StringBuilder text)
    {
        switch (node)
        {
            case TextScalar scalar:
                text.Append(scalar.Text).Append('\n');
                break;
            case TextList list:
                foreach (var item in list.Items)
                {
                    text.Append("- ").Append(item.Value.Text).Append('\n');
                }

                break;
            case TextMapping mapping:
                foreach (var entry in mapping.Entries)
                {
                    text.Append(entry.Key).Append(":\n");
                    Tell(entry.Value, text);
                }

                break;
        }
    }
}
