using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// What the author weighed after cooking holds more or less water than the table says. Says how much water keeps the dough as it
/// would be with the table's figure; nothing is changed.
/// </summary>
internal static class WeighedWater
{
    private const double WorthSayingGrams = 0.5;

    public static IEnumerable<Finding> Check(Formula formula)
    {
        foreach (var at in formula.Lines().Where(at => at.Line.Source.Weighed is not null && at.Component.ShareInDough > 0))
        {
            // Where only the raw row is known there is no cooked figure to compare with.
            if (at.Line.Composition.Water is not { } weighed || at.Line.Ingredient is not { } row || row.Composition.Water is not { } table
                || formula.Larder.RawOf(row) is null)
            {
                continue;
            }

            var missingGrams = at.Line.Mass.Grams * at.Component.ShareInDough * (table - weighed) / 100;
            if (Math.Abs(missingGrams) >= WorthSayingGrams)
            {
                yield return at.About(
                    missingGrams > 0 ? "weighed-drier" : "weighed-wetter",
                    Grade.Hint,
                    ("name", at.Line.Name),
                    ("weighed", Percent.FromValue(weighed)),
                    ("table", Percent.FromValue(table)),
                    ("water", Mass.FromGrams(Math.Abs(missingGrams))),
                    ("where", WaterIn(formula)));
            }
        }
    }

    /// <summary>The part whose water can be changed: the one with the most water poured in, or the dough.</summary>
    private static string WaterIn(Formula formula) => formula.Lines()
        .Where(at => at.Line.Role == Role.Water && at.Component.ShareInDough > 0)
        .OrderByDescending(at => at.Line.Mass)
        .Select(at => at.Component.Name)
        .FirstOrDefault() ?? "dough";
}
