using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What a swap takes away or brings beside water, sugar and fat: what held, set, bound, browned, raised or tasted. Source: swap-traits.</summary>
internal static class TraitNotes
{
    // Water in percent: a sweet thing with more of it is a syrup.
    private const double Syrup = 10;

    /// <summary>Of the dough each is said once, in whichever of its parts it is.</summary>
    public static IEnumerable<Finding> Of(SwapChange change) => change.Swaps
        .SelectMany(swap => Of(swap).Append(Sour(change, swap)).Concat(Cold(change, swap)).OfType<Finding>().Select(finding => (Swap: swap, Finding: finding)))
        .DistinctBy(told => (told.Finding.Kind, told.Swap.Line.Name, told.Swap.By?.Name, told.Swap.Component.ShareInDough > 0 ? "" : told.Swap.Component.Id))
        .Select(told => told.Finding);

    private static IEnumerable<Finding?> Of(PlannedSwap swap)
    {
        var (was, becomes) = (Traits.Of(swap.Line.Ingredient), Traits.Of(swap.By?.Ingredient));
        bool Loses(Trait trait) => was.Contains(trait) && !becomes.Contains(trait);
        bool Gains(Trait trait) => becomes.Contains(trait) && !was.Contains(trait);
        if (swap.Component.Kind == ComponentKind.Wash)
        {
            yield return Loses(Trait.SetsHot) ? swap.About("swap-wash-shines-less", Grade.Hint) : null;
            yield return Loses(Trait.Browns) && !Loses(Trait.SetsHot) ? swap.About("swap-wash-browns-less", Grade.Hint) : null;
            yield break;
        }

        var isLiquidFat = Loses(Trait.SetsCold) && swap.By?.Ingredient?.Role == Role.Fat;
        var isInDough = swap.Component.ShareInDough > 0;
        yield return isLiquidFat ? swap.About("swap-handles-softer", Grade.Hint) : null;
        yield return Loses(Trait.Creams) ? swap.About("swap-cannot-be-creamed", Grade.Hint) : null;
        yield return Loses(Trait.ButterFlavour) ? swap.About("swap-loses-butter-flavour", Grade.Hint) : null;
        yield return Loses(Trait.SetsHot) ? swap.About("swap-loses-setting", Grade.Warning) : null;
        yield return Loses(Trait.Emulsifies) ? swap.About("swap-loses-emulsifier", Grade.Hint) : null;
        yield return Loses(Trait.Foams) ? swap.About("swap-loses-foam", Grade.Warning) : null;
        yield return Loses(Trait.Gluten) && isInDough ? swap.About("swap-loses-gluten", Grade.Warning) : null;
        yield return Gains(Trait.Raises) ? swap.About("swap-brings-raising-agent", Grade.Warning) : null;
        yield return Loses(Trait.Raises) ? swap.About("swap-loses-raising-agent", Grade.Warning) : null;
        yield return Gains(Trait.Sour) ? swap.About("swap-brings-acid", Grade.Hint) : null;
        // A crust is browned by the dough and by what lies on it, never by what is inside.
        var isOnCrust = isInDough || swap.Component.Kind == ComponentKind.Topping;
        yield return Loses(Trait.Browns) && isOnCrust ? swap.About("swap-browns-less", Grade.Hint) : null;
        yield return (Gains(Trait.Browns) || Gains(Trait.Sweeter)) && isOnCrust ? swap.About("swap-browns-more", Grade.Hint) : null;
        yield return Gains(Trait.Sweeter) ? swap.About("swap-tastes-sweeter", Grade.Hint) : null;
    }

    /// <summary>What is sour is tasted, and soda works with it where there is some.</summary>
    private static Finding? Sour(SwapChange change, PlannedSwap swap)
    {
        if (swap.Component.Kind == ComponentKind.Wash || !Traits.Of(swap.Line.Ingredient).Contains(Trait.Sour) || Traits.Of(swap.By?.Ingredient).Contains(Trait.Sour))
        {
            return null;
        }

        var soda = change.After.FindComponent(swap.Component.Id)?.Lines.FirstOrDefault(line => Traits.Of(line.Ingredient).Contains(Trait.NeedsAcid));
        return soda is null ? swap.About("swap-tastes-less-sour", Grade.Hint) : swap.About("swap-loses-acid", Grade.Warning, ("soda", soda.Name));
    }

    /// <summary>In what is stirred and never heated, only the finest sugar dissolves, and a syrup does not set.</summary>
    private static IEnumerable<Finding?> Cold(SwapChange change, PlannedSwap swap)
    {
        var isHeated = change.Before.Recipe.Steps.Any(step => step.Component == swap.Component.Id && step.IsCooked);
        if (swap is not { Component.Kind: ComponentKind.Icing or ComponentKind.Filling or ComponentKind.Topping, By.Ingredient: { Role: Role.Sugar } row }
            || isHeated
            || !Traits.Of(swap.Line.Ingredient).Contains(Trait.Fine)
            || Traits.Of(row).Contains(Trait.Fine))
        {
            yield break;
        }

        yield return row.Composition.Water > Syrup ? swap.About("swap-icing-runs", Grade.Warning) : swap.About("swap-stays-gritty", Grade.Warning);
    }
}
