using Doughwright.Engine.Baking;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Baking;

/// <summary>Bakes for the tests of the kernel.</summary>
internal static class Bakes
{
    /// <summary>A boiling point that no bake comes near.</summary>
    public const double Never = 1e9;

    public static BakeLanes One(double start, double oven, double boil, double biot) => Many([(start, oven, boil, biot)]);

    /// <summary>Padded to full packs by repeating the last lane.</summary>
    public static BakeLanes Many(IReadOnlyList<(double Start, double Oven, double Boil, double Biot)> bakes)
    {
        var count = Lanes.Padded(bakes.Count);
        double[] Column(Func<(double Start, double Oven, double Boil, double Biot), double> take) =>
            [.. Enumerable.Range(0, count).Select(lane => take(bakes[Math.Min(lane, bakes.Count - 1)]))];
        return new(Column(bake => bake.Start), Column(bake => bake.Oven), Column(bake => bake.Boil), Column(bake => bake.Biot));
    }

    /// <summary>Core temperatures of every lane up to a Fourier number, at [step * lanes + lane].</summary>
    public static double[] Core(BakeGrid grid, BakeLanes lanes, double fourier, int width = 0)
    {
        var core = new double[(int)Math.Round(fourier / grid.Step) * lanes.Count];
        var kernel = new Kernel(grid, lanes, core);
        Lanes.Run(ref kernel, width == 0 ? Lanes.Widest : width);
        return core;
    }

    /// <summary>Core of the first lane at a Fourier number.</summary>
    public static double CoreAt(BakeGrid grid, BakeLanes lanes, double fourier) => Core(grid, lanes, fourier)[^lanes.Count];

    private readonly record struct Kernel(BakeGrid Grid, BakeLanes BakeLanes, double[] Core) : ILaneKernel
    {
        public void Run<T>() where T : struct, ILane<T> => BakeKernel.Run<T>(Grid, BakeLanes, Core);
    }
}
