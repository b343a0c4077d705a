using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Ingredients;
using Phrase = Doughwright.Engine.Ingredients.Phrase;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>Finds the lines a wish means: by name, by what the larder makes of the name, or by the words in it.</summary>
internal static class WishTargets
{
    public static IReadOnlyList<(ComponentFormula Component, LineFormula Line)> Of(Formula formula, Wish wish)
    {
        var lines = formula.Lines().Where(at => at.Line.Source.Uses is null && IsIn(at.Component, wish.Part)).ToArray();
        var (name, conditions) = StandIn.Halves(wish.What);
        var id = Slug.Of(name);
        if (id.Length == 0)
        {
            return [];
        }

        var row = formula.Larder.Find(name, conditions).Ingredient;
        var named = lines.Where(at => at.Line.Id == id || Slug.Of(at.Line.Name) == id || (row is not null && at.Line.Ingredient?.Id == row.Id)).ToArray();
        if (named.Length > 0)
        {
            return named;
        }

        // "flour" means the strong white flour, as long as there is no other.
        var words = Phrase.Words(name);
        return [.. lines.Where(at => Phrase.Words(at.Line.Name) is var written && words.All(written.Contains))];
    }

    private static bool IsIn(ComponentFormula component, string? part) =>
        part is null || Slug.Of(part) is var id && (component.Id == id || Slug.Of(component.Name) == id);
}
