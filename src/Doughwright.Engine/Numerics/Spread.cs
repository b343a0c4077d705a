namespace Doughwright.Engine.Numerics;

/// <summary>The central answer and how far it may be off. An infinite <paramref name="High"/> says the range is open upwards.</summary>
internal readonly record struct Spread(double Central, double Low, double High)
{
    /// <summary>Whether the 90th percentile of the draws lies at or beside one of so many that never end.</summary>
    public static bool IsOpen(int endless, int lanes) => endless > 0 && lanes - 1 - endless <= ((9 * lanes) - 1) / 10;

    public bool IsOpenHigh => double.IsPositiveInfinity(High);

    /// <summary>
    /// From lanes: lane 0 is central, the others are draws. Low and high are the 10th and 90th percentile of the draws, widened to contain
    /// lane 0. A lane that never ends holds +infinity; when the 90th percentile lies at or beside one that does, the range is open.
    /// </summary>
    public static Spread OfLanes(ReadOnlySpan<double> lanes)
    {
        var central = lanes[0];
        if (double.IsNaN(central))
            throw new ArgumentOutOfRangeException(nameof(lanes), "Lane 0 must be a number.");
        if (lanes.Length == 1)
            return new(central, central, central);

        var low = Percentile.OfDraws(lanes[1..], 0.1);
        var high = Percentile.OfDraws(lanes[1..], 0.9);
        return new(central, Math.Min(low, central), Math.Max(high, central));
    }
}
