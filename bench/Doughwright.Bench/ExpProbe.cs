using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using BenchmarkDotNet.Attributes;
using Doughwright.Engine.Numerics;

namespace Doughwright.Bench;

/// <summary>The own exponential at every width against the platform's, all in one run. Times are per value.</summary>
[BenchmarkCategory("lanes")]
public class ExpProbe
{
    private const int Count = 1024;

    private readonly double[] x = [.. Enumerable.Range(0, Count).Select(i => -20 + 40.0 * ((i * 0.6180339887498949) % 1))];
    private readonly double[] y = new double[Count];

    [Benchmark(Baseline = true, OperationsPerInvoke = Count, Description = "Math.Exp")]
    public double[] Platform()
    {
        for (var i = 0; i < Count; i++)
            y[i] = Math.Exp(x[i]);
        return y;
    }

    [Benchmark(OperationsPerInvoke = Count, Description = "Vector256.Exp")]
    public double[] PlatformVector()
    {
        for (var i = 0; i < Count; i += 4)
            Vector256.Exp(Vector256.Create(x, i)).CopyTo(y, i);
        return y;
    }

    [Benchmark(OperationsPerInvoke = Count, Description = "own, 1 lane")]
    public double[] Own1() => Own(1);

    [Benchmark(OperationsPerInvoke = Count, Description = "own, 2 lanes")]
    public double[] Own2() => Own(2);

    [Benchmark(OperationsPerInvoke = Count, Description = "own, 4 lanes")]
    public double[] Own4() => Own(4);

    [Benchmark(OperationsPerInvoke = Count, Description = "own, 8 lanes")]
    public double[] Own8() => Own(8);

    private double[] Own(int width)
    {
        var kernel = new ExpKernel(x, y);
        Lanes.Run(ref kernel, width);
        return y;
    }

    private readonly record struct ExpKernel(double[] X, double[] Y) : ILaneKernel
    {
        [MethodImpl(MethodImplOptions.NoInlining)]
        public void Run<T>() where T : struct, ILane<T>
        {
            ReadOnlySpan<double> from = X;
            Span<double> to = Y;
            for (var i = 0; i < from.Length; i += T.Width)
                Elementary.Exp(T.Load(from, i)).Store(to, i);
        }
    }
}
