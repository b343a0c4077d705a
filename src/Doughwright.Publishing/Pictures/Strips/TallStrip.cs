using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Geometry;
using Doughwright.Publishing.Pictures.Strips.Labels;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;
using Doughwright.Publishing.Wording;
using Type = Doughwright.Publishing.Pictures.Strips.Labels.Type;

namespace Doughwright.Publishing.Pictures.Strips;

/// <summary>The strip for narrow screens: time runs downwards, what happens stands beside the bench.</summary>
internal static class TallStrip
{
    private const double HandsRail = 16;
    private const double FiresRail = 34;
    private const double BlockWidth = 10;
    private const double FireWidth = 12;
    private const double HeadLine = 12;

    /// <summary>Where the head of hob and oven begins: behind the whole word for the hands.</summary>
    private const double SecondHead = 42;

    public static string Draw(Rehearsal rehearsal, Course course, Voice voice, StripOptions options)
    {
        var plan = Plan.Of(rehearsal, course);
        var words = new StripWords(plan, voice);
        var items = TallItems.Of(plan, words);
        var layout = TallLayout.Of(plan, items.Sum(item => item.Height));
        var (end, corner) = (layout.Frame.Height, MarkCorner.Of(plan, words, options.Marks, layout.Frame.Width));
        var sheet = Sheet.Of(TallLayout.Roomier(layout, corner.Height), options.Id, words);
        var lines = TallColumn.Lines(sheet, items, end);
        HourLabels.LinesTall(sheet);
        sheet.Svg.Line("bench", sheet.Bench, TallLayout.Top - 8, sheet.Bench, end - TallLayout.Top);
        StripMarks.Draw(sheet);
        DrawRails(sheet);
        foreach (var step in CombMarks.Ending(sheet.Layout))
        {
            CombMarks.Draw(sheet.Canvas, step);
        }

        FoldMarks.Draw(sheet.Canvas, -10, sheet.Bench - 4);
        Heads(sheet);
        TallColumn.Draw(sheet, items, lines);
        HourLabels.FiguresTall(sheet);
        MarkLabels.Draw(sheet, options.Marks, corner, place => TallColumn.MarkPlaces(sheet, items, lines, place));
        Waits(sheet);
        return sheet.Svg.Picture("strip strip-tall", sheet.Frame.Width, sheet.Frame.Height, options.Id, sheet.Words.Title("strip-title-tall"), sheet.Words.Description, sheet.Canvas.Defs);
    }

    private static void DrawRails(Sheet sheet)
    {
        var end = sheet.Place(sheet.Plan.End);
        sheet.Svg.Line("rail", HandsRail, TallLayout.Top, HandsRail, end).Line("rail", FiresRail, TallLayout.Top, FiresRail, end);
        foreach (var (from, to) in Rails.Hands(sheet.Plan))
        {
            var (a, b) = (sheet.Place(from), sheet.Place(to));
            sheet.Svg.Rect("hand", HandsRail - BlockWidth - 1, a, BlockWidth, Math.Max(3, b - a - 1));
        }

        Rails.DrawFires(sheet.Canvas, sheet.Plan, sheet.Bench - FiresRail, sheet.Bench - FiresRail - FireWidth);
    }

    /// <summary>What was waited, as near to its slash as the items leave room.</summary>
    private static void Waits(Sheet sheet)
    {
        foreach (var fold in sheet.Frame.Time.Folds)
        {
            var words = sheet.Words.Say("strip-wait", ("time", Duration.FromMinutes(fold.Minutes)));
            var y = FoldMarks.Middle(sheet.Frame.Time, fold) + 8;
            for (var away = 0; away < FoldedWait.Drawn && !sheet.Placer.Put(Type.Value, sheet.Bench + 14, y + away, words); away += 12)
            {
            }
        }
    }

    private static void Heads(Sheet sheet)
    {
        Head(sheet, 0, "strip-hands", SecondHead - 3);
        Head(sheet, SecondHead, "strip-fires-short", 70);
        if (sheet.Strands.Count > 0 && Type.Hour.Fit(sheet.Words.Say("strip-strands"), 60) is { } strands)
        {
            sheet.Placer.Put(Type.Hour, sheet.Bench - 4, HeadLine, strands, Anchor.End);
        }
    }

    private static void Head(Sheet sheet, double x, string key, double room)
    {
        if (Type.Hour.Fit(sheet.Words.Say(key), room) is { } head)
        {
            sheet.Placer.Put(Type.Hour, x, HeadLine, head);
        }
    }
}
