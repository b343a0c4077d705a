using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What is weighed against each other in a swap: grams in one gram of an ingredient, each times the root of its weight.</summary>
/// <remarks>
/// Weights on the squares: water 1, sugar 2, fat 2, per percent of flour. Between starchy things the rest of the solids counts 1/16 beside, or
/// else a puree would be weighed by the little sugar it holds.
/// </remarks>
internal static class Brings
{
    private static readonly double RootOfTwo = Math.Sqrt(2);

    /// <param name="isStarchy">Whether something starchy stands in for something starchy.</param>
    public static double[] Of(Composition composition, bool isStarchy)
    {
        double water = composition.Water!.Value, sugar = composition.Sugars!.Value, fat = composition.Fat!.Value;
        return [water / 100, RootOfTwo * sugar / 100, RootOfTwo * fat / 100, isStarchy ? (100 - water - sugar - fat) / 400 : 0];
    }
}
