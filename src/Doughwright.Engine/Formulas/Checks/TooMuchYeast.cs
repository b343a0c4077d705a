using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// Yeast, as weighed, above 30 % of the flour: of its own part, or of the whole dough where the part has no flour. No recipe means that, and the
/// models of the rise end far below. Source: limits-house.
/// </summary>
internal static class TooMuchYeast
{
    private static readonly Percent Most = Percent.FromValue(30);

    public static IEnumerable<Finding> Check(Formula formula)
    {
        foreach (var component in formula.Components)
        {
            var flour = component.Flour > Mass.Zero ? component.Flour : formula.Flour;
            var yeasts = component.Lines.Where(line => line.Role == Role.Yeast).ToArray();
            var yeast = yeasts.Aggregate(Mass.Zero, (sum, line) => sum + line.Mass);
            if (flour <= Mass.Zero || yeasts.Length == 0 || Percent.Of(yeast, flour).Value <= Most.Value)
            {
                continue;
            }

            var heaviest = yeasts.MaxBy(line => line.Mass.Grams)!;
            yield return (component, heaviest).About(
                "yeast-too-much",
                Grade.Error,
                ("name", heaviest.Name),
                ("yeast", yeast),
                ("flour", flour),
                ("percent", Percent.Of(yeast, flour)),
                ("most", Most));
        }
    }
}
