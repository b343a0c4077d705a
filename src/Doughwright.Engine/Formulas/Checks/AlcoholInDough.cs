using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// Alcohol in the dough's water. Yeast in a dough slows from about one part in twenty and hardly works beyond about one part in twelve, far
/// below what a brewer's yeast bears; a dough made with beer stays under both. Limits: common practice, from memory.
/// </summary>
internal static class AlcoholInDough
{
    // In percent by mass of water and alcohol together.
    private static readonly Percent SlowsFrom = Percent.FromValue(5);
    private static readonly Percent StopsFrom = Percent.FromValue(8);

    public static IEnumerable<Finding> Check(Formula formula)
    {
        var bringing = Bringing(formula).ToArray();
        if (bringing.Length == 0 || formula.FinalDough() is not { } dough || Share(formula) is not { } share || share < SlowsFrom || formula.Yeast is not { Fresh.Grams: > 0 })
        {
            yield break;
        }

        (string, object)[] arguments = [("name", bringing.MaxBy(at => at.Grams).Line.Name), ("share", share)];
        yield return share < StopsFrom
            ? formula.About(dough, "alcohol-slows-yeast", Grade.Hint, arguments)
            : formula.About(dough, "alcohol-stops-yeast", Grade.Warning, arguments);
    }

    /// <summary>Of the dough's water and alcohol together; null when there is no alcohol in it, or its water is not known.</summary>
    private static Percent? Share(Formula formula)
    {
        var alcohol = Mass.FromGrams(Bringing(formula).Sum(at => at.Grams));
        return alcohol > Mass.Zero && formula.Water.Total is { } water ? Percent.Of(alcohol, alcohol + water) : null;
    }

    private static IEnumerable<(LineFormula Line, double Grams)> Bringing(Formula formula) => formula.Lines()
        .Where(at => at.Line.UsesComponent is null && at.Component.ShareInDough > 0)
        .Select(at => (at.Line, Grams: (at.Line.Composition.Alcohol ?? 0) / 100 * at.Line.Mass.Grams * at.Component.ShareInDough))
        .Where(at => at.Grams > 0);
}
