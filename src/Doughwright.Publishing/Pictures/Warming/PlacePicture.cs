using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Rise;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Warming;

/// <summary>
/// How a place made warm goes: what the dough stands in, dashed, with its range hatched; the dough as the strong line; what was asked as a dotted
/// line; the room; and the water as a ribbon of warmth below, notched where it is renewed.
/// </summary>
internal static class PlacePicture
{
    private const double RibbonTop = PlaceFrame.Foot + 34;
    private const double RibbonHeight = 12;
    private const double Height = RibbonTop + RibbonHeight + 30;
    private const double FigureGap = 7;
    private const double FigureDrop = 4;
    private const double LeastBetweenTicks = 0.9;

    public static string Draw(PlaceAnswer place, PlaceAdvice advice, Voice voice, string id)
    {
        var frame = PlaceFrame.Of(place, advice.Target);
        var svg = new Svg();
        DrawTemperatures(svg, frame, voice);
        DrawTimes(svg, frame, voice);
        var (around, dough) = (frame.Run(place.Course, point => point.Around.Likely), frame.Run(place.Course, point => point.Dough?.Likely));
        svg.Path("rband", frame.Band(place.Course, point => point.Around), closed: true, fill: $"url(#{id}h)");
        var asked = frame.Y(advice.Target);
        svg.Line("cueline", PlaceFrame.Left, asked, PlaceFrame.Right, asked);
        svg.Path("lead", frame.Run(place.Course, point => point.Room));
        svg.Path("rother", around);
        svg.Path("rline", dough);
        string Name(string key, Temperature figure) => voice.Say(key, ("figure", voice.Degrees(figure)));
        new EndNames(PlaceFrame.Right, PlaceFrame.Head, PlaceFrame.Foot, PlaceFrame.Width).Draw(svg, [
            (around[^1].Y, Name("place.picture-around." + Voice.Kebab(place.Kind.ToString()), place.Course[^1].Around.Likely)),
            (dough[^1].Y, Name("place.picture-dough", place.DoughEnd.Likely)),
            (asked, Name("place.picture-asked", advice.Target)),
            (frame.Y(place.Course[^1].Room), Name("place.picture-room", place.Course[^1].Room)),
        ]);
        var ribbon = DrawWater(svg, place, frame, id, voice);
        var hatch = $"<pattern id=\"{id}h\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><line class=\"hatch\" x1=\"0\" y1=\"0\" x2=\"0\" y2=\"5\"/></pattern>";
        return svg.Picture("strip chart", PlaceFrame.Width, Height, id, voice.Member(place.Kind), Description(place, advice, voice), ribbon + hatch);
    }

    private static void DrawTemperatures(Svg svg, PlaceFrame frame, Voice voice)
    {
        svg.Line("hour", PlaceFrame.Left, PlaceFrame.Foot, PlaceFrame.Right, PlaceFrame.Foot);
        var least = Math.Max(LeastBetweenTicks, (frame.Highest - frame.Lowest) / 6);
        foreach (var (temperature, figure) in TemperatureTicks.Between(Temperature.FromCelsius(frame.Lowest), Temperature.FromCelsius(frame.Highest), least, voice))
        {
            var y = frame.Y(temperature);
            svg.Line("hour", PlaceFrame.Left, y, PlaceFrame.Right, y);
            svg.Text(Lettering.Axis.Class, PlaceFrame.Left - FigureGap, y + FigureDrop, figure, Anchor.End);
        }
    }

    private static void DrawTimes(Svg svg, PlaceFrame frame, Voice voice)
    {
        for (var minutes = 0.0; minutes <= frame.To + 1e-9; minutes += frame.StepMinutes)
        {
            var x = frame.X(Duration.FromMinutes(minutes));
            var time = voice.Text(Duration.FromMinutes(minutes), "column");
            svg.Line("tick", x, PlaceFrame.Foot, x, PlaceFrame.Foot + 5);
            svg.Text(Lettering.Axis.Class, x, PlaceFrame.Foot + 22, minutes + frame.StepMinutes > frame.To + 1e-9 ? voice.Say("rise.hours", ("time", time)) : time, Anchor.Middle);
        }
    }

    /// <returns>The definition of its colours.</returns>
    private static string DrawWater(Svg svg, PlaceAnswer place, PlaceFrame frame, string id, Voice voice)
    {
        svg.Rect("strand", PlaceFrame.Left, RibbonTop, PlaceFrame.Right - PlaceFrame.Left, RibbonHeight, $"url(#{id}w)");
        for (var renewal = 1; renewal <= place.Renewals; renewal++)
        {
            var x = frame.X(place.RenewEvery!.Value * renewal);
            svg.Line("notch", x, RibbonTop - 4, x, RibbonTop + RibbonHeight + 4);
        }

        svg.Text(Lettering.Axis.Class, PlaceFrame.Left - FigureGap, RibbonTop + RibbonHeight - 2, voice.Degrees(place.WaterTemperature, asked: place.Kind != PlaceKind.WaterBath), Anchor.End);
        svg.Text(
            Lettering.Value.Class, PlaceFrame.Right + FigureGap, RibbonTop + RibbonHeight - 1, voice.Say("place.picture-water", ("figure", voice.Degrees(place.Course[^1].Water))));
        var first = place.Course[0].After;
        return WarmthRibbon.Gradient(id + "w", [.. place.Course.Select(point => new RisePoint(point.After - first, 1, point.Water))]);
    }

    private static string Description(PlaceAnswer place, PlaceAdvice advice, Voice voice) => voice.Say(
        "place.picture-description",
        ("water", place.WaterTemperature),
        ("mean", Show.Temperature(place.Mean.Likely, voice.Measures)),
        ("dough", Show.Temperature(place.DoughEnd.Likely, voice.Measures)),
        ("target", advice.Target),
        ("after", place.Course[^1].After));
}
