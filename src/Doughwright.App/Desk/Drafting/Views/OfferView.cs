using Doughwright.Engine.Editing;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>A row of the list under a line that is being typed.</summary>
/// <param name="Name">What it is; empty for the row that takes what is typed as it stands.</param>
/// <param name="Brings">What it would bring into the recipe, in words.</param>
/// <param name="Typed">What stands in the field once it is taken; null for the row that adds what is typed.</param>
public sealed record OfferView(string Name, string Brings, string? Typed)
{
    /// <summary>What an ingredient of the author's own would be called, for the row that leads to where one is written; null for the others.</summary>
    public string? Own { get; private init; }

    private const int Shown = 2;
    private const double Least = 1;
    private const double Whole = 100;

    internal static IReadOnlyList<OfferView> All(Recipe recipe, string part, string typed, Voice voice)
    {
        var offers = LineOffers.For(recipe, part, typed);
        var rows = offers.Select(offer => new OfferView(offer.Name, Says(offer, voice), offer.Typed)).ToList();
        // What is called so already needs no row of its own.
        if (LineOffers.CanStand(recipe, part, typed) && !offers.Any(offer => LineOffers.IsNamed(recipe, typed, offer)))
        {
            rows.Add(new("", voice.Words["offer.as-written"], null));
            var name = LineOffers.NameIn(recipe, typed);
            rows.Add(new("", voice.Say("offer.own", ("name", name)), null) { Own = name });
        }

        return rows;
    }

    private static string Says(LineOffer offer, Voice voice) => offer switch
    {
        { IsThere: true, Line: { IsMassKnown: true } line } => voice.Say("offer.there", ("weight", line.Mass)),
        { IsThere: true } => voice.Words["offer.there-unweighed"],
        { Part: not null, Line: { Source.Mass: not null, Percent: { } percent } } => voice.Say("offer.part-share", ("percent", percent)),
        { Part: not null, Line: { } line } => voice.Say("offer.part", ("weight", line.Mass)),
        { Ingredient: { } row, Line: { IsMassKnown: true } line } => Brought(row, line, voice),
        { Ingredient: { HasFigures: true } row } when Parts(row, Whole, voice) is { Count: > 0 } parts =>
            voice.Say("offer.holds", ("parts", string.Join(", ", parts)), ("role", voice.Member(row.Role))),
        { Ingredient: { } row } => voice.Say("offer.name-only", ("role", voice.Member(row.Role))),
        _ => "",
    };

    private static string Brought(Ingredient row, LineFormula line, Voice voice)
    {
        var role = voice.Member(line.Role ?? row.Role);
        var parts = string.Join(", ", Parts(row, line.Mass.Grams, voice));
        return line.Percent is not { } percent ? voice.Say("offer.brings-weight", ("weight", line.Mass), ("role", role))
            : parts.Length == 0 ? voice.Say("offer.brings-share", ("percent", percent), ("role", role))
            : voice.Say("offer.brings", ("percent", percent), ("parts", parts), ("role", role));
    }

    /// <summary>The most of what it holds. A flour's own moisture is no water, as bakers count.</summary>
    private static IReadOnlyList<string> Parts(Ingredient row, double grams, Voice voice)
    {
        var holds = row.Composition;
        (string Key, double? Share)[] all = row.Role == Role.Flour
            ? [("protein", holds.Protein), ("fat", holds.Fat)]
            : [("water", holds.Water), ("fat", holds.Fat), ("sugars", holds.Sugars), ("salt", holds.Salt), ("alcohol", holds.Alcohol)];
        return
        [
            .. all.Where(one => one.Share >= Least).OrderByDescending(one => one.Share).Take(Shown)
                .Select(one => voice.Say("offer." + one.Key, ("weight", Mass.FromGrams(grams * one.Share!.Value / Whole)))),
        ];
    }
}
