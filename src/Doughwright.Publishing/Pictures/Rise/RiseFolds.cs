using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>What is done while it rises: a stroke through the curve, named where there is room. All of it is told in the description.</summary>
internal static class RiseFolds
{
    private const double Stroke = 6;

    private static readonly (double X, double Y, Anchor Anchor)[] Ways =
        [(0, -12, Anchor.End), (4, 26, Anchor.Start), (-4, -26, Anchor.End), (8, 40, Anchor.Start), (0, -40, Anchor.Middle)];

    public static void Draw(Svg svg, LabelPlan plan, RiseLabels places, RiseCurve own, RehearsedStep step, RiseFrame frame, Voice voice)
    {
        foreach (var done in step.Events)
        {
            var after = done.After.Likely;
            if (after.Minutes > frame.Minutes || RiseFrame.GrowthAt(own.Likely, after) is not { } growth || growth > frame.Highest)
            {
                continue;
            }

            var (x, y) = (frame.X(after), frame.Y(growth));
            svg.Line("notch", x, y - Stroke, x, y + Stroke);
            var name = voice.Words["event." + done.What];
            foreach (var (dx, dy, anchor) in Ways)
            {
                var box = LabelPlan.Line(x + dx, y + dy, name, Lettering.Value, anchor);
                if (places.IsClear(box) && plan.TryTake(box))
                {
                    svg.Text(Lettering.Value.Class, x + dx, y + dy, name, anchor);
                    break;
                }
            }
        }
    }
}
