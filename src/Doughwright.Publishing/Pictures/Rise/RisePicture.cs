using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>
/// How a dough rises: the own curve with its range, other kitchens dashed, the warmth of the dough below. A bulk that ends by its growth has its
/// comb at that level; a final proof has it on the axis of time, because only the eye ends it.
/// </summary>
internal static class RisePicture
{
    private const double RibbonHeight = 12;
    private const double FigureDrop = 4;
    private const double FigureGap = 7;
    private const double RowOfAlso = 24;

    /// <summary>A name with its time. A longer name is cut, the time is not.</summary>
    private const double LongestName = 300;

    public static string Draw(RiseCurve own, RehearsedStep step, IReadOnlyList<OtherRise> others, Voice voice, string id)
    {
        var frame = RiseFrame.Of(own, step, others);
        var svg = new Svg();
        var plan = new LabelPlan(RiseFrame.Width);

        // A comb on the axis needs room under it.
        var ribbonTop = RiseFrame.Foot + (frame.IsProof ? 24 : 12);
        DrawGrowths(svg, plan, frame, voice);
        DrawTimes(svg, plan, frame, ribbonTop + RibbonHeight + 24, voice);

        var line = frame.Run(own.Likely.Select(point => (point.After, point.Growth)));
        var dashed = others.Select(other => frame.Run(other.Curve.Likely.Select(point => (point.After, point.Growth)))).ToList();
        var band = RiseBand.Of(own, frame);
        svg.Path("rband", band, closed: true, fill: $"url(#{id}h)");
        foreach (var run in dashed)
        {
            svg.Path("rother", run);
        }

        svg.Path("rline", line);
        var places = new RiseLabels(plan, [line, .. dashed], band);
        var ribbon = DrawRibbon(svg, plan, own, step, frame, ribbonTop, id, voice);
        var homeless = RiseEnd.Draw(svg, plan, places, own, step, frame, voice);
        RiseFolds.Draw(svg, plan, places, own, step, frame, voice);
        var unnamed = DrawNames(svg, places, others, dashed, voice);
        var height = ribbonTop + RibbonHeight + 34;
        foreach (var below in (homeless is null ? Array.Empty<string>() : [homeless]).Concat(unnamed.Select(name => voice.Say("rise.also", ("name", name)))))
        {
            svg.Text(Lettering.Value.Class, RiseFrame.Left, height + 12, Lettering.Value.Fitted(below, RiseFrame.Width - RiseFrame.Left));
            height += RowOfAlso;
        }

        var hatch = $"<pattern id=\"{id}h\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><line class=\"hatch\" x1=\"0\" y1=\"0\" x2=\"0\" y2=\"5\"/></pattern>";
        return svg.Picture("strip chart", RiseFrame.Width, height, id, RiseWords.Title(step, voice), RiseWords.Description(own, step, others, voice), ribbon + hatch);
    }

    private static void DrawGrowths(Svg svg, LabelPlan plan, RiseFrame frame, Voice voice)
    {
        svg.Line("hour", RiseFrame.Left, RiseFrame.Foot, RiseFrame.Right, RiseFrame.Foot);
        if (frame.IsProof)
        {
            return;
        }

        for (var growth = 1.0; growth <= frame.Highest + 1e-9; growth += frame.GrowthStep)
        {
            var y = frame.Y(growth);
            var figure = voice.Say("rise.growth", ("times", growth));
            svg.Line("hour", RiseFrame.Left, y, RiseFrame.Right, y);
            svg.Text(Lettering.Axis.Class, RiseFrame.Left - FigureGap, y + FigureDrop, figure, Anchor.End);
            plan.Take(LabelPlan.Line(RiseFrame.Left - FigureGap, y + FigureDrop, figure, Lettering.Axis, Anchor.End));
        }
    }

    private static void DrawTimes(Svg svg, LabelPlan plan, RiseFrame frame, double y, Voice voice)
    {
        for (var minutes = 0.0; minutes <= frame.Minutes + 1e-9; minutes += frame.StepMinutes)
        {
            var x = frame.X(Duration.FromMinutes(minutes));
            var time = voice.Text(Duration.FromMinutes(minutes), "column");
            var figure = minutes + frame.StepMinutes > frame.Minutes + 1e-9 ? voice.Say("rise.hours", ("time", time)) : time;
            svg.Line("tick", x, RiseFrame.Foot, x, RiseFrame.Foot + 5);
            svg.Text(Lettering.Axis.Class, x, y, figure, Anchor.Middle);
            plan.Take(LabelPlan.Line(x, y, figure, Lettering.Axis, Anchor.Middle));
        }
    }

    /// <summary>The dough's own warmth along the same time, to the likely end of the step, its first and last temperature beside it.</summary>
    /// <returns>The definition of its colours.</returns>
    private static string DrawRibbon(Svg svg, LabelPlan plan, RiseCurve own, RehearsedStep step, RiseFrame frame, double top, string id, Voice voice)
    {
        var end = Math.Min(frame.Minutes, step.Time?.Likely.Minutes ?? frame.Minutes);
        var points = own.Likely.TakeWhile(point => point.After.Minutes <= end + 1e-6).ToList();
        var right = frame.X(points[^1].After);
        svg.Rect("strand", RiseFrame.Left, top, right - RiseFrame.Left, RibbonHeight, $"url(#{id}w)");
        Figure(RiseFrame.Left - FigureGap, voice.Degrees(points[0].Temperature), Anchor.End);
        Figure(right + FigureGap - 2, voice.Degrees(step.EndTemperature ?? points[^1].Temperature) + voice.DegreeUnit, Anchor.Start);
        return WarmthRibbon.Gradient(id + "w", points);

        void Figure(double x, string text, Anchor anchor)
        {
            svg.Text(Lettering.Axis.Class, x, top + RibbonHeight - 2, text, anchor);
            plan.Take(LabelPlan.Line(x, top + RibbonHeight - 2, text, Lettering.Axis, anchor));
        }
    }

    /// <returns>Names for which there was no room beside their curves.</returns>
    private static List<string> DrawNames(Svg svg, RiseLabels places, IReadOnlyList<OtherRise> others, IReadOnlyList<IReadOnlyList<(double X, double Y)>> runs, Voice voice)
    {
        var unnamed = new List<string>();
        foreach (var (other, run) in others.Zip(runs))
        {
            var time = RiseTime.Of(other.Time, voice);
            var room = LongestName - Lettering.Value.WidthOf(voice.Say("rise.other", ("name", ""), ("time", time)));
            var name = voice.Say("rise.other", ("name", Lettering.Value.Fitted(other.Name, room)), ("time", time));
            if (places.Find(run, name, Lettering.Value) is { } place)
            {
                svg.Line("lead", place.FromX, place.FromY, place.ToX, place.ToY);
                svg.Text(Lettering.Value.Class, place.X, place.Y, name, place.Anchor);
            }
            else
            {
                unnamed.Add(name);
            }
        }

        return unnamed;
    }
}
