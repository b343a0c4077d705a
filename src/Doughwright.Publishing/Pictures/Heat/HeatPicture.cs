using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Heat;

/// <summary>
/// Where the warmth of a dough comes from. Width is heat capacity, height is degrees from the mixed temperature, so area is heat: above the line
/// gives, below takes, and both areas are equal.
/// </summary>
internal static class HeatPicture
{
    private const double Width = HeatLayout.Width;
    private const double Left = HeatLayout.Left;
    private const double FigureGap = 6;

    /// <summary>Half the height of a figure beside the axis.</summary>
    private const double FigureDrop = 4;

    private const double LeastBetweenFigures = 21;
    private const double Margin = 4;

    public static string Draw(HeatBalance balance, Rehearsal rehearsal, Voice voice, string id)
    {
        var layout = HeatLayout.Of(balance, rehearsal, voice);
        var plan = new LabelPlan(Width);
        var axis = Axis(balance, layout, voice);
        foreach (var (figure, height) in axis)
        {
            plan.Take(LabelPlan.Line(Left - FigureGap, height + FigureDrop, figure, Lettering.Axis, Anchor.End));
        }

        var labels = new HeatLabels(layout, plan, voice).Place();
        var top = Math.Min(plan.Top, -layout.Above * layout.PixelsPerKelvin);
        var bottom = Math.Max(plan.Bottom, layout.Below * layout.PixelsPerKelvin);
        var line = Margin - top;
        var svg = new Svg();
        DrawAxis(svg, axis, line);
        DrawBlocks(svg, balance, layout, line);
        DrawLabels(svg, labels, line);
        return svg.Picture("strip chart", Width, Math.Ceiling(line + bottom + Margin), id, Title(balance, rehearsal, voice), Description(balance, rehearsal, voice));
    }

    /// <summary>Figures of the axis by their height; the mixed temperature first.</summary>
    private static List<(string Figure, double Height)> Axis(HeatBalance balance, HeatLayout layout, Voice voice)
    {
        var ticks = TemperatureTicks.Between(
                balance.Mixed - TemperatureDelta.FromKelvins(layout.Below),
                balance.Mixed + TemperatureDelta.FromKelvins(layout.Above),
                LeastBetweenFigures / layout.PixelsPerKelvin,
                voice)
            .Select(tick => (tick.Figure, Height: (balance.Mixed.Celsius - tick.Temperature.Celsius) * layout.PixelsPerKelvin))
            .Where(tick => Math.Abs(tick.Height) >= LeastBetweenFigures)
            .ToList();
        List<(string Figure, double Height)> axis = [(voice.Degrees(balance.Mixed, asked: IsNearlyWhole(balance.Mixed)), 0), .. ticks];

        // The unit stands once, at the top.
        var top = axis.Index().MinBy(tick => tick.Item.Height).Index;
        axis[top] = (axis[top].Figure + voice.DegreeUnit, axis[top].Height);
        return axis;
    }

    private static bool IsNearlyWhole(Temperature temperature) => Math.Abs(temperature.Celsius - Math.Round(temperature.Celsius)) < 0.05;

    private static void DrawAxis(Svg svg, IReadOnlyList<(string Figure, double Height)> axis, double line)
    {
        foreach (var (figure, height) in axis)
        {
            if (height != 0)
            {
                svg.Line("hour", Left, line + height, Width, line + height);
            }

            svg.Text(Lettering.Axis.Class, Left - FigureGap, line + height + FigureDrop, figure, Anchor.End);
        }
    }

    private static void DrawBlocks(Svg svg, HeatBalance balance, HeatLayout layout, double line)
    {
        // Violet frames last, so that no neighbour covers them.
        foreach (var block in layout.Blocks.OrderBy(block => block.Share.IsFree))
        {
            var height = Math.Abs(block.Kelvins) * layout.PixelsPerKelvin;
            var y = block.IsAbove ? line - height : line;
            var looks = block.IsAgreed ? "heatmix" : "chipf " + Warmth.Class(block.Share.GoesIn ?? balance.Mixed);
            var @class = block.Share.IsFree ? looks + " free" : looks;
            if (height < 0.05)
            {
                // A rectangle without height is not drawn at all.
                svg.Line(@class, block.X, line, block.Right, line);
            }
            else
            {
                svg.Rect(@class, block.X, y, block.Width, height);
            }
        }

        svg.Line("bench", Left, line, Width, line);
    }

    private static void DrawLabels(Svg svg, IReadOnlyList<HeatLabels.Label> labels, double line)
    {
        foreach (var label in labels)
        {
            if (label.Lead is { } lead)
            {
                svg.Line("lead", lead, line + label.Edge, lead, line + label.Y);
            }

            svg.TwoLines(
                label.X,
                line + label.Y,
                label.Name,
                label.Value,
                label.Above,
                label.Anchor,
                label.IsFree ? Lettering.Free.Class : Lettering.Name.Class,
                label.IsFree ? Lettering.Free.Class : Lettering.Value.Class);
        }
    }

    private static string Title(HeatBalance balance, Rehearsal rehearsal, Voice voice) => voice.Say(
        "heat.title",
        ("part", rehearsal.Recipe.FindComponent(balance.Component)?.Name ?? balance.Component),
        ("mixed", balance.Mixed));

    private static string Description(HeatBalance balance, Rehearsal rehearsal, Voice voice)
    {
        var given = balance.Shares.Where(share => share.Kilojoules > 0).Sum(share => share.Kilojoules);
        var told = voice.Say("heat.description", ("heat", Kilojoules.Text(given)), ("mixed", balance.Mixed));
        var free = balance.Shares.Where(share => share.IsFree && share.GoesIn is not null).ToList();
        return free.Count == 0 ? told : told + " " + string.Join(" ", free.Select(share => voice.Say(
            "heat.description-free",
            ("name", HeatNames.Of(share, balance, rehearsal, voice)),
            ("warmth", share.GoesIn),
            ("heat", Kilojoules.Text(Math.Abs(share.Kilojoules))),
            ("deed", voice.Say(share.Kilojoules < 0 ? "heat.takes" : "heat.gives")))));
    }
}
