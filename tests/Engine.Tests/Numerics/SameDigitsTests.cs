using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Numerics;

/// <summary>Every operation gives the same bits at every width, whatever the neighbours hold.</summary>
public class SameDigitsTests
{
    private const int Count = 65_536 + 512;

    public static TheoryData<int> Widths => [1, 2, 4, 8];

    [Theory]
    [MemberData(nameof(Widths))]
    public void EveryOperation_AtEveryWidth_HasTheBitsOfOneLane(int width)
    {
        var (a, b, c, d) = (Values(1), Values(2), Values(3), Values(4));
        var one = new EveryOperation(a, b, c, d);
        var wide = new EveryOperation(a, b, c, d);
        Lanes.Run(ref one, 1);
        Lanes.Run(ref wide, width);
        foreach (var (name, values) in wide.Results)
            AssertSameBits(name, one.Results[name], values);
    }

    /// <summary>A shift of the input by one lane shifts the output by one lane and changes nothing else.</summary>
    [Fact]
    public void NeighboursInThePack_ChangeNothing()
    {
        var a = Values(5);
        var shifted = a.Append(1.5).Skip(1).ToArray();
        var first = new EveryOperation(a, a, a, a);
        var second = new EveryOperation(shifted, shifted, shifted, shifted);
        Lanes.Run(ref first, 8);
        Lanes.Run(ref second, 8);
        AssertSameBits("exp", first.Results["exp"][1..], second.Results["exp"][..^1]);
        AssertSameBits("log", first.Results["log"][1..], second.Results["log"][..^1]);
    }

    [Theory]
    [MemberData(nameof(Widths))]
    public void ScaleOfTwo_AtEveryWidth_IsExactForEveryExponent(int width)
    {
        var exponents = Enumerable.Range(-1022, 2046).Select(e => (double)e).Concat([0, 0]).ToArray();
        var kernel = new Scale(exponents, new double[exponents.Length]);
        Lanes.Run(ref kernel, width);
        Assert.All(exponents.Zip(kernel.Powers), pair => Assert.Equal(Math.ScaleB(1, (int)pair.First), pair.Second));
    }

    [Fact]
    public void Split_OfANormalNumber_PutsItTogetherAgain()
    {
        foreach (var x in Values(6).Select(Math.Abs).Where(double.IsNormal))
        {
            var (exponent, fraction) = Lane1.Split(Lane1.Of(x));
            Assert.InRange(fraction.Value, Math.Sqrt(0.5), Math.BitDecrement(Math.Sqrt(2)));
            Assert.Equal(x, Math.ScaleB(fraction.Value, (int)exponent.Value));
        }
    }

    /// <summary>Edges among edges, any bit pattern, and values of everyday size.</summary>
    private static double[] Values(int seed)
    {
        double[] edges =
        [
            0, -0.0, 1, -1, 0.5, 1.5, 2.5, -2.5, double.Epsilon, 2.2250738585072014e-308, 2.225073858507201e-308, double.MaxValue,
            double.MinValue, double.PositiveInfinity, double.NegativeInfinity, double.NaN, -708, Math.BitDecrement(-708), 709,
            Math.BitIncrement(709), 710, -745.2, Math.Sqrt(2), Math.BitDecrement(Math.Sqrt(2)), Math.Sqrt(0.5), 4503599627370496,
            Math.BitIncrement(1), Math.BitDecrement(1),
        ];
        var random = new Random(seed);
        return [.. Enumerable.Range(0, Count).Select(i => (i % 4) switch
        {
            0 => edges[random.Next(edges.Length)],
            1 => BitConverter.Int64BitsToDouble(random.NextInt64(long.MinValue, long.MaxValue)),
            2 => random.NextDouble() * 200 - 100,
            _ => Math.Exp(random.NextDouble() * 40 - 20),
        })];
    }

    private static void AssertSameBits(string name, double[] expected, double[] actual)
    {
        for (var i = 0; i < expected.Length; i++)
        {
            var same = BitConverter.DoubleToInt64Bits(expected[i]) == BitConverter.DoubleToInt64Bits(actual[i]);
            Assert.True(same || (double.IsNaN(expected[i]) && double.IsNaN(actual[i])), $"{name} at {i}: {expected[i]:R}, {actual[i]:R}");
        }
    }

    private sealed class EveryOperation(double[] a, double[] b, double[] c, double[] d) : ILaneKernel
    {
        public Dictionary<string, double[]> Results { get; } = [];

        public void Run<T>() where T : struct, ILane<T>
        {
            Each<T>("add", (a, b, _, _) => a + b);
            Each<T>("subtract", (a, b, _, _) => a - b);
            Each<T>("multiply", (a, b, _, _) => a * b);
            Each<T>("divide", (a, b, _, _) => a / b);
            Each<T>("root", (a, _, _, _) => T.Sqrt(a));
            Each<T>("smaller", (a, b, _, _) => T.Min(a, b));
            Each<T>("larger", (a, b, _, _) => T.Max(a, b));
            Each<T>("select", T.WhereLess);
            Each<T>("round", (a, _, _, _) => T.Round(a));
            Each<T>("exponent", (a, _, _, _) => T.Split(a).Exponent);
            Each<T>("fraction", (a, _, _, _) => T.Split(a).Fraction);
            Each<T>("of", (_, _, _, _) => T.Of(0.1));
            Each<T>("exp", (a, _, _, _) => Elementary.Exp(a));
            Each<T>("log", (a, _, _, _) => Elementary.Log(a));
            Each<T>("pow", (a, b, _, _) => Elementary.Pow(a, b));
            Each<T>("mixed", (a, b, c, d) => (a * b + c * d) / (a + Elementary.Exp(b - c) * d));
        }

        private void Each<T>(string name, Func<T, T, T, T, T> operation) where T : struct, ILane<T>
        {
            var results = Results[name] = new double[a.Length];
            for (var i = 0; i < a.Length; i += T.Width)
                operation(T.Load(a, i), T.Load(b, i), T.Load(c, i), T.Load(d, i)).Store(results, i);
        }
    }

    private readonly record struct Scale(double[] Exponents, double[] Powers) : ILaneKernel
    {
        public void Run<T>() where T : struct, ILane<T>
        {
            for (var i = 0; i < Exponents.Length; i += T.Width)
                T.ScaleOfTwo(T.Load(Exponents, i)).Store(Powers, i);
        }
    }
}
