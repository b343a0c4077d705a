using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Strips.Labels;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Strips;

/// <summary>The strip for wide screens and for paper: time runs to the right.</summary>
internal static class WideStrip
{
    public static string Draw(Rehearsal rehearsal, Course course, Voice voice, StripOptions options)
    {
        var plan = Plan.Of(rehearsal, course);
        var words = new StripWords(plan, voice);
        var layout = WideLayout.Of(plan, options.Span?.Minutes);
        var (heads, cues, corner) = (HeadPlan.Of(layout, words), CuePlan.Of(layout, words), MarkCorner.Of(plan, words, options.Marks, layout.Frame.Width));
        var sheet = Sheet.Of(WideLayout.Roomier(layout, heads.Lift, cues.Drop + corner.Height), options.Id, words) with
        {
            Heads = heads.Heads,
            Lift = heads.Lift,
            Cues = cues.Lines,
            Drop = cues.Drop,
        };
        HourLabels.DrawWide(sheet);
        sheet.Svg.Line("bench", 0, sheet.Bench, WideLayout.Right, sheet.Bench);
        StripMarks.Draw(sheet);
        HeadLabels.Edges(sheet);
        CueLabels.Combs(sheet);
        RailLabels.Draw(sheet);
        FoldMarks.Draw(sheet.Canvas, -(WideLayout.UnderBench + cues.Drop - 6), sheet.Bench - 36);
        Write(sheet, options.Marks, corner);
        return sheet.Svg.Picture("strip strip-wide", sheet.Frame.Width, sheet.Frame.Height, options.Id, sheet.Words.Title("strip-title"), sheet.Words.Description, sheet.Canvas.Defs);
    }

    /// <summary>What matters most is written first and so has the first choice of room.</summary>
    private static void Write(Sheet sheet, IReadOnlyList<StripMark> marks, MarkCorner corner)
    {
        BodyLabels.Block(sheet);
        HeadLabels.Draw(sheet);
        RailLabels.Outcome(sheet);
        StrandLabels.Draw(sheet);
        if (sheet.Body is { } body)
        {
            BodyLabels.Folds(sheet, body);
            EntryLabels.Draw(sheet);
            WashLabels.Draw(sheet, body);
        }

        CueLabels.Draw(sheet);
        RailLabels.Fires(sheet);
        MarkLabels.Draw(sheet, marks, corner, place => WideMarkPlaces.Of(sheet, place));
        BodyLabels.Waits(sheet);
        if (sheet.Body is { } risen)
        {
            BodyLabels.Draw(sheet, risen);
        }
    }
}
