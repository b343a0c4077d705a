using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Measures;

/// <summary>A weight in what a US kitchen measures by: eggs, sticks, cups, spoons. Only what the larder has weighed of that ingredient.</summary>
internal static class Spoons
{
    /// <summary>How far a printed measure may lie from the weight: a level spoon is no nearer than that. Common practice, no source.</summary>
    private const double LargestError = 0.08;

    private const string Large = "large";

    private static readonly (double Part, string Mark)[] Wholes = [(0, ""), (1, "")];
    private static readonly (double Part, string Mark)[] Halves = [(0, ""), (0.5, "½"), (1, "")];
    private static readonly (double Part, string Mark)[] Quarters = [(0, ""), (0.25, "¼"), (0.5, "½"), (0.75, "¾"), (1, "")];
    private static readonly (double Part, string Mark)[] CupMarks = [(0, ""), (0.25, "¼"), (1.0 / 3, "⅓"), (0.5, "½"), (2.0 / 3, "⅔"), (0.75, "¾"), (1, "")];

    /// <summary>Measures in the order in which they are tried, with the parts of them that can be measured and the most that anybody counts.</summary>
    private static readonly (string Unit, (double Part, string Mark)[] Parts, double Most)[] Sizes =
        [(Large, Wholes, 12), ("stick", Halves, 8), ("US cup", CupMarks, 12), ("tbsp", Halves, 8), ("tsp", Quarters, 6)];

    /// <summary>Conditions that leave a cup of something as heavy as it is. A cup of mash is another cup than one of pieces.</summary>
    private static readonly string[] Harmless = ["soft", "softened", "cold", "warm", "raw", "boiled", "cooked", "baked", "peeled", "fresh"];

    /// <summary>What a US kitchen does not have in its drawer, whatever the larder knows of it.</summary>
    private static readonly string[] Elsewhere = ["metric ", "Australian ", "imperial ", "ml", "cl", "dl", "l"];

    /// <summary>Whether a US kitchen measures by this too: a tablespoon of 20 ml and a European egg are other things there.</summary>
    public static bool Has(Household? household, Ingredient ingredient, Larder larder) =>
        household is { } typed
        && !Elsewhere.Any(unit => unit.EndsWith(' ') ? typed.Unit.StartsWith(unit, StringComparison.Ordinal) : typed.Unit == unit)
        && larder.MeasureOf(ingredient, typed.Unit, Region.UnitedStates).Measure is { } measure
        && (measure.Regions.Count == 0 || measure.Regions.Contains(Region.UnitedStates));

    /// <summary>"2½ tbsp", "1 large", "2⅓ cups"; null where no measure is known or none comes near enough.</summary>
    /// <param name="conditions">As the line has them: what changes how it lies in a cup must stand in the larder's measure.</param>
    public static string? Of(Mass mass, Ingredient ingredient, IEnumerable<string> conditions, Larder larder, Words words)
    {
        var form = string.Concat(conditions.Except(Harmless).Select(condition => " " + condition));
        foreach (var (unit, parts, most) in Sizes)
        {
            // A large tomato is no measure for cherry tomatoes; eggs are sold by their size.
            if (unit == Large && ingredient.Role != Role.Egg)
            {
                continue;
            }

            // A spoon that was weighed of something else is good enough to read an author's, not to tell a reader to put the scale away.
            if (larder.MeasureOf(ingredient, unit + form, Region.UnitedStates) is { Measure: { Evidence.Obtained: not "proxy" } measure }
                && Nearest(mass / measure.Mass, parts, most) is var (number, one))
            {
                return Said(number, one, unit, measure, words);
            }
        }

        return null;
    }

    /// <summary>The nearest count that can be measured, and whether it is one or less.</summary>
    internal static (string Number, bool One)? Nearest(double count, (double Part, string Mark)[] parts, double most)
    {
        if (count > most)
        {
            return null;
        }

        var floor = Math.Floor(count);
        var (part, mark) = parts.MinBy(each => Math.Abs(floor + each.Part - count));
        var shown = floor + part;
        var wholes = part == 1 ? floor + 1 : floor;
        return shown > 0 && Math.Abs(shown - count) <= LargestError * count
            ? ((wholes > 0 ? Show.Number(wholes, 0) : "") + mark, shown <= 1)
            : null;
    }

    private static string Said(string number, bool one, string unit, Measure measure, Words words)
    {
        var voice = new Voice(words, MeasureSystem.Us);
        var name = words[(one ? "page.unit." : "page.units.") + unit.Replace(' ', '-').ToLowerInvariant()];
        // "sifted" and "packed" weigh differently, so the larder's word for it stands beside the cup.
        var at = measure.Unit.IndexOf(unit, StringComparison.Ordinal);
        var form = at < 0 ? "" : measure.Unit[(at + unit.Length)..].Trim();
        return form.Length == 0 ? voice.Say("page.measure", ("number", number), ("unit", name)) : voice.Say("page.measure-form", ("number", number), ("unit", name), ("form", form));
    }
}
