using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Writes the items beside the bench, each at its time or as near as the others leave room, with a line that leads to it.</summary>
internal static class TallColumn
{
    private const double Beside = 35;
    private const double ValueLine = 15;
    private const double PastComb = 22;
    private const double PastBench = 10;
    private const double UnderLast = 18;

    /// <summary>Lines on which the items stand.</summary>
    public static double[] Lines(Sheet sheet, IReadOnlyList<TallItem> items)
    {
        var lines = items.Select(item => sheet.Place(item.Minute) + 8).ToArray();
        for (var i = 1; i < lines.Length; i++)
        {
            lines[i] = Math.Max(lines[i], lines[i - 1] + TallLayout.ItemHeight);
        }

        var last = sheet.Frame.Height - UnderLast - 4;
        for (var i = lines.Length - 1; i >= 0 && lines[i] > last; i--)
        {
            lines[i] = last;
            last -= TallLayout.ItemHeight;
        }

        return lines;
    }

    public static void Draw(Sheet sheet, IReadOnlyList<TallItem> items, double[] lines)
    {
        var x = sheet.Bench + Beside;
        var room = sheet.Frame.Width - x - 1;
        for (var i = 0; i < items.Count; i++)
        {
            var (item, y, at) = (items[i], lines[i], sheet.Place(items[i].Minute));
            sheet.Svg.Path("lead", [(sheet.Bench + 2, at), (sheet.Bench + (item.IsCue ? PastComb : PastBench), at), (x - 9, y - 4), (x - 4, y - 4)]);
            var type = item.IsCue ? Type.Cue : Type.BigHead;
            (Type, double, string?)[] texts = item.IsCue && type.Width(item.Name) > room && InTwo(sheet.Words.Say("strip-cue", ("cue", item.Name), ("range", item.Value)), room) is var (first, second)
                ? [(type, y, first), (type, y + ValueLine, second)]
                : [(type, y, type.Fit(item.Name, room)), (Type.BigValue, y + ValueLine, Type.BigValue.Fit(item.Value, room))];
            sheet.Placer.PutLines(x, [.. texts.Where(text => text.Item3 is not null).Select(text => (text.Item1, text.Item2, text.Item3!))]);
        }
    }

    /// <summary>A cue too long for one line, with its time, in two; null when it is too long for two.</summary>
    private static (string First, string Second)? InTwo(string words, double room)
    {
        for (var space = words.LastIndexOf(' '); space > 0; space = words.LastIndexOf(' ', space - 1))
        {
            if (Type.Cue.Width(words[..space]) <= room)
            {
                return Type.Cue.Width(words[(space + 1)..]) <= room ? (words[..space], words[(space + 1)..]) : null;
            }
        }

        return null;
    }

    /// <summary>Where marks of findings would like to stand: behind the name of their step, or behind what is under it.</summary>
    public static IEnumerable<(double X, double Y)> MarkPlaces(Sheet sheet, IReadOnlyList<TallItem> items, double[] lines, string[] place)
    {
        var step = place switch
        {
            ["steps", var id, ..] => id,
            ["parts", var part, ..] => sheet.Plan.Steps.FirstOrDefault(step => step.Step.Component == part && step.Start >= 0)?.Id,
            _ => null,
        };
        for (var i = 0; i < items.Count; i++)
        {
            if (step is not null && items[i].Step == step)
            {
                var name = sheet.Bench + Beside + Type.BigHead.Width(items[i].Name) + 14;
                var value = sheet.Bench + Beside + Type.BigValue.Width(items[i].Value) + 14;
                return [(name, lines[i]), (name + 22, lines[i]), (value, lines[i] + ValueLine), (sheet.Bench + 14, lines[i] + ValueLine)];
            }
        }

        return [];
    }
}
