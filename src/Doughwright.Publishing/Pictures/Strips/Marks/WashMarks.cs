using Doughwright.Publishing.Pictures.Strips.Geometry;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>A wash that comes straight from its packet: a thread that falls onto the dough.</summary>
internal static class WashMarks
{
    private const double Lead = 20;
    private const double Above = 62;
    private const double Least = 8;

    /// <summary>Two lines of a label.</summary>
    private const double Apart = 30;

    /// <summary>As wide as most names.</summary>
    private const double Near = 60;

    private const int WayPoints = 12;

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

    /// <summary>The thread as points in minutes and heights, for labels to keep off.</summary>
    public static IEnumerable<(double Minute, double Height)> Way(Layout layout, BodyShape body, PlannedWash wash)
    {
        var (from, high) = Start(layout, body, wash);
        var (to, low) = (Math.Max(wash.Step.EndOrStart, layout.Frame.Time.Shift(wash.Step.Start, 2)), body.Top(wash.Step.EndOrStart));
        return Enumerable.Range(0, WayPoints + 1).Select(i => from + ((to - from) * i / WayPoints)).Select(minute => (minute, Ease.Between(minute, from, to, high, low)));
    }

    private static double Height(Layout layout, BodyShape body, PlannedWash wash)
    {
        var low = body.Top(wash.Step.EndOrStart);
        var high = Math.Max(low + Least, Math.Min(low + Above, layout.Frame.Bench - (layout.Frame.IsWide ? UnderHeads : BesideRails)));
        return layout.Frame.IsWide ? Math.Max(low + Least, high - (Apart * Behind(layout, wash))) : high;
    }

    /// <summary>How many others follow so soon that their names need the room at its left: it begins lower then, and the names stand one over the other.</summary>
    private static int Behind(Layout layout, PlannedWash wash)
    {
        var time = layout.Frame.Time;
        var starts = layout.Plan.Washes.Select(other => time.Place(other.Step.Start)).Where(place => place > time.Place(wash.Step.Start)).Order();
        var (last, count) = (time.Place(wash.Step.Start), 0);
        foreach (var place in starts)
        {
            if (place - last >= Near)
            {
                break;
            }

            (last, count) = (place, count + 1);
        }

        return count;
    }
}
