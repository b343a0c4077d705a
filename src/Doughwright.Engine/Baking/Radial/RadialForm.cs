using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>
/// The one direction in which heat is taken to run through a piece: that of a ball of so many dimensions, which need not be a whole number.
/// A slab has one, a cylinder two, a sphere three.
/// </summary>
/// <remarks>
/// Of a real piece two things are kept: its surface per volume, which says how quickly heat comes in, and how quickly its slowest pattern of
/// temperature dies away when the surface is held, which says how quickly heat gets on from there. Both together fix dimensions n and reach
/// L: n/L = A/V and λ(n)²/L² = Λ, with λ(n) the first zero of the Bessel function of order n/2 - 1 and Λ the sum over the directions of the
/// piece. Edges of dough are round: the surface is that of the piece with its edges rounded. Source: house-bake-lanes.
/// </remarks>
/// <param name="Dimensions">n, 1 to 8.</param>
/// <param name="ReachOfUnitVolume">Distance from core to surface of a piece of 1 m³, in m; a piece of another size is its copy.</param>
internal sealed record RadialForm(double Dimensions, double ReachOfUnitVolume)
{
    /// <summary>How round an edge is at the most, in m. Fitted together with the effectiveness of vapour. Source: house-bake-lanes.</summary>
    private const double EdgeRadius = 0.010;

    /// <summary>An edge between flat faces is no rounder than this share of the shortest way to the core.</summary>
    private const double EdgeShare = 0.4;

    /// <summary>What an edge of one metre loses of its two faces when it is rounded with a radius of one metre.</summary>
    private const double LostToRounding = 2 - (Math.PI / 2);

    private const double FewestDimensions = 1;
    private const double MostDimensions = 8;
    private const double FirstZeroOfCylinder = 2.404825557695773;

    /// <summary>A ball: a round piece on its own.</summary>
    public static RadialForm Ball { get; } = new(3, 0.62035049089940);

    /// <summary>An upright cylinder: a round loaf, a bun, a disc.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A side that is not above 0.</exception>
    public static RadialForm OfCylinder(Length radius, Length height)
    {
        var (r, h) = (Side(radius, "Radius of a piece, m"), Side(height, "Height of a piece, m"));
        var across = FirstZeroOfCylinder / r;
        var along = Math.PI / h;
        var edge = Math.Min(EdgeRadius, EdgeShare * Math.Min(r, h / 2));
        var area = (2 * Math.PI * r * (r + h)) - (LostToRounding * edge * 4 * Math.PI * r);
        return Of((across * across) + (along * along), area, Math.PI * r * r * h);
    }

    /// <summary>A box: a tin loaf, a sheet.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A side that is not above 0.</exception>
    public static RadialForm OfBox(Length length, Length width, Length height)
    {
        double[] sides = [Side(length, "Length of a piece, m"), Side(width, "Width of a piece, m"), Side(height, "Height of a piece, m")];
        var slowest = sides.Sum(side => Math.PI * Math.PI / (side * side));
        var volume = sides[0] * sides[1] * sides[2];
        var edge = Math.Min(EdgeRadius, EdgeShare * sides.Min() / 2);
        var area = sides.Sum(side => 2 * volume / side) - (LostToRounding * edge * 4 * sides.Sum());
        return Of(slowest, area, volume);
    }

    private static RadialForm Of(double slowest, double area, double cubicMetres)
    {
        var perVolume = area / cubicMetres;
        var wanted = slowest / (perVolume * perVolume);
        // λ(n)²/n² falls as n grows. Beyond either end no piece lies; the nearest form stands in there.
        var (low, high) = (FewestDimensions, MostDimensions);
        while (high - low > 1e-9)
        {
            var middle = (low + high) / 2;
            (low, high) = Squared(FirstZero(middle) / middle) > wanted ? (middle, high) : (low, middle);
        }

        return new(low, low / perVolume / Elementary.Pow(cubicMetres, 1.0 / 3));
    }

    /// <summary>Where the slowest pattern of a ball of so many dimensions is nought: the first zero of the Bessel function of order n/2 - 1.</summary>
    /// <remarks>From its power series, by halving. Checked for 1, 2 and 3 dimensions: π/2, 2.4048, π.</remarks>
    internal static double FirstZero(double dimensions)
    {
        var (low, high) = (0.5, 0.5);
        while (Series(high, dimensions) > 0)
        {
            (low, high) = (high, high + 0.1);
        }

        while (high - low > 1e-12)
        {
            var middle = (low + high) / 2;
            (low, high) = Series(middle, dimensions) > 0 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>Σ (-x²/4)^m / (m! (n/2)(n/2 + 1) ... (n/2 + m - 1)).</summary>
    private static double Series(double x, double dimensions)
    {
        var (sum, term) = (0.0, 1.0);
        for (var m = 0; Math.Abs(term) > 1e-18; m++)
        {
            sum += term;
            term *= -x * x / 4 / ((m + 1) * ((dimensions / 2) + m));
        }

        return sum;
    }

    private static double Squared(double value) => value * value;

    private static double Side(Length side, string what) =>
        side.Metres > 0 && double.IsFinite(side.Metres) ? side.Metres : throw new ArgumentOutOfRangeException(nameof(side), side.Metres, $"{what}: must be above 0.");
}
