using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Labels;
using Doughwright.Publishing.Wording;
using Type = Doughwright.Publishing.Pictures.Strips.Labels.Type;

namespace Doughwright.Publishing.Pictures.Strips;

/// <summary>Times of day over the rows of the shelf.</summary>
internal static class ClockAxis
{
    private const double Height = 30;
    private const double FigureLine = 14;
    private const double Apart = 56;
    private const int Day = 24;
    private static readonly int[] Steps = [1, 2, 3, 6, 12, 24];

    public static string Draw(AxisOptions options, Voice voice)
    {
        var svg = new Svg();
        var placer = new Placer(svg, options.Width, Height);
        var perHour = options.Width / options.Span.Hours;
        var step = Steps.FirstOrDefault(hours => hours * perHour >= Apart, Day);
        var last = (int)Math.Floor(options.ReadyAt.Hours);
        for (var hour = last; options.Width - ((options.ReadyAt.Hours - hour) * perHour) >= 0; hour--)
        {
            var x = options.Width - ((options.ReadyAt.Hours - hour) * perHour);
            var clock = ((hour % Day) + Day) % Day;
            if (clock % step != 0)
            {
                svg.Line("tick", x, 26, x, Height);
                continue;
            }

            svg.Line("tick", x, 20, x, Height);
            // On a phone every other figure goes; the stylesheet takes out the minor ones.
            var type = clock % (2 * step) == 0 ? Type.Hour : Type.Hour with { Class = "hr minor" };
            placer.Put(type, x, FigureLine, voice.Say("strip-clock", ("hour", clock)), Anchor.Middle);
        }

        return $"<svg class=\"strip mini\" viewBox=\"0 0 {Svg.Number(options.Width)} {Svg.Number(Height)}\" aria-hidden=\"true\">{svg}</svg>";
    }
}
