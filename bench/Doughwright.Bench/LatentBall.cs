using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Bench;

/// <summary>
/// The bake that solvers are measured with: a sphere of 50 equal shells, a convective surface, constant conductivity, and water that boils in a
/// bell about 100 °C. H = T + L/(1 + exp((100 - T)/2.5)) in K, time in Fourier number.
/// </summary>
/// <remarks>
/// As the kernel of the engine does: heat content is what is kept, one Newton step a time step from a guess drawn on from the steps before, one
/// clock for all lanes. Here nothing has a kink, so backward differences of third order serve. A lane whose Newton step was long is baked again
/// with twice the steps, whatever the others did.
/// </remarks>
internal sealed class LatentBall
{
    public const int Cells = 50;
    public const int Marks = 6;

    /// <summary>Squared K: beyond it one Newton step is not to be trusted.</summary>
    private const double LongestCorrection = 12 * 12;

    private readonly double[] volume = new double[Cells];
    private readonly double[] face = new double[Cells];
    private readonly Weights[] weights;

    public LatentBall(int steps)
    {
        Steps = steps;
        var width = 1.0 / Cells;
        for (var cell = 0; cell < Cells; cell++)
        {
            var (inner, outer) = (cell * width, (cell + 1) * width);
            volume[cell] = ((outer * outer * outer) - (inner * inner * inner)) / 3;
            face[cell] = outer * outer / width;
        }

        Half = (1 - (width / 2)) / (width / 2);
        weights = [.. Enumerable.Range(1, steps).Select(step => Weights.At(step, steps))];
    }

    public int Steps { get; }

    public double Half { get; }

    /// <summary>Cores at the six marks of every kitchen, at [mark x kitchens + kitchen].</summary>
    public double[] Bake(LatentKitchens kitchens, int width)
    {
        var cores = new double[Marks * kitchens.Count];
        var worst = new double[kitchens.Count];
        var kernel = new Kernel(this, kitchens, cores, worst);
        Lanes.Run(ref kernel, width);
        if (worst.Any(correction => !(correction < LongestCorrection)))
        {
            var again = new LatentBall(2 * Steps).Bake(kitchens, width);
            for (var at = 0; at < cores.Length; at++)
            {
                cores[at] = worst[at % kitchens.Count] < LongestCorrection ? cores[at] : again[at];
            }
        }

        return cores;
    }

    private readonly record struct Kernel(LatentBall Ball, LatentKitchens Kitchens, double[] Cores, double[] Worst) : ILaneKernel
    {
        [MethodImpl(MethodImplOptions.NoInlining)]
        public void Run<T>() where T : struct, ILane<T>
        {
            var run = new LatentRun<T>(Ball.volume, Ball.face);
            for (var lane = 0; lane < Kitchens.Count; lane += T.Width)
            {
                run.Begin(Kitchens, lane, Ball.Half);
                for (var (step, mark) = (1, 1); step <= Ball.Steps; step++)
                {
                    run.Advance(in Ball.weights[step - 1]);
                    for (; mark <= Marks && Weights.Moment(step, Ball.Steps) >= (double)mark / Marks - 1e-12; mark++)
                    {
                        run.CoreAt((double)mark / Marks, step, Ball.Steps).Store(Cores, ((mark - 1) * Kitchens.Count) + lane);
                    }
                }

                run.Longest.Store(Worst, lane);
            }
        }
    }

    /// <summary>Weights of one step of the clock t = (j/N)², as shares of the whole time.</summary>
    internal readonly record struct Weights(double Newest, double First, double Second, double Third, double Guess1, double Guess2, double Guess3)
    {
        public static double Moment(int step, int steps) => step <= 0 ? 0 : (double)step / steps * ((double)step / steps);

        public static Weights At(int step, int steps)
        {
            var now = Moment(step, steps);
            var a = now - Moment(step - 1, steps);
            var b = now - Moment(step - 2, steps);
            var c = now - Moment(step - 3, steps);
            return step switch
            {
                1 => new(1 / a, -1 / a, 0, 0, 1, 0, 0),
                2 => new((1 / a) + (1 / b), -b / (a * (b - a)), a / (b * (b - a)), 0, b / (b - a), -a / (b - a), 0),
                _ => new(
                    (1 / a) + (1 / b) + (1 / c), -b * c / (a * (b - a) * (c - a)), a * c / (b * (b - a) * (c - b)), -a * b / (c * (c - a) * (c - b)),
                    b * c / ((b - a) * (c - a)), -a * c / ((b - a) * (c - b)), a * b / ((c - a) * (c - b))),
            };
        }
    }
}

/// <summary>Kitchens of the measuring bake, as many as fill whole packs.</summary>
internal sealed record LatentKitchens(double[] Start, double[] Oven, double[] Transfer, double[] Latent, double[] Fourier)
{
    public int Count => Start.Length;

    /// <summary>Drawn at fixed points: dough of 18 to 32 °C, ovens of 170 to 260, hR/k 0.6 to 2, latent heat 150 to 350 K, 0.3 to 0.6 in Fourier number.</summary>
    public static LatentKitchens Draw(int count)
    {
        // Evenly spread in every direction: multiples of an irrational number, without what is whole in them.
        double[] Between(double irrational, double low, double high) =>
            [.. Enumerable.Range(0, count).Select(index => low + ((0.5 + (index * irrational)) % 1 * (high - low)))];
        return new(
            Between(0.41421356237309515, 18, 32), Between(0.7320508075688772, 170, 260), Between(0.2360679774997898, 0.6, 2),
            Between(0.6457513110645907, 150, 350), Between(0.3166247903553998, 0.3, 0.6));
    }

    public LatentKitchens First(int count) => new(Start[..count], Oven[..count], Transfer[..count], Latent[..count], Fourier[..count]);
}
