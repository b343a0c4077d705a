using System.Runtime.CompilerServices;
using BenchmarkDotNet.Attributes;
using Doughwright.Engine.Numerics;

namespace Doughwright.Bench;

/// <summary>
/// What a heat kernel does: 100 implicit conduction steps of a 20-cell slab for 32 lanes, each step with one exponential per lane for a
/// coefficient that changes, and a tridiagonal solve. "One end" is the textbook elimination, kept here to be measured against.
/// </summary>
[BenchmarkCategory("lanes")]
public class SweepProbe
{
    private readonly double[] core = new double[32];

    [Params(1, 2, 4, 8)]
    public int Width { get; set; }

    [Benchmark(Description = "sweep, both ends")]
    public double BothEnds() => Sweep(true);

    [Benchmark(Baseline = true, Description = "sweep, one end")]
    public double OneEnd() => Sweep(false);

    private double Sweep(bool bothEnds)
    {
        var kernel = new SweepKernel(core, bothEnds);
        Lanes.Run(ref kernel, Width);
        return core[0];
    }

    private readonly record struct SweepKernel(double[] Core, bool BothEnds) : ILaneKernel
    {
        private const int Cells = 20;
        private const int Steps = 100;

        [MethodImpl(MethodImplOptions.NoInlining)]
        public void Run<T>() where T : struct, ILane<T>
        {
            var (temperature, lower, diagonal, upper, scratch) = (new T[Cells], new T[Cells], new T[Cells], new T[Cells], new T[Cells]);
            for (var lane = 0; lane < Core.Length; lane += T.Width)
            {
                Array.Fill(temperature, T.Of(24));
                for (var step = 0; step < Steps; step++)
                {
                    Fill(temperature, lower, diagonal, upper);
                    if (BothEnds)
                        Tridiagonal.Solve<T>(lower, diagonal, upper, temperature, scratch);
                    else
                        SolveFromOneEnd(lower, diagonal, upper, temperature, scratch);
                }
                temperature[0].Store(Core, lane);
            }
        }

        /// <summary>Insulated at the core, convective to 190 degrees at the surface.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private static void Fill<T>(T[] temperature, T[] lower, T[] diagonal, T[] upper) where T : struct, ILane<T>
        {
            var (none, one, surface) = (T.Of(0), T.Of(1), T.Of(0.2));
            var coupling = T.Of(0.6) + T.Of(0.1) * Elementary.Exp((temperature[Cells - 1] - T.Of(100)) / T.Of(25));
            for (var cell = 0; cell < Cells; cell++)
            {
                lower[cell] = none - coupling;
                diagonal[cell] = one + coupling + coupling;
                upper[cell] = none - coupling;
            }
            diagonal[0] = one + coupling;
            diagonal[Cells - 1] = one + coupling + surface;
            temperature[Cells - 1] += surface * T.Of(190);
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private static void SolveFromOneEnd<T>(T[] lower, T[] diagonal, T[] upper, T[] right, T[] scratch) where T : struct, ILane<T>
        {
            var pivot = T.Of(1) / diagonal[0];
            scratch[0] = upper[0] * pivot;
            right[0] *= pivot;
            for (var cell = 1; cell < Cells; cell++)
            {
                pivot = T.Of(1) / (diagonal[cell] - lower[cell] * scratch[cell - 1]);
                scratch[cell] = upper[cell] * pivot;
                right[cell] = (right[cell] - lower[cell] * right[cell - 1]) * pivot;
            }
            for (var cell = Cells - 2; cell >= 0; cell--)
                right[cell] -= scratch[cell] * right[cell + 1];
        }
    }
}
