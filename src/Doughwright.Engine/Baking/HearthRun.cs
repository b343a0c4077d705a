using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking;

/// <summary>One pack of lanes of the slab that pieces stand on: conduction through it, the piece above, the oven below.</summary>
/// <remarks>
/// ρ c ∂T/∂t = k ∂²T/∂x², shells that widen from the top down, backward differences of second order. The piece is met at what the last two
/// steps point to, and the slab then meets the piece as it came out of the step: second order, and neither waits for the other.
/// </remarks>
internal sealed class HearthRun<T> where T : struct, ILane<T>
{
    private const int Cells = 12;
    private const double Growth = 1.35;

    private static readonly double[] Widths = WidthsOf();

    private readonly T[] now = new T[Cells], before = new T[Cells], lower = new T[Cells], diagonal = new T[Cells], upper = new T[Cells], right = new T[Cells], scratch = new T[Cells];
    private OvenHearth slab = None;
    private double half;
    private T given, givenBefore, taken, takenBefore;

    private static OvenHearth None { get; } = new(0, 0, 1, 1, 1, 0);

    /// <summary>From the surface of the piece to the middle of the uppermost shell, W/(m² K).</summary>
    public T Conducts { get; private set; }

    /// <summary>Of the piece's surface.</summary>
    public T Share { get; private set; }

    /// <summary>Uppermost shell, °C.</summary>
    public T Top => now[0];

    /// <summary>Heat in the slab, J/m², against 0 °C.</summary>
    public T Heat
    {
        get
        {
            var sum = T.Of(0);
            for (var cell = 0; cell < Cells; cell++)
            {
                sum += T.Of(slab.HeatCapacity * slab.Thick * Widths[cell]) * now[cell];
            }

            return sum;
        }
    }

    /// <summary>Heat that came from the oven and that went to the piece, J/m², summed as the steps weigh it.</summary>
    public (T Taken, T Given) Flows => (taken, given);

    /// <param name="transfer">Factor on all that the oven gives, contact included.</param>
    public void Begin(OvenHearth? hearth, T oven, T transfer)
    {
        slab = hearth ?? None;
        half = slab.Thick * Widths[0] / 2 / slab.Conductivity;
        var contact = transfer * T.Of(slab.Contact);
        (Share, Conducts) = (T.Of(slab.Share), contact / (T.Of(1) + (contact * T.Of(half))));
        (given, givenBefore, taken, takenBefore) = (T.Of(0), T.Of(0), T.Of(0), T.Of(0));
        var starts = oven - T.Of(slab.CoolerBy);
        now.AsSpan().Fill(starts);
        before.AsSpan().Fill(starts);
    }

    /// <summary>What the piece meets at the end of a step that is so many times as long as the one before.</summary>
    public T Ahead(T ratio) => now[0] + (ratio * (now[0] - before[0]));

    /// <param name="surface">Of the piece at the end of the step, °C.</param>
    /// <param name="oven">The same moment, °C.</param>
    /// <param name="length">s.</param>
    /// <param name="ratio">Over that of the step before; 0 at the first.</param>
    public void Advance(T surface, T oven, double length, double ratio)
    {
        var (newest, newer, older) = (
            T.Of((1 + (2 * ratio)) / (1 + ratio) / length), T.Of(-(1 + ratio) / length), T.Of(ratio * ratio / (1 + ratio) / length));
        var below = T.Of(slab.Below / (1 + (slab.Below * slab.Thick * Widths[^1] / 2 / slab.Conductivity)));
        var above = T.Of(0);
        for (var cell = 0; cell < Cells; cell++)
        {
            var holds = T.Of(slab.HeatCapacity * slab.Thick * Widths[cell]);
            var next = cell + 1 < Cells ? T.Of(2 * slab.Conductivity / slab.Thick / (Widths[cell] + Widths[cell + 1])) : below;
            var up = cell == 0 ? Conducts : above;
            right[cell] = T.Of(0) - (holds * ((newer * now[cell]) + (older * before[cell])));
            diagonal[cell] = (holds * newest) + up + next;
            lower[cell] = T.Of(0) - above;
            upper[cell] = cell + 1 < Cells ? T.Of(0) - next : T.Of(0);
            above = next;
        }

        right[0] += Conducts * surface;
        right[^1] += below * oven;
        Tridiagonal.Solve<T>(lower, diagonal, upper, right, scratch);
        now.CopyTo(before, 0);
        right.CopyTo(now, 0);
        var one = T.Of(1) / newest;
        (given, givenBefore) = (((Conducts * (now[0] - surface)) - (newer * given) - (older * givenBefore)) * one, given);
        (taken, takenBefore) = (((below * (oven - now[^1])) - (newer * taken) - (older * takenBefore)) * one, taken);
    }

    private static double[] WidthsOf()
    {
        var widths = new double[Cells];
        widths[0] = (1 - Growth) / (1 - Elementary.Pow(Growth, (double)Cells));
        for (var cell = 1; cell < Cells; cell++)
        {
            widths[cell] = widths[cell - 1] * Growth;
        }

        return widths;
    }
}
