using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>
/// The moments of a bake, the same for every lane: t = scale (j/steps)^1.5, short steps while the surface warms and longer ones later. With them the
/// weights of backward differences of second order, which depend on nothing else.
/// </summary>
internal sealed class BakeClock
{
    private const double Exponent = 1.5;

    /// <param name="seconds">When the counted steps are over.</param>
    /// <param name="steps">How many lead there.</param>
    /// <param name="most">How many there are at all; the later ones follow the same law.</param>
    public BakeClock(double seconds, int steps, int most)
    {
        Count = most;
        Seconds = new double[most + 1];
        for (var step = 1; step <= most; step++)
        {
            Seconds[step] = seconds * Elementary.Pow((double)step / steps, Exponent);
        }

        (Newest, Newer, Older, Ratio) = (new double[most + 1], new double[most + 1], new double[most + 1], new double[most + 1]);
        (Newest[1], Newer[1]) = (1 / Seconds[1], -1 / Seconds[1]);
        for (var step = 2; step <= most; step++)
        {
            var one = Length(step);
            var two = Seconds[step] - Seconds[step - 2];
            Newest[step] = (1 / one) + (1 / two);
            Newer[step] = -two / (one * (two - one));
            Older[step] = one / (two * (two - one));
            Ratio[step] = one / Length(step - 1);
        }
    }

    public int Count { get; }

    /// <summary>At [step]; 0 before the first one.</summary>
    public double[] Seconds { get; }

    /// <summary>Weight of the value sought in its rate of change, 1/s. The first step is an Euler step.</summary>
    public double[] Newest { get; }

    /// <summary>Weight of the value before.</summary>
    public double[] Newer { get; }

    /// <summary>Weight of the value before that.</summary>
    public double[] Older { get; }

    /// <summary>Length over that of the step before; 0 at the first.</summary>
    public double[] Ratio { get; }

    public double Length(int step) => Seconds[step] - Seconds[step - 1];
}
