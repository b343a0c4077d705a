using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>One swap from the wishes to what it cost: plan, refuse, solve every part, follow through, look at what came out.</summary>
internal sealed class SwapRun(Formula before, IReadOnlyList<Wish> wishes)
{
    private readonly List<Finding> found = [];

    public Swapped Result()
    {
        var plan = SwapPlan.Of(before, wishes, found);
        found.AddRange(SwapRefusals.Of(before, plan));
        if (IsRefused)
        {
            return Refused();
        }

        var solved = plan.GroupBy(swap => swap.Component.Id).Select(group => PartSwap.Solve(group.First().Component, [.. group], before)).ToArray();
        found.AddRange(SwapRefusals.Nothing(solved));
        if (IsRefused)
        {
            return Refused();
        }

        var edits = SaltHold.Held(before, LiquidElsewhere.Held(before, solved));
        var recipe = FollowThrough.Apply(before, edits);
        var after = Formula.Balance(recipe, before.Larder);
        found.AddRange(SwapRefusals.Unknown(before, after, plan));
        found.AddRange(SwapStructure.Of(before, after, plan));
        if (IsRefused)
        {
            return Refused();
        }

        var change = new SwapChange(before, after, plan, edits);
        return new()
        {
            Recipe = recipe,
            Formula = after,
            Lines = change.Lines,
            Residuals = change.Residuals,
            Thirst = change.Thirst,
            Allergens = change.Allergens,
            Buy = change.Buy,
            // The lines of the old text are not those of the new one.
            Consequences = [.. found.Concat(SwapConsequences.Of(change)).Select(finding => finding with { Position = Position.None })],
        };
    }

    private bool IsRefused => found.Any(finding => finding.Grade == Grade.Error);

    private Swapped Refused() => new()
    {
        Recipe = null,
        Formula = null,
        Lines = [],
        Residuals = [],
        Thirst = [],
        Allergens = AllergenChanges.Of(before, before),
        Buy = [],
        Consequences = found,
    };
}
