using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>What a person sees at the end, in words beside the comb: whole in one line, whole in two, or as much of it as there is room for.</summary>
internal static class RiseCue
{
    private static readonly double[] WidthsCut = [300, 230, 160, 110];

    /// <param name="level">Height of the comb.</param>
    /// <param name="end">Right end of the comb.</param>
    public static void Draw(Svg svg, LabelPlan plan, RiseLabels places, double level, double end, string cue)
    {
        if (OneLine(svg, plan, places, level, end, cue))
        {
            return;
        }

        if (Halves(cue) is var (half, other) && TwoLines(svg, plan, places, level, end, half, other))
        {
            return;
        }

        foreach (var width in WidthsCut)
        {
            if (Cut(cue, width) is var (first, second) && TwoLines(svg, plan, places, level, end, first, second))
            {
                return;
            }

            if (OneLine(svg, plan, places, level, end, Lettering.Cue.Fitted(cue, width)))
            {
                return;
            }
        }
    }

    private static bool OneLine(Svg svg, LabelPlan plan, RiseLabels places, double level, double end, string text)
    {
        (double X, double Y, Anchor Anchor)[] ways =
        [
            (RiseFrame.Left + 8, level - 8, Anchor.Start), (RiseFrame.Left + 8, level + 20, Anchor.Start), (end, level - 56, Anchor.End),
            (RiseFrame.Right, level - 8, Anchor.End), (RiseFrame.Right, level - 56, Anchor.End), (RiseFrame.Right, level + 38, Anchor.End),
            (RiseFrame.Left + 8, RiseFrame.Head + 10, Anchor.Start),
        ];
        foreach (var (x, y, anchor) in ways)
        {
            var box = LabelPlan.Line(x, y, text, Lettering.Cue, anchor);
            if (places.IsClear(box) && plan.TryTake(box))
            {
                svg.Text(Lettering.Cue.Class, x, y, text, anchor);
                return true;
            }
        }

        return false;
    }

    private static bool TwoLines(Svg svg, LabelPlan plan, RiseLabels places, double level, double end, string first, string second)
    {
        (double X, double Y, bool Above, Anchor Anchor)[] ways =
        [
            (RiseFrame.Left + 8, level - 4, true, Anchor.Start), (RiseFrame.Left + 8, level + 2, false, Anchor.Start), (end, level - 50, true, Anchor.End),
            (RiseFrame.Right, level - 50, true, Anchor.End), (RiseFrame.Right, level - 4, true, Anchor.End), (RiseFrame.Right, level + 24, false, Anchor.End), (RiseFrame.Right, level + 50, false, Anchor.End), (RiseFrame.Right, RiseFrame.Foot - 6, true, Anchor.End),
            (RiseFrame.Left + 8, 2, false, Anchor.Start), (RiseFrame.Left + 8, RiseFrame.Head, false, Anchor.Start),
        ];
        foreach (var (x, y, above, anchor) in ways)
        {
            var box = LabelPlan.TwoLines(x, y, first, second, above, Lettering.Cue, Lettering.Cue, anchor);
            if (places.IsClear(box) && plan.TryTake(box))
            {
                svg.TwoLines(x, y, first, second, above, anchor, Lettering.Cue.Class, Lettering.Cue.Class);
                return true;
            }
        }

        return false;
    }

    /// <summary>Two lines of about the same length; null when there is nothing to break.</summary>
    private static (string First, string Second)? Halves(string text)
    {
        var spaces = Enumerable.Range(0, text.Length).Where(i => text[i] == ' ').ToList();
        if (spaces.Count == 0)
        {
            return null;
        }

        var at = spaces.MinBy(space => Math.Max(Lettering.Cue.WidthOf(text[..space]), Lettering.Cue.WidthOf(text[(space + 1)..])));
        return (text[..at], text[(at + 1)..]);
    }

    /// <summary>The first line full, the second as far as it goes; null when there is nothing to break.</summary>
    private static (string First, string Second)? Cut(string text, double width)
    {
        var at = -1;
        for (var space = text.IndexOf(' '); space > 0 && Lettering.Cue.WidthOf(text[..space]) <= width; space = text.IndexOf(' ', space + 1))
        {
            at = space;
        }

        return at < 0 ? null : (text[..at], Lettering.Cue.Fitted(text[(at + 1)..], width));
    }
}
