namespace Doughwright.Engine.Numerics;

internal static class Percentile
{
    /// <summary>
    /// Linear between order statistics: the smallest of n values is the 0th, the largest the 1st (100th percentile), and the one of rank r
    /// from 0 stands at r / (n - 1). +infinity is a value like any other; between a finite value and it lies +infinity.
    /// </summary>
    /// <param name="fraction">0 to 1.</param>
    public static double Of(ReadOnlySpan<double> values, double fraction)
    {
        if (values.IsEmpty)
            throw new ArgumentOutOfRangeException(nameof(values), "Must hold at least one value.");
        if (!(fraction >= 0 && fraction <= 1))
            throw new ArgumentOutOfRangeException(nameof(fraction), fraction, "Must be from 0 to 1.");
        foreach (var value in values)
        {
            if (!(value > double.NegativeInfinity))
                throw new ArgumentOutOfRangeException(nameof(values), value, "Must hold numbers above -infinity only.");
        }

        var sorted = values.ToArray();
        Array.Sort(sorted);
        return At(sorted, fraction * (sorted.Length - 1));
    }

    /// <summary>
    /// Of draws at points that part their range evenly: the k-th smallest of n stands for k / (n + 1) of what they are drawn from. Beyond the
    /// outermost of them nothing is known, and the outermost is given. +infinity as above.
    /// </summary>
    /// <param name="fraction">0 to 1.</param>
    /// <remarks>Of 31 draws of a normal law at 1/32 to 31/32 the 90th percentile is 1.28 standard deviations, as it is of the law. Source: hyndman-fan-1996, sixth definition.</remarks>
    public static double OfDraws(ReadOnlySpan<double> values, double fraction)
    {
        var outermost = Math.Max(1, values.Length - 1);
        return Of(values, Math.Clamp(((fraction * (values.Length + 1)) - 1) / outermost, 0, 1));
    }

    private static double At(double[] sorted, double rank)
    {
        // 0.1 and 0.9 are not exact doubles: a rank that should be whole is taken as whole, or an infinite neighbour would leak in.
        if (Math.Abs(rank - Math.Round(rank)) < 1e-9)
            return sorted[(int)Math.Round(rank)];
        var below = (int)rank;
        var part = rank - below;
        var (lower, upper) = (sorted[below], sorted[below + 1]);
        return double.IsPositiveInfinity(upper) ? upper : lower + part * (upper - lower);
    }
}
