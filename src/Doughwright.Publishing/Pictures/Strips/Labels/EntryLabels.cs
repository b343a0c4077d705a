using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>What goes straight into a mix, in three short lines: left of its nose, or over the dough where the left is taken.</summary>
internal static class EntryLabels
{
    private const double Longest = 340;
    private const double Shortest = 70;

    /// <summary>So far behind its mix a label still says what it is about.</summary>
    private const double Near = 60;

    /// <summary>So far over the dough nobody sees that it belongs to it: a part of tons beside a dough of grams makes a picture of endless height.</summary>
    private const double Farthest = 1000;

    public static void Draw(Sheet sheet)
    {
        foreach (var step in sheet.Plan.OnBench)
        {
            if (sheet.Body is { } body && sheet.Plan.EntryOf(step) is { } entry)
            {
                Draw(sheet, body, step, entry);
            }
        }
    }

    private static void Draw(Sheet sheet, BodyShape body, PlannedStep step, Entry entry)
    {
        var x = sheet.Place(step.Start);
        var isFirst = step.Id == sheet.Plan.Mix?.Id;
        if (isFirst)
        {
            var left = x - 32;
            for (var room = Math.Min(Longest, left - 4); room >= Math.Max(Shortest, Figures(sheet, entry)); room -= 20)
            {
                if (sheet.Placer.PutLines(left, Lines(sheet, entry, room, sheet.Bench - 36), Anchor.End))
                {
                    return;
                }
            }
        }

        // Over the dough, ever higher; behind the uprights that follow close by.
        foreach (var from in sheet.Plan.Edges.Select(edge => sheet.Place(edge.Start)).Where(place => place >= x && place - x <= Near).DefaultIfEmpty(x))
        {
            if (Over(sheet, body, entry, from))
            {
                return;
            }
        }
    }

    private static bool Over(Sheet sheet, BodyShape body, Entry entry, double x)
    {
        var head = Figures(sheet, entry);
        for (var room = Longest; room >= head; room -= 30)
        {
            var over = Enumerable.Range(0, (int)room / 8).Max(i => body.Top(sheet.Frame.Time.Minute(x + (i * 8))));
            var lowest = sheet.Bench - over - 44;
            for (var y = lowest; y > Math.Max(100 + sheet.Lift, lowest - Farthest); y -= 12)
            {
                if (sheet.Placer.PutLines(x + 6, Lines(sheet, entry, room, y)))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static (Type Type, double Y, string Text)[] Lines(Sheet sheet, Entry entry, double room, double y)
    {
        string?[] texts =
        [
            Head(sheet, entry),
            Type.Value.Fit(string.Join(sheet.Words.Voice.Words["list-comma"], Names(sheet, entry)), room),
            Warmth(sheet, entry),
        ];
        return [.. texts.OfType<string>().Select((text, i) => (i == 0 ? Type.Head : Type.Value, y + (i == 0 ? 0 : 1 + (15 * i)), text))];
    }

    /// <summary>Room for what carries a figure: that is never cut off.</summary>
    private static double Figures(Sheet sheet, Entry entry) =>
        Math.Max(Type.Head.Width(Head(sheet, entry)), Warmth(sheet, entry) is { } warmth ? Type.Value.Width(warmth) : 0);

    private static string Head(Sheet sheet, Entry entry) => sheet.Words.Say("strip-straight-in", ("mass", entry.Mass));

    private static IEnumerable<string> Names(Sheet sheet, Entry entry)
    {
        var lines = sheet.Plan.Rehearsal.Recipe.FindComponent(entry.Component)?.Lines ?? [];
        return entry.Lines.Select(id => lines.FirstOrDefault(line => line.Id == id)?.Name ?? id);
    }

    private static string? Warmth(Sheet sheet, Entry entry)
    {
        if (entry is not { Coldest: { } coldest, Warmest: { } warmest })
        {
            return null;
        }

        var (low, high) = (sheet.Words.Text(coldest), sheet.Words.Text(warmest));
        return low == high ? sheet.Words.Say("strip-straight-room", ("warmth", low)) : sheet.Words.Say("strip-straight-range", ("low", low), ("high", high));
    }
}
