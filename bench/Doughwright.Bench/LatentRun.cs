using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Bench;

/// <summary>One pack of the measuring bake. Allocates nothing after it is made.</summary>
internal sealed class LatentRun<T>(double[] volume, double[] face) where T : struct, ILane<T>
{
    private const int Cells = LatentBall.Cells;
    private const double Width = 2.5;

    // All of a shell side by side: one look-up a shell, and one bound to check.
    private readonly Shell[] shells = new Shell[Cells];
    private readonly T[] cores = new T[4];
    private T oven, into, latent, perTime;

    /// <summary>The longest Newton step so far, squared K.</summary>
    public T Longest { get; private set; }

    public void Begin(LatentKitchens kitchens, int lane, double half)
    {
        var start = T.Load(kitchens.Start, lane);
        var transfer = T.Load(kitchens.Transfer, lane);
        oven = T.Load(kitchens.Oven, lane);
        into = T.Of(half) * transfer / (T.Of(half) + transfer);
        latent = T.Load(kitchens.Latent, lane);
        perTime = T.Of(1) / T.Load(kitchens.Fourier, lane);
        var content = start + (latent / (T.Of(1) + Bell(start)));
        Array.Fill(shells, new()
        {
            Warm = start,
            WarmBefore = start,
            WarmLast = start,
            Held = content,
            HeldBefore = content,
            HeldLast = content,
        });
        Array.Fill(cores, start);
        Longest = T.Of(0);
    }

    /// <summary>The core between the last steps, by a cubic through four of them.</summary>
    public T CoreAt(double moment, int step, int steps)
    {
        var sum = T.Of(0);
        for (var i = 0; i < 4; i++)
        {
            var (weight, own) = (1.0, LatentBall.Weights.Moment(step - i, steps));
            for (var j = 0; j < 4; j++)
            {
                if (j != i)
                {
                    var other = LatentBall.Weights.Moment(step - j, steps);
                    weight *= (moment - other) / (own - other);
                }
            }

            sum += T.Of(weight) * cores[i];
        }

        return sum;
    }

    public void Advance(in LatentBall.Weights step)
    {
        Balance(step, shells, volume, face);
        Solve(shells, face);
        (cores[3], cores[2], cores[1], cores[0]) = (cores[2], cores[1], cores[0], shells[0].Warm);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Balance(in LatentBall.Weights step, Span<Shell> shells, ReadOnlySpan<double> volume, ReadOnlySpan<double> face)
    {
        var one = T.Of(1);
        var (guess1, guess2, guess3) = (T.Of(step.Guess1), T.Of(step.Guess2), T.Of(step.Guess3));
        var newest = T.Of(step.Newest) * perTime;
        var (first, second, third) = (T.Of(step.First) * perTime, T.Of(step.Second) * perTime, T.Of(step.Third) * perTime);
        var holds = latent;
        var perWidth = latent * T.Of(1 / Width);
        var (before, inner) = (T.Of(0), T.Of(0));
        for (var index = 0; index < shells.Length; index++)
        {
            ref var shell = ref shells[index];
            var here = (guess1 * shell.Warm) + (guess2 * shell.WarmBefore) + (guess3 * shell.WarmLast);
            var boiled = one / (one + Bell(here));
            var capacity = one + (perWidth * (boiled * (one - boiled)));
            var content = here + (holds * boiled);
            var takes = T.Of(volume[index]);
            var outer = T.Of(face[index]);

            // What comes from the shell within is known now; what goes on to it was left out there.
            var flow = inner * (before - here);
            shell.Guess = here;
            shell.Content = content;
            shell.Capacity = capacity;
            shell.Right = flow - (takes * ((newest * content) + (first * shell.Held) + (second * shell.HeldBefore) + (third * shell.HeldLast)));
            shell.Diagonal = (takes * newest * capacity) + inner + outer;
            shell.Flow = flow;
            (before, inner) = (here, outer);
        }

        ref var last = ref shells[^1];
        last.Diagonal += into - inner;
        last.Right += into * (oven - before);
    }

    /// <summary>From both ends to the middle: two eliminations that do not wait for each other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Solve(Span<Shell> shells, ReadOnlySpan<double> face)
    {
        const int Middle = Cells / 2;
        var one = T.Of(1);
        var (up, down, x, y) = (T.Of(0), T.Of(0), T.Of(0), T.Of(0));
        var (within, beyond) = (T.Of(0), T.Of(0));
        for (int i = 0, j = Cells - 1; i < Middle; i++, j--)
        {
            ref var low = ref shells[i];
            ref var high = ref shells[j];
            var outwards = j == Cells - 1 ? T.Of(0) : shells[j + 1].Flow;
            up = one / (low.Diagonal - (within * within * up));
            down = one / (high.Diagonal - (beyond * beyond * down));
            x = (low.Right - shells[i + 1].Flow + (within * x)) * up;
            y = (high.Right - outwards + (beyond * y)) * down;
            (within, beyond) = (T.Of(face[i]), T.Of(face[j - 1]));
            (low.Right, low.Diagonal) = (x, up * within);
            (high.Right, high.Diagonal) = (y, down * beyond);
        }

        // What is left at the two rows that meet: x = a + f y and y = b + g x.
        var (f, g) = (shells[Middle - 1].Diagonal, shells[Middle].Diagonal);
        y = (y + (g * x)) / (one - (f * g));
        x += f * y;
        var longest = Longest;
        Take(ref shells[Middle - 1], x, ref longest);
        Take(ref shells[Middle], y, ref longest);
        for (int i = Middle - 2, j = Middle + 1; i >= 0; i--, j++)
        {
            ref var low = ref shells[i];
            ref var high = ref shells[j];
            x = low.Right + (low.Diagonal * x);
            y = high.Right + (high.Diagonal * y);
            Take(ref low, x, ref longest);
            Take(ref high, y, ref longest);
        }

        Longest = longest;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Take(ref Shell shell, T change, ref T longest)
    {
        longest = T.Max(longest, change * change);
        (shell.WarmLast, shell.WarmBefore, shell.Warm) = (shell.WarmBefore, shell.Warm, shell.Guess + change);
        (shell.HeldLast, shell.HeldBefore, shell.Held) = (shell.HeldBefore, shell.Held, shell.Content + (shell.Capacity * change));
    }

    /// <summary>exp((100 - T)/2.5) to nine digits, more than a bake asks for. Beyond 1,700 °C it is wrong, and the bake long failed.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Bell(T celsius)
    {
        var x = T.Of(100 / Width) - (celsius * T.Of(1 / Width));
        var k = T.Round(x * T.Of(1.4426950408889634));
        var r = x - (k * T.Of(0.6931471805599453));
        var r2 = r * r;
        var low = T.Of(1) + r + (r2 * (T.Of(1.0 / 2) + (r * T.Of(1.0 / 6))));
        var high = T.Of(1.0 / 24) + (r * T.Of(1.0 / 120)) + (r2 * (T.Of(1.0 / 720) + (r * T.Of(1.0 / 5040))));
        return (low + (r2 * r2 * high)) * T.ScaleOfTwo(k);
    }

    private struct Shell
    {
        public T Warm, WarmBefore, WarmLast, Held, HeldBefore, HeldLast, Guess, Content, Capacity, Right, Diagonal, Flow;
    }
}
