using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Shapes;

/// <summary>
/// A piece as heat meets it: a ball of so many dimensions, 1 a layer, 2 a stick, 3 a ball. A short stick, a brick or a thick round lies between or
/// beyond.
/// </summary>
/// <remarks>
/// Two things are those of the true shape: volume over area, V/S = R/n, which rules while the outside hinders heat, and the slowest decay when the
/// surface is held, (ζ(n)/R)² = Σ (ζ(d)/L)² over its ways, which rules while the inside does; ζ(n) is the first zero of the Bessel function of
/// order n/2 - 1. The volume mean stays within 0.025 of the product of the ways' solutions, the middle within 0.1, for Biot numbers below 3.
/// Source: equal-heat-form.
/// </remarks>
/// <param name="Dimensions">1 to 6.</param>
/// <param name="Size">From the middle to the outside of that ball.</param>
internal readonly record struct HeatForm(double Dimensions, Length Size)
{
    private const int Most = 6;

    /// <summary>ζ at 1 to 6 dimensions. Source: bessel-zeros.</summary>
    private static readonly double[] Zeros = [1.5707963, 2.4048256, 3.1415927, 3.8317060, 4.4934095, 5.1356223];

    /// <param name="ways">At least one; all at right angles to each other.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length, the area or the volume is not above nought.</exception>
    public static HeatForm Of(IReadOnlyList<HeatWay> ways, double squareMetres, double cubicMetres)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(squareMetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(cubicMetres);
        var decay = 0.0;
        foreach (var way in ways)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(way.Reach.Metres, nameof(ways));
            var share = Zeros[way.Dimensions - 1] / way.Reach.Metres;
            decay += share * share;
        }

        if (ways is [var only])
        {
            return new(only.Dimensions, only.Reach);
        }

        var perArea = cubicMetres / squareMetres;
        var wanted = Math.Sqrt(decay) * perArea;
        // ζ(n)/n falls from a layer on, so that there is one answer.
        double low = 1, high = Most;
        for (var halving = 0; halving < 60; halving++)
        {
            var middle = (low + high) / 2;
            (low, high) = Zero(middle) / middle > wanted ? (middle, high) : (low, middle);
        }

        return new(low, Length.FromMetres(low * perArea));
    }

    /// <summary>ζ between whole dimensions: the polynomial through the six known ones.</summary>
    internal static double Zero(double dimensions)
    {
        var sum = 0.0;
        for (var known = 0; known < Most; known++)
        {
            var term = Zeros[known];
            for (var other = 0; other < Most; other++)
            {
                term *= other == known ? 1 : (dimensions - (other + 1)) / (known - other);
            }

            sum += term;
        }

        return sum;
    }

    /// <summary>The side of a cube, and the like: a cube root.</summary>
    internal static double Root(double cubic) => Elementary.Pow(cubic, 1.0 / 3.0);
}
