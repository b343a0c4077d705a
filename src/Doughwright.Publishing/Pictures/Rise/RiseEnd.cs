using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>How a rise ends: a comb and its cue, a line by the clock, or not at all.</summary>
internal static class RiseEnd
{
    private const double Dot = 4.5;
    private const double SingleAbove = 6;
    private const double SingleBelow = 18;

    /// <returns>What is said of the end and found no room in the picture; null when all of it stands there.</returns>
    public static string? Draw(Svg svg, LabelPlan plan, RiseLabels places, RiseCurve own, RehearsedStep step, RiseFrame frame, Voice voice)
    {
        var level = own.Target is { } target && !frame.IsProof ? frame.Y(target) : RiseFrame.Foot;
        if (own.Target is not null && !frame.IsProof)
        {
            svg.Line("cueline", RiseFrame.Left, level, RiseFrame.Right, level);
        }

        string? homeless;
        if (step.Time is not { } time)
        {
            homeless = Words(svg, plan, places, RiseFrame.Right, level, voice.Say("rise.never"), null, voice);
        }
        else if (own.Target is null && !frame.IsProof)
        {
            homeless = ByTheClock(svg, plan, places, own, frame, time, voice);
        }
        else
        {
            homeless = ByItsCue(svg, plan, places, frame, level, time, voice);
        }

        if (CueOf(own, step, frame, voice) is { } cue)
        {
            RiseCue.Draw(svg, plan, places, level, step.Time is { } known ? Math.Min(RiseFrame.Right, frame.X(known.High ?? known.Likely)) : RiseFrame.Right, cue);
        }

        return homeless;
    }

    private static string? ByItsCue(Svg svg, LabelPlan plan, RiseLabels places, RiseFrame frame, double level, Estimate<Duration> time, Voice voice)
    {
        var (low, likely) = (frame.X(time.Low), frame.X(time.Likely));

        // An open range has its teeth to the edge of the picture.
        var high = Math.Min(RiseFrame.Right, time.High is { } end ? frame.X(end) : RiseFrame.Right);
        Comb.Draw(svg, low, likely, high, (place, depth) => (place, level + depth));
        plan.Take(Box.Of(low, level, high, level + 17));
        svg.Circle("dot", likely, level, Dot);
        plan.Take(Box.Of(likely - Dot - 2, level - Dot - 2, likely + Dot + 2, level + Dot + 2));
        return Words(svg, plan, places, low, level, voice.Text(time.Likely), RiseTime.RangeOf(time, voice), voice, high);
    }

    private static string? ByTheClock(Svg svg, LabelPlan plan, RiseLabels places, RiseCurve own, RiseFrame frame, Estimate<Duration> time, Voice voice)
    {
        var x = frame.X(time.Likely);
        var top = RiseFrame.GrowthAt(own.Likely, time.Likely) is { } growth ? frame.Y(Math.Min(growth, frame.Highest)) : RiseFrame.Head;
        svg.Line("edge", x, top - 8, x, RiseFrame.Foot);
        return Words(svg, plan, places, x, RiseFrame.Foot, voice.Text(time.Likely), voice.Say("rise.by-the-clock"), voice, x);
    }

    /// <summary>The time with its range, left of where it ends, or right of it where the left is taken.</summary>
    /// <returns>Both in one line, where no place is free; null when they stand.</returns>
    private static string? Words(Svg svg, LabelPlan plan, RiseLabels places, double left, double level, string first, string? second, Voice voice, double right = RiseFrame.Right)
    {
        (double X, double Y, bool Above, Anchor Anchor)[] ways =
        [
            (left - 8, level - 4, true, Anchor.End), (right + 8, level + 2, false, Anchor.Start), (right + 8, level - 4, true, Anchor.Start),
            (right, level - 6, true, Anchor.End), (left - 8, level + 16, false, Anchor.End), (right, level + 18, false, Anchor.End), (left, level - 50, true, Anchor.End), (RiseFrame.Left + 8, level - 4, true, Anchor.Start),
            (right, level + 60, false, Anchor.End), (RiseFrame.Left + 8, level - 50, true, Anchor.Start),
        ];
        foreach (var avoidLines in new[] { true, false })
        {
            foreach (var (x, y, above, anchor) in ways)
            {
                var single = y + (above ? -SingleAbove : SingleBelow);
                var box = second is null
                    ? LabelPlan.Line(x, single, first, Lettering.Head, anchor)
                    : LabelPlan.TwoLines(x, y, first, second, above, Lettering.Head, Lettering.Value, anchor);
                if (!places.IsClear(box, avoidLines: avoidLines) || !plan.TryTake(box))
                {
                    continue;
                }

                if (second is null)
                {
                    svg.Text(Lettering.Head.Class, x, single, first, anchor);
                }
                else
                {
                    svg.TwoLines(x, y, first, second, above, anchor, Lettering.Head.Class, Lettering.Value.Class);
                }

                return null;
            }
        }

        return second is null ? first : voice.Say("rise.end-below", ("time", first), ("range", second));
    }

    /// <summary>The author's cue; without one the level in words, but never for a final proof.</summary>
    private static string? CueOf(RiseCurve own, RehearsedStep step, RiseFrame frame, Voice voice) =>
        step.Cue is { Length: > 0 } cue ? cue
        : frame.IsProof ? voice.Say("rise.by-sight")
        : own.Target is not { } target ? null
        : target == 2 ? voice.Say("rise.doubled")
        : voice.Say("rise.level", ("times", target));
}
