using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What makes a dough a dough, whatever the balance says: flour that holds gas, and water.</summary>
internal static class SwapStructure
{
    /// <summary>Of the flour that holds gas, and of the water: with less it is another recipe. Common practice, no source.</summary>
    private const double Least = 0.5;

    // Wheat and its kin by their gluten, rye by its gums. No other flour holds gas by itself. Common practice, no source.
    private static readonly string[] HoldGas = ["wheat-gluten", "rye-gluten"];

    public static IEnumerable<Finding> Of(Formula before, Formula after, IReadOnlyList<PlannedSwap> plan) => [.. NoGluten(before, after, plan), .. TooDry(before, after, plan)];

    private static IEnumerable<Finding> NoGluten(Formula before, Formula after, IReadOnlyList<PlannedSwap> plan)
    {
        if (plan.FirstOrDefault(swap => swap.Manner == Manner.Flour && swap.Component.ShareInDough > 0 && Holds(swap.Line.Ingredient) && !Holds(swap.By!.Ingredient)) is { } swap
            && ShareThatHolds(before) is { } was
            && ShareThatHolds(after) is { } now
            && was >= Least
            && now < Least)
        {
            yield return swap.About("swap-leaves-no-gluten", Grade.Error, ("left", Percent.FromFraction(now)));
        }
    }

    /// <summary>Of all flour of the dough; what nobody knows is not held against it.</summary>
    private static double? ShareThatHolds(Formula formula)
    {
        var flours = formula.Lines().Where(at => at.Line is { Role: Role.Flour, Source.Uses: null } && at.Component.ShareInDough > 0).ToArray();
        double Grams((ComponentFormula Component, LineFormula Line) at) => at.Line.Mass.Grams * at.Component.ShareInDough;
        var all = flours.Sum(Grams);
        return all > 0 ? flours.Where(at => Holds(at.Line.Ingredient)).Sum(Grams) / all : null;
    }

    private static bool Holds(Ingredient? flour) => flour is null or { AllergensKnown: false } || flour.Allergens.Any(HoldGas.Contains);

    /// <summary>The dough as a whole, and every part of it that is mixed with flour.</summary>
    private static IEnumerable<Finding> TooDry(Formula before, Formula after, IReadOnlyList<PlannedSwap> plan)
    {
        var inDough = plan.Where(swap => swap.Manner != Manner.Same && swap.Component.ShareInDough > 0).ToArray();
        var told = new List<Finding>();
        foreach (var part in inDough.GroupBy(swap => swap.Component.Id).Where(part => part.First().Component.Flour > Mass.Zero))
        {
            var wettest = Wettest(part);
            if (Falls(wettest.Component.Water, after.FindComponent(part.Key)?.Water) is (var was, var left))
            {
                told.Add(wettest.About("swap-leaves-no-liquid", Grade.Error, ("was", was), ("left", left)));
            }
        }

        return told.Count == 0 && inDough.Length > 0 && Falls(before.Water.Total, after.Water.Total) is (var all, var rest)
            ? [Wettest(inDough).About("swap-leaves-no-liquid", Grade.Error, ("was", all), ("left", rest))]
            : told;
    }

    private static PlannedSwap Wettest(IEnumerable<PlannedSwap> swaps) => swaps.MaxBy(swap => swap.Line.Mass.Grams * (swap.Line.Composition.Water ?? 0))!;

    /// <summary>Both masses of water where too little is left; null where there is enough, or where it is not known.</summary>
    private static (Mass Was, Mass Left)? Falls(Mass? before, Mass? after) =>
        before is { } was && after is { } left && was > Mass.Zero && left < was * Least ? (was, left) : null;
}
