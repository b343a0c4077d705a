using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Writes the items beside the bench, each at its time or as near as the others leave room, with a line that leads to it.</summary>
internal static class TallColumn
{
    private const double Beside = 35;

    /// <summary>The hours have a column of their own at the right.</summary>
    private const double Hours = 27;

    private const double PastComb = 22;
    private const double PastBench = 10;

    /// <summary>Between the last line and the end of the strip.</summary>
    private const double UnderLast = 7;

    private const double Left = TallLayout.Bench + Beside;

    /// <summary>For a line of an item.</summary>
    public const double Room = TallLayout.Width - Left - Hours;

    /// <summary>Lines on which the items begin.</summary>
    /// <param name="end">Where the strip ends.</param>
    public static double[] Lines(Sheet sheet, IReadOnlyList<TallItem> items, double end)
    {
        var lines = items.Select(item => sheet.Place(item.Minute) + 8).ToArray();
        for (var i = 1; i < lines.Length; i++)
        {
            lines[i] = Math.Max(lines[i], lines[i - 1] + items[i - 1].Height);
        }

        var last = end - UnderLast;
        for (var i = lines.Length - 1; i >= 0; i--)
        {
            lines[i] = Math.Min(lines[i], last - ((items[i].Lines.Count - 1) * TallItem.LineHeight));
            last = lines[i] - items[i].Height + ((items[i].Lines.Count - 1) * TallItem.LineHeight);
        }

        return lines;
    }

    public static void Draw(Sheet sheet, IReadOnlyList<TallItem> items, double[] lines)
    {
        for (var i = 0; i < items.Count; i++)
        {
            var (item, y, at) = (items[i], lines[i], sheet.Place(items[i].Minute));
            sheet.Svg.Path("lead", [(sheet.Bench + 2, at), (sheet.Bench + (item.IsCue ? PastComb : PastBench), at), (Left - 9, y - 4), (Left - 4, y - 4)]);
            sheet.Placer.PutLines(Left, [.. item.Lines.Select((line, below) => (line.Type, y + (below * TallItem.LineHeight), line.Text))]);
        }
    }

    /// <summary>Where marks of findings would like to stand: behind the name of their step, or behind what is under it; else as near to it as can be.</summary>
    public static IEnumerable<(double X, double Y)> MarkPlaces(Sheet sheet, IReadOnlyList<TallItem> items, double[] lines, string[] place)
    {
        var step = place switch
        {
            ["steps", var id, ..] => id,
            ["parts", var part, ..] => sheet.Plan.Steps.FirstOrDefault(step => step.Step.Component == part && step.Start >= 0)?.Id ?? sheet.Plan.Mix?.Id,
            _ => null,
        };
        var at = items.Index().FirstOrDefault(item => step is not null && item.Item.Step == step, (Index: 0, Item: items[0])).Index;
        var near = lines[at];
        return items[at].Lines.Select((line, i) => (Left + line.Type.Width(line.Text) + 14, near + (i * TallItem.LineHeight)))
            .Concat(from y in MarkLabels.Around(near, TallLayout.Top + 14, sheet.Frame.Height - 6)
                    from x in MarkLabels.Around(sheet.Frame.Width, sheet.Bench + 14, sheet.Frame.Width - 11)
                    select (x, y));
    }
}
