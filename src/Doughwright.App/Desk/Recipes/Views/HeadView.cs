using Doughwright.App.Desk.Preview;
using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Desk.Standing;
using Doughwright.Engine.Quantities;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>The head of a recipe's page.</summary>
/// <param name="Facts">What it makes, in a sentence.</param>
/// <param name="Beside">Address at which two kitchens are set side by side.</param>
/// <param name="Size">Address at which it is brought to another size.</param>
/// <param name="Swaps">Address at which something is swapped.</param>
/// <param name="Page">Address of the page for readers.</param>
/// <param name="States">Address of its states, where the one it is in is kept.</param>
/// <param name="Write">Address at which it is written.</param>
public sealed record HeadView(string Title, Told Facts, string Beside, string Size, string Swaps, string Page, string States, string Write)
{
    /// <summary>How it stands and when it was last baked; where nothing is said of it, that this can be said.</summary>
    public required string Standing { get; init; }

    /// <summary>Where that is said.</summary>
    public required string StandingAddress { get; init; }

    /// <summary>Longer titles are set smaller, so that they do not fill the page.</summary>
    private const int LongestLarge = 80;

    /// <summary>Class of the size it is set in; null for the usual one.</summary>
    public string? Lettering => LetteringOf(Title);

    internal static string? LetteringOf(string title) => title.Length > LongestLarge ? "lengthy" : null;

    internal static HeadView Of(Figures figures)
    {
        var (state, voice) = (figures.State, figures.Voice);
        var formula = figures.Here.Formula;
        var dough = figures.Weight(formula.Dough, "formula.doughGrams") with { Strong = true };
        var flour = figures.Weight(formula.Flour, "formula.flourGrams") with { Strong = true };
        var facts = state.Recipe.Make is { } make
            ? Told.Say(
                voice,
                "recipe.facts",
                ("pieces", new Fig(Show.Number(make.Pieces, 0), make.Pieces, "formula.pieces") { Strong = true }),
                ("what", make.What),
                ("piece", figures.Weight(make.PieceMass, "formula.pieceGrams") with { Strong = true }),
                ("dough", dough),
                ("flour", flour))
            : Told.Say(voice, "recipe.facts-dough", ("dough", dough), ("flour", flour));
        var address = $"/recipes/{Uri.EscapeDataString(state.File.Name)}";
        return new(
            state.Recipe.Title,
            facts,
            $"{address}/kitchens{state.Setting.Question.Query()}",
            ShelfAddress.InMeasures($"{address}/size", voice),
            ShelfAddress.InMeasures($"{address}/swaps", voice),
            PageAddress.Of(state.File.Name, state.Setting.Question),
            ShelfAddress.InMeasures($"{address}/states", voice),
            ShelfAddress.InMeasures($"{address}/write", voice))
        {
            Standing = Standings.Words(state.File.Said, voice) ?? voice.Words["standing.link"],
            StandingAddress = ShelfAddress.OfStanding(state.File.Name, voice),
        };
    }
}
