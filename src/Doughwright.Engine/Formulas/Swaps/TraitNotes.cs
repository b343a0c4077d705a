using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What a swap takes away or brings beside water, sugar and fat: what held, set, bound, browned or tasted. Source: swap-traits.</summary>
internal static class TraitNotes
{
    public static IEnumerable<Finding> Of(SwapChange change) => change.Swaps.SelectMany(swap => Of(swap).OfType<Finding>());

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
        yield return isLiquidFat ? swap.About("swap-handles-softer", Grade.Hint) : null;
        yield return Loses(Trait.Creams) ? swap.About("swap-cannot-be-creamed", Grade.Hint) : null;
        yield return Loses(Trait.ButterFlavour) ? swap.About("swap-loses-butter-flavour", Grade.Hint) : null;
        yield return Loses(Trait.SetsHot) ? swap.About("swap-loses-setting", Grade.Warning) : null;
        yield return Loses(Trait.Emulsifies) ? swap.About("swap-loses-emulsifier", Grade.Hint) : null;
        yield return Loses(Trait.Foams) ? swap.About("swap-loses-foam", Grade.Warning) : null;
        yield return Loses(Trait.Gluten) ? swap.About("swap-loses-gluten", Grade.Warning) : null;
        yield return Loses(Trait.Sour) ? swap.About("swap-loses-acid", Grade.Hint) : null;
        yield return Gains(Trait.Sour) ? swap.About("swap-brings-acid", Grade.Hint) : null;
        yield return Loses(Trait.Browns) ? swap.About("swap-browns-less", Grade.Hint) : null;
        yield return Gains(Trait.Browns) || Gains(Trait.Sweeter) ? swap.About("swap-browns-more", Grade.Hint) : null;
        yield return Gains(Trait.Sweeter) ? swap.About("swap-tastes-sweeter", Grade.Hint) : null;
    }
}
