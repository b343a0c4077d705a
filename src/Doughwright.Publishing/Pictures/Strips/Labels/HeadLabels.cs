using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>The heads over the dough: an upright where each step begins, with its name, how long it takes and what it aims at.</summary>
internal static class HeadLabels
{
    public const double NameLine = 52;
    private const double TimeLine = 68;
    private const double AimLine = 84;
    private const double EdgeTop = 40;
    private const double Beside = 4;

    /// <summary>A head narrower than this has no third line.</summary>
    private const double ForThree = 46;

    /// <summary>A head narrower than this keeps its name only.</summary>
    private const double ForTwo = 30;

    /// <summary>A word cut off in less room says nothing.</summary>
    private const double ForShortened = 50;

    public static void Edges(Sheet sheet)
    {
        foreach (var step in sheet.Plan.Edges)
        {
            var x = sheet.Place(step.Start);
            sheet.Svg.Line("edge", x, EdgeTop, x, sheet.Bench);
            sheet.Placer.Forbid(new(x - 0.5, EdgeTop, x + 0.5, sheet.Bench));
        }
    }

    public static void Draw(Sheet sheet)
    {
        foreach (var (step, x, width) in Heads(sheet))
        {
            var room = width - Beside - 1;
            // Too narrow for one word: no word stands across an upright, and the table of the method has it.
            if (Shown(sheet, step, room) is not { } name || !sheet.Placer.Put(Type.Head, x + Beside, NameLine, name))
            {
                continue;
            }

            if (width >= ForTwo && Type.Value.Width(sheet.Words.Time(step)) <= room)
            {
                sheet.Placer.Put(Type.Value, x + Beside, TimeLine, sheet.Words.Time(step));
            }

            if (width >= ForThree && sheet.Words.Aim(step) is { } aim && Type.Value.Width(aim) <= room)
            {
                sheet.Placer.Put(Type.Value, x + Beside, AimLine, aim);
            }
        }
    }

    /// <summary>Where the name of a step ends at its head; null when it has none there.</summary>
    public static double? NameEnd(Sheet sheet, PlannedStep step)
    {
        var (_, x, width) = Heads(sheet).First(head => head.Step == step);
        return Shown(sheet, step, width - Beside - 1) is { } name ? x + Beside + Type.Head.Width(name) : null;
    }

    /// <summary>The author's name of a step where it fits, else one short word, else the beginning of the name where that says something.</summary>
    private static string? Shown(Sheet sheet, PlannedStep step, double room)
    {
        var (name, word) = (sheet.Words.Name(step), sheet.Words.ShortName(step));
        return Type.Head.Width(name) <= room ? name
            : Type.Head.Width(word) <= room ? word
            : room >= ForShortened ? Type.Head.Fit(name, room)
            : null;
    }

    private static IEnumerable<(PlannedStep Step, double X, double Width)> Heads(Sheet sheet)
    {
        var edges = sheet.Plan.Edges;
        for (var i = 0; i < edges.Count; i++)
        {
            var x = sheet.Place(edges[i].Start);
            var end = i + 1 < edges.Count ? sheet.Place(edges[i + 1].Start) : sheet.Frame.Width;

            // A head ends before the slash of a folded wait.
            var slash = sheet.Frame.Time.Folds.Select(fold => FoldMarks.Middle(sheet.Frame.Time, fold) - FoldMarks.Reach).Where(place => place > x).DefaultIfEmpty(end).Min();
            yield return (edges[i], x, Math.Min(end, slash) - x);
        }
    }
}
