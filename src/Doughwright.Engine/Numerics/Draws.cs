namespace Doughwright.Engine.Numerics;

/// <summary>
/// The fixed draws behind every range: lane 0 is the central answer and draws nothing, lane i takes Sobol point i. Point 0, the origin,
/// has no normal value and is left out.
/// </summary>
/// <remarks>
/// With a power of two of lanes each dimension holds every multiple of 1 / lanes once, so its draws lie symmetrically about 0. Few
/// draws miss the tails: at 32 lanes their standard deviation is 0.90 and their 90th percentile 1.15, at 4,096 lanes 1.00 and 1.28.
/// </remarks>
internal static class Draws
{
    /// <summary>The uncertain quantities that can be drawn apart.</summary>
    public static int Dimensions => Sobol.Dimensions;

    /// <summary>Standard normal values for one uncertain quantity, one for each lane. Each needs its own dimension.</summary>
    public static double[] Normal(int dimension, int lanes)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(lanes, 1);
        var values = new double[lanes];
        for (var lane = 1; lane < lanes; lane++)
            values[lane] = NormalQuantile.At(Sobol.Coordinate(lane, dimension));
        return values;
    }
}
