using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>
/// What a part weighed before it was peeled and cooked, as a factor on what it weighs then: the author's weighing, else the larder's yields.
/// Where a yield is not known the mass is held.
/// </summary>
internal static class RawMass
{
    /// <returns>Factors at the start and at the end of the step.</returns>
    public static (double From, double To) Of(Stage stage, IReadOnlyList<Step> steps, int index, string component)
    {
        var cook = steps.ToList().FindIndex(step => step.Component == component && step.IsCooked);
        if (cook < 0 || index > cook)
        {
            return (1, 1);
        }

        var cooked = Factor(stage, component, PreparationStep.Cook);
        if (index == cook)
        {
            return (1 / cooked, 1);
        }

        var peel = steps.ToList().FindLastIndex(cook, step => step.Component == component && step.Kind == StepKind.Prepare);
        var peeled = index <= peel ? Factor(stage, component, PreparationStep.Peel) : 1;
        return index == peel ? (1 / (cooked * peeled), 1 / cooked) : (1 / (cooked * peeled), 1 / (cooked * peeled));
    }

    /// <summary>Mass after over mass before, of all lines together.</summary>
    private static double Factor(Stage stage, string component, PreparationStep step)
    {
        var lines = stage.Component(component).Lines;
        var after = lines.Sum(line => line.Mass.Grams / After(stage, line, step));
        var before = lines.Sum(line => line.Mass.Grams / After(stage, line, step) / Own(stage, line, step));
        return before > 0 ? after / before : 1;
    }

    /// <summary>What comes after this step: a peeled potato is cooked still.</summary>
    private static double After(Stage stage, LineFormula line, PreparationStep step) =>
        step == PreparationStep.Peel ? Own(stage, line, PreparationStep.Cook) : 1;

    private static double Own(Stage stage, LineFormula line, PreparationStep step)
    {
        if (step == PreparationStep.Cook && line.Source.Weighed is { } weighed && weighed.Cooked.Grams > 0 && weighed.RawPeeled.Grams > 0)
        {
            return weighed.Cooked / weighed.RawPeeled;
        }

        var larder = stage.Formula.Larder;
        for (var row = line.Ingredient; row is not null && larder.PreparationOf(row) is { } preparation; row = preparation.From is { } from ? larder.WithId(from) : null)
        {
            // Taking the stones out is to a plum what peeling is to a potato.
            if ((preparation.Step == PreparationStep.Cook) == (step == PreparationStep.Cook))
            {
                return preparation.Factor ?? 1;
            }
        }

        return 1;
    }
}
