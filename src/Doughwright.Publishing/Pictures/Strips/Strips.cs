using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Strips.Plans;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Strips;

/// <summary>
/// A recipe as one continuous strip: parts are strands along time that wind into one dough, which rises, is cut, baked and cooled. Thickness is mass, holes are gas,
/// colour is warmth. A line ends by the clock, a comb by its cue.
/// </summary>
internal static class Strips
{
    /// <summary>Time runs to the right: for wide screens and paper.</summary>
    public static string Wide(Rehearsal rehearsal, Course course, Voice voice, StripOptions options) => WideStrip.Draw(rehearsal, course, voice, options);

    /// <summary>Time runs downwards: for phones.</summary>
    public static string Tall(Rehearsal rehearsal, Course course, Voice voice, StripOptions options) => TallStrip.Draw(rehearsal, course, voice, options);

    /// <summary>A row of the shelf: volume, warmth and hands, ending at the right edge.</summary>
    public static string Mini(Rehearsal rehearsal, Course course, Voice voice, MiniOptions options) => MiniStrip.Draw(rehearsal, course, voice, options);

    /// <summary>The nights behind a row of the shelf.</summary>
    /// <param name="span">As in <see cref="MiniOptions.Span"/>.</param>
    public static string Nights(IReadOnlyList<Night> nights, Duration span) => MiniStrip.Nights(nights, span);

    /// <summary>The clock over the rows of the shelf.</summary>
    public static string Axis(AxisOptions options, Voice voice) => ClockAxis.Draw(options, voice);

    /// <summary>Time that a wide strip draws, without what it folds away: the longest of these is the common <see cref="StripOptions.Span"/> of several strips.</summary>
    public static Duration Span(Rehearsal rehearsal, Course course)
    {
        var plan = Plan.Of(rehearsal, course);
        return Duration.FromMinutes(WideLayout.DrawnMinutes(plan, LongWaits.Of(plan)));
    }

    /// <summary>Where minutes after the first hand lie along a wide strip, for what is drawn between two of them.</summary>
    /// <param name="span">As in <see cref="StripOptions.Span"/>.</param>
    public static Func<double, double> Places(Rehearsal rehearsal, Course course, Duration? span) =>
        WideLayout.TimeOf(Plan.Of(rehearsal, course), span?.Minutes).Place;

    /// <summary>Height of a gram at which the largest of these doughs just fills a row of the shelf.</summary>
    public static double MiniScale(IEnumerable<(Rehearsal Rehearsal, Course Course)> rows) => MiniStrip.Scale(rows.Select(row => Plan.Of(row.Rehearsal, row.Course)));
}
