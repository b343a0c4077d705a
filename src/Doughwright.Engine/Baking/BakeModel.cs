using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking;

/// <summary>How long a bake must last, in dimensionless time, until the core has come a given share of the way to boiling.</summary>
/// <remarks>
/// What is carried from kitchen to kitchen is the share (T_core - T_0)/(T_boil - T_0), not a core in °C: at altitude the same crumb is done
/// below the temperature it needs at the sea.
/// </remarks>
internal static class BakeModel
{
    private const int Cells = 20;
    private const double Step = 0.008;
    private const int StepsAtATime = 125;
    private static readonly BakeGrid Grid = new(Cells, Step);

    /// <summary>Fo at which each lane's core has come <paramref name="share"/> of the way from its start to boiling; infinite when it has not by Fo 4.</summary>
    public static double[] TimeToShare(BakeLanes lanes, double[] share) => TimeToShare(Grid, lanes, share);

    internal static double[] TimeToShare(BakeGrid grid, BakeLanes lanes, double[] share)
    {
        var times = new double[lanes.Count];
        Array.Fill(times, double.PositiveInfinity);
        foreach (var rounds in (ReadOnlySpan<int>)[1, 4])
        {
            var steps = (int)(StepsAtATime * rounds * Step / grid.Step);
            var core = new double[steps * lanes.Count];
            Run(grid, lanes, core);
            for (var lane = 0; lane < lanes.Count; lane++)
            {
                times[lane] = Crossing(grid, lanes, share[lane], core, lane);
            }

            if (times.All(double.IsFinite))
            {
                break;
            }
        }

        return times;
    }

    private static void Run(BakeGrid grid, BakeLanes lanes, double[] core)
    {
        switch (Lanes.Widest)
        {
            case 8:
                BakeKernel.Run<Lane8>(grid, lanes, core);
                break;
            case 4:
                BakeKernel.Run<Lane4>(grid, lanes, core);
                break;
            case 2:
                BakeKernel.Run<Lane2>(grid, lanes, core);
                break;
            default:
                BakeKernel.Run<Lane1>(grid, lanes, core);
                break;
        }
    }

    private static double Crossing(BakeGrid grid, BakeLanes lanes, double share, double[] core, int lane)
    {
        var target = lanes.Start[lane] + (share * (lanes.Boil[lane] - lanes.Start[lane]));
        var before = lanes.Start[lane];
        for (var index = lane; index < core.Length; index += lanes.Count)
        {
            if (core[index] >= target)
            {
                return grid.Step * ((index / lanes.Count) + ((target - before) / (core[index] - before)));
            }

            before = core[index];
        }

        return double.PositiveInfinity;
    }
}
