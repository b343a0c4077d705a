using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>The lines that the wishes mean, each with what stands in. What is not clear is said.</summary>
internal static class SwapPlan
{
    public static IReadOnlyList<PlannedSwap> Of(Formula formula, IReadOnlyList<Wish> wishes, List<Finding> faults)
    {
        var plan = new List<PlannedSwap>();
        foreach (var wish in wishes)
        {
            var targets = WishTargets.Of(formula, wish);
            if (targets.Count == 0)
            {
                faults.Add(Report.Make("swap-nothing-meant", Grade.Error, "", Position.None, ("what", wish.What), ("part", wish.Part ?? "")));
            }
            else if (targets.Select(at => at.Line.Ingredient?.Id ?? at.Line.Name).Distinct().Count() > 1)
            {
                var names = targets.Select(at => at.Line.Name).Distinct().ToArray();
                faults.Add(targets[0].About("swap-not-clear", Grade.Error, ("what", wish.What), ("candidates", names)));
            }

            foreach (var (component, line) in targets)
            {
                var swap = new PlannedSwap(component, line, wish.IsWithout ? null : StandIn.Of(formula.Larder, wish.By, line));
                if (plan.FirstOrDefault(other => other.Component.Id == component.Id && other.Line.Source.Id == line.Source.Id) is not { } twice)
                {
                    plan.Add(swap);
                }
                else if (twice.By?.Name != swap.By?.Name)
                {
                    faults.Add(swap.About("swap-asked-twice", Grade.Error, ("other", twice.By?.Name ?? "")));
                }
            }
        }

        // In the order of the recipe, so that the order of the wishes makes no difference.
        var order = formula.Lines().Select((at, index) => ((at.Component.Id, at.Line.Source.Id), index)).DistinctBy(pair => pair.Item1).ToDictionary(pair => pair.Item1, pair => pair.index);
        return [.. plan.OrderBy(swap => order[(swap.Component.Id, swap.Line.Source.Id)])];
    }
}
