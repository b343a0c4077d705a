using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Warming;

/// <summary>How a place made warm goes, in figures: a few moments of its course, the first, the last and the one at which the dough goes in among them.</summary>
internal static class PlaceTable
{
    /// <summary>As many moments as a person reads.</summary>
    private const int Most = 9;

    public static FigureTable Of(PlaceAnswer place, Voice voice)
    {
        var unit = voice.DegreeUnit.Trim('\u00a0');
        return new(
            voice.Say("placing.table", ("place", voice.Member(place.Kind))),
            [
                new(voice.Words["placing.head-after"], voice.Words["head.hours"]),
                new(voice.Words["placing.head-around"], unit),
                new(voice.Words["placing.head-range"], unit),
                new(voice.Words["placing.head-dough"], unit),
                new(voice.Words["placing.head-water"], unit),
                new(voice.Words["placing.head-room"], unit),
            ],
            [.. Moments(place.Course).Select(point => Row(point, voice))],
            []);
    }

    private static FigureRow Row(PlacePoint point, Voice voice)
    {
        var time = point.After < Duration.Zero
            ? voice.Say("placing.before", ("time", Show.DurationColumn(point.After * -1)))
            : Show.DurationColumn(point.After);
        var range = voice.Say("placing.range", ("low", voice.Degrees(point.Around.Low)), ("high", voice.Degrees(point.Around.High ?? point.Around.Likely)));
        return new(
            time,
            [
                voice.Degrees(point.Around.Likely),
                range,
                point.Dough is { } dough ? voice.Degrees(dough.Likely) : FigureTable.Nothing,
                voice.Degrees(point.Water),
                voice.Degrees(point.Room),
            ]);
    }

    private static IEnumerable<PlacePoint> Moments(IReadOnlyList<PlacePoint> course)
    {
        var before = course.TakeWhile(point => point.After < Duration.Zero).Take(1);
        PlacePoint[] after = [.. course.Where(point => point.After >= Duration.Zero)];
        var picked = Enumerable.Range(0, Math.Min(Most, after.Length)).Select(index => after.Length == 1 ? 0 : (int)Math.Round(index * (after.Length - 1.0) / (Math.Min(Most, after.Length) - 1)));
        return before.Concat(picked.Distinct().Select(index => after[index]));
    }
}
