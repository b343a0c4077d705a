using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking;

/// <summary>How long a bake must last, in dimensionless time, until the core has come a given share of the way to boiling.</summary>
/// <remarks>
/// What is carried from kitchen to kitchen is the share (T_core - T_0)/(T_boil - T_0), not a core in °C: at altitude the same crumb is done
/// below the temperature it needs at the sea.
/// </remarks>
internal static class BakeModel
{
    private const double LongestFourier = 4;

    /// <summary>The grid of every rehearsal: the core within 0.3 K of a fine grid at every moment of a bake.</summary>
    internal static BakeGrid Working { get; } = new(cells: 20, step: 0.01, opening: 10, parts: 4);

    /// <summary>Fo at which each lane's core has come <paramref name="share"/> of the way from its start to boiling; infinite when it has not by Fo 4.</summary>
    public static double[] TimeToShare(BakeLanes lanes, double[] share) => TimeToShare(Working, lanes, share);

    internal static double[] TimeToShare(BakeGrid grid, BakeLanes lanes, double[] share)
    {
        var target = new double[lanes.Count];
        for (var lane = 0; lane < target.Length; lane++)
        {
            target[lane] = lanes.Start[lane] + (share[lane] * (lanes.Boil[lane] - lanes.Start[lane]));
        }

        var kernel = new TimeKernel(grid, lanes, target, new double[lanes.Count]);
        Lanes.Run(ref kernel);
        return kernel.Times;
    }

    private readonly record struct TimeKernel(BakeGrid Grid, BakeLanes BakeLanes, double[] Target, double[] Times) : ILaneKernel
    {
        [MethodImpl(MethodImplOptions.NoInlining)]
        public void Run<T>() where T : struct, ILane<T> =>
            BakeKernel.TimeTo<T>(Grid, BakeLanes, Target, (int)(LongestFourier / Grid.Step), Times);
    }
}
