using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Bake;

/// <summary>
/// How a piece bakes: its core as the strong line and its surfaces dashed, over the minutes; below, the section through the piece at a few
/// moments, coloured by its warmth.
/// </summary>
internal static class BakePicture
{
    private const double MapsTop = BakeFrame.Foot + 44;
    private const double MapRoom = 104;
    private const double HighestMap = 84;
    private const double FigureDrop = 4;
    private const double FigureGap = 7;
    private const double LeastBetweenTicks = 20;
    private const double Below = 24;

    public static string Draw(BakedSection bake, RehearsedStep step, Voice voice, string id)
    {
        var warmths = bake.Course.SelectMany(moment => (Temperature[])[moment.Core, moment.Top, moment.Side, moment.Bottom, moment.Oven ?? moment.Core])
            .Select(warmth => warmth.Celsius).ToArray();
        var frame = new BakeFrame(bake.Minutes.Minutes, Math.Floor(warmths.Min() / 10) * 10, Math.Ceiling(warmths.Max() / 10) * 10);
        var svg = new Svg();
        DrawAxes(svg, frame, voice);
        var faces = Faces(bake);
        foreach (var (_, of) in faces)
        {
            svg.Path("rother", Run(bake, frame, of));
        }

        svg.Path("rline", Run(bake, frame, moment => moment.Core));
        var end = bake.Course[^1];
        string Name(string key, Temperature figure) => voice.Say("bake.picture-" + key, ("figure", voice.Degrees(figure, asked: true)));
        new EndNames(BakeFrame.Right, BakeFrame.Head, BakeFrame.Foot, BakeFrame.Width).Draw(
            svg, [.. faces.Select(face => (frame.Y(face.Of(end)), Name(face.Key, face.Of(end)))), (frame.Y(end.Core), Name("core", end.Core))]);
        var height = DrawMaps(svg, bake, voice);
        return svg.Picture("strip chart", BakeFrame.Width, height, id, step.Name, Description(bake, voice));
    }

    /// <summary>The oven where it is told, then the surfaces: a piece that lies has one mantle all round; one that stands has a top, a side and a bottom.</summary>
    internal static IReadOnlyList<(string Key, Func<BakedMoment, Temperature> Of)> Faces(BakedSection bake)
    {
        (string, Func<BakedMoment, Temperature>)[] oven = bake.Course.All(moment => moment.Oven is not null) ? [("oven", moment => moment.Oven!.Value)] : [];
        return bake.Lies
            ? [.. oven, ("mantle", moment => moment.Side)]
            : [.. oven, ("top", moment => moment.Top), ("bottom", moment => moment.Bottom)];
    }

    private static IEnumerable<(double X, double Y)> Run(BakedSection bake, BakeFrame frame, Func<BakedMoment, Temperature> of) =>
        bake.Course.Select(moment => (frame.X(moment.After), frame.Y(of(moment))));

    private static void DrawAxes(Svg svg, BakeFrame frame, Voice voice)
    {
        svg.Line("hour", BakeFrame.Left, BakeFrame.Foot, BakeFrame.Right, BakeFrame.Foot);
        foreach (var (temperature, figure) in TemperatureTicks.Between(frame.Lowest, frame.Highest, LeastBetweenTicks, voice))
        {
            var y = frame.Y(temperature);
            svg.Line("hour", BakeFrame.Left, y, BakeFrame.Right, y);
            svg.Text(Lettering.Axis.Class, BakeFrame.Left - FigureGap, y + FigureDrop, figure, Anchor.End);
        }

        for (var minutes = 0.0; minutes <= frame.Minutes + 1e-9; minutes += frame.StepMinutes)
        {
            var after = Duration.FromMinutes(minutes);
            svg.Line("tick", frame.X(after), BakeFrame.Foot, frame.X(after), BakeFrame.Foot + 5);
            var last = minutes + frame.StepMinutes > frame.Minutes + 1e-9;
            svg.Text(Lettering.Axis.Class, frame.X(after), BakeFrame.Foot + 22, last ? voice.Text(after) : Show.Number(minutes, 0), Anchor.Middle);
        }
    }

    /// <returns>Height of the picture.</returns>
    private static double DrawMaps(Svg svg, BakedSection bake, Voice voice)
    {
        var one = new SectionMap(bake, 1);
        var map = one with { PerMillimetre = Math.Min(MapRoom / one.Width, HighestMap / one.Height) };
        var column = (BakeFrame.Width - BakeFrame.Left) / bake.Slices.Count;
        foreach (var (slice, at) in bake.Slices.Select((slice, at) => (slice, at)))
        {
            var middle = BakeFrame.Left + (column * (at + 0.5));
            map.Draw(svg, slice, middle - (map.Width / 2), MapsTop);
            svg.Text(Lettering.Axis.Class, middle, MapsTop + map.Height + Below, voice.Text(slice.After), Anchor.Middle);
        }

        return MapsTop + map.Height + Below + 12;
    }

    private static string Description(BakedSection bake, Voice voice) => voice.Say(
        "bake.picture-description",
        ("minutes", bake.Minutes),
        ("start", bake.Course[0].Core),
        ("core", Show.Temperature(bake.Course[^1].Core, voice.Measures)),
        ("surface", Show.Temperature(bake.Lies ? bake.Course[^1].Side : bake.Course[^1].Top, voice.Measures)),
        ("lost", Show.Percent(bake.Course[^1].Lost)));
}
