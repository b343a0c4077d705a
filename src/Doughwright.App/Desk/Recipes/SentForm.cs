using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.Telling;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Recipes;

/// <summary>The sentence of a page as a browser without script sends it: every field as it stands in it, changed or not.</summary>
/// <param name="Before">What was asked when the page was made.</param>
/// <param name="Shown">What stood in the fields then.</param>
/// <param name="Sent">What stands in them now.</param>
internal sealed record SentForm(Question Before, Question Shown, Question Sent)
{
    public const string BeforeName = "before";
    public const string ShownName = "shown";

    /// <summary>Null for an address that no form made.</summary>
    public static SentForm? Of(string query)
    {
        var values = QueryHelpers.ParseQuery(query);
        return values.TryGetValue(BeforeName, out var before)
            ? new(Question.Of(before.ToString()), Question.Of(values.GetValueOrDefault(ShownName).ToString()), Question.Of(query, BeforeName, ShownName))
            : null;
    }

    /// <summary>What stands in the fields of sentences, as the query of an address.</summary>
    public static string Standing(params ReadOnlySpan<Told> sentences)
    {
        var shown = Question.Nothing;
        foreach (var sentence in sentences)
        {
            foreach (var input in sentence.Pieces.OfType<Piece.Input>())
            {
                shown = shown.With(input.Field.Option, input.Field.Text);
            }
        }

        return shown.Query();
    }

    /// <summary>Sets on the desk what was changed, as a person with script does, and gives the address that shows it; a refused value stands there to be refused.</summary>
    public async Task<string> Apply(RecipeDesk desk, string name)
    {
        desk.Open(name, Before, MeasureNames.Of(Before.First(Question.Measures)));
        foreach (var (option, value) in Sent.Items.Where(item => item.Value != Shown.First(item.Name)))
        {
            if (option != Question.Kitchen)
            {
                await desk.Set(option, value);
            }
            else if (value != (Before.First(Question.Kitchen) ?? ""))
            {
                await desk.Pick(value.Length == 0 ? null : value);
            }
        }

        return desk.AddressWithRefusals;
    }
}
