using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>Baking powder, soda or self-raising flour in a dough with yeast: its gas is gone before the oven, and its taste stays. Common practice, no source.</summary>
internal static class RaisedTwice
{
    public static IEnumerable<Finding> Check(Formula formula)
    {
        if (!InDough(formula).Any(at => at.Line.Role == Role.Yeast))
        {
            return [];
        }

        return InDough(formula).Where(at => Raises(at.Line)).Take(1).Select(at => at.About("raised-twice", Grade.Hint, ("name", at.Line.Name)));
    }

    /// <summary>Whether it makes gas of its own in the oven.</summary>
    public static bool Raises(LineFormula line) => line.UsesComponent is null && Traits.Of(line.Ingredient).Contains(Trait.Raises);

    private static IEnumerable<(ComponentFormula Component, LineFormula Line)> InDough(Formula formula) => formula.Lines().Where(at => at.Component.ShareInDough > 0);
}
