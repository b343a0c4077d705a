using Doughwright.Publishing.Pictures.Strips.Geometry;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>A wash that comes straight from its packet: a thread that falls onto the dough.</summary>
internal static class WashMarks
{
    private const double Lead = 20;
    private const double Above = 62;

    /// <summary>Left free at the top for the heads of the steps, in the wide strip.</summary>
    private const double UnderHeads = 108;

    /// <summary>Left free for the rails, in the tall strip.</summary>
    private const double BesideRails = 44;

    public static (double Minute, double Height) Start(Layout layout, BodyShape body, PlannedWash wash) =>
        (layout.Frame.Time.Shift(wash.Step.Start, -Lead), Height(layout, body, wash));

    public static void Draw(Canvas canvas, Layout layout, BodyShape body, PlannedWash wash)
    {
        var (from, high) = Start(layout, body, wash);
        // A brush of two minutes is a hair wide: the thread still needs room to fall.
        var to = Math.Max(wash.Step.EndOrStart, layout.Frame.Time.Shift(wash.Step.Start, 2));
        var low = body.Top(wash.Step.EndOrStart);
        double Middle(double minute) => Ease.Between(minute, from, to, high, low);
        canvas.Band("strand", [new(from, to, Paint.None)], Middle, minute => Middle(minute) + Lanes.Thread, []);
    }

    private static double Height(Layout layout, BodyShape body, PlannedWash wash)
    {
        var low = body.Top(wash.Step.EndOrStart);
        return Math.Max(low + 8, Math.Min(low + Above, layout.Frame.Bench - (layout.Frame.IsWide ? UnderHeads : BesideRails)));
    }
}
