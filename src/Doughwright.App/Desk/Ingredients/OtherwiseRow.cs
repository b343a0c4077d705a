using Doughwright.App.Desk.States;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>A recipe in which an own ingredient is otherwise than in the book.</summary>
/// <param name="Recipe">Name of its text.</param>
/// <param name="State">The state of it that is shown.</param>
/// <param name="Differs">What is otherwise, in a few words.</param>
/// <param name="Thirst">What to know of the water; null where nothing is.</param>
/// <param name="Verb">What its button does.</param>
public sealed record OtherwiseRow(string Recipe, long State, string Title, string Address, string Differs, string? Thirst, string Verb)
{
    /// <summary>What its button sends: the state that is shown, and the recipe.</summary>
    public string Sent => FormattableString.Invariant($"{State}:{Recipe}");

    /// <summary>What a button sent.</summary>
    internal static (string Recipe, long? Shown) Read(string sent)
    {
        var halves = sent.Split(':', 2);
        return halves.Length == 2 ? (halves[1], RecipeStates.Number(halves[0])) : (sent, null);
    }

    internal static OtherwiseRow Of(Holding holding, OwnIngredient own, Voice voice) => new(
        holding.Recipe,
        holding.State,
        holding.Title,
        "/recipes/" + Uri.EscapeDataString(holding.Recipe),
        holding.Differs(own, voice),
        holding.Thirst(own, voice),
        voice.Words[holding.Held is null ? "larder.take-in" : "larder.bring"]);
}
