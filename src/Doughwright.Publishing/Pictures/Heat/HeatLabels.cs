using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Heat;

/// <summary>Names beside their blocks: over what gives, under what takes. What is too narrow for a name of its own is told together. Heights are from the line, y downwards.</summary>
internal sealed class HeatLabels(HeatLayout layout, LabelPlan plan, Voice voice)
{
    private const double NarrowestNamed = 9;
    private const double LongestName = 150;
    private const double LongestList = 190;
    private const double RowHeight = 46;
    private const int Rows = 3;

    /// <summary>Rows beyond which no picture has any text.</summary>
    private const int AllRows = 40;

    /// <summary>A name with its value, and where it stands.</summary>
    /// <param name="Edge">Height of the edge of its block, for a line that leads there when the label stands apart.</param>
    /// <param name="Lead">Where such a line stands; null where the label is at its block.</param>
    public sealed record Label(string Name, string Value, double X, double Y, bool Above, Anchor Anchor, bool IsFree, double? Lead, double Edge);

    public IReadOnlyList<Label> Place() => [.. Side(above: true), .. Side(above: false)];

    /// <summary>As many blocks as can be are named on their own; those that cannot are told together, and that label must stand near them as well.</summary>
    private IReadOnlyList<Label> Side(bool above)
    {
        var blocks = layout.Blocks.Where(block => block.IsAbove == above).ToList();
        var ranked = blocks
            .Where(block => block.Share.IsFree || block.Width >= NarrowestNamed)
            .OrderByDescending(block => block.Share.IsFree)
            .ThenByDescending(block => Math.Abs(block.Share.Kilojoules))
            .ToList();
        var free = ranked.Count(block => block.Share.IsFree);
        for (var named = ranked.Count; named >= free; named--)
        {
            if (Try(blocks, [.. ranked.Take(named)], Rows) is { } labels)
            {
                return labels;
            }
        }

        return Try(blocks, [.. ranked.Take(free)], AllRows) ?? throw new InvalidOperationException("No row of a picture is endless.");
    }

    private List<Label>? Try(IReadOnlyList<HeatBlock> blocks, HashSet<HeatBlock> named, int rows)
    {
        var trial = plan.Copy();
        var labels = new List<Label>();
        foreach (var block in blocks.Where(named.Contains))
        {
            if (Put(trial, [block], Lettering.Name.Fitted(block.Name, LongestName), block.Value, block.Share.IsFree, rows) is not { } label)
            {
                return null;
            }

            labels.Add(label);
        }

        var together = blocks.Where(block => !named.Contains(block)).ToList();
        if (together.Count > 0)
        {
            var (first, second) = together.Count == 1 ? (Lettering.Name.Fitted(together[0].Name, LongestName), together[0].Value) : Told(together);
            if (Put(trial, together, first, second, false, rows) is not { } label)
            {
                return null;
            }

            labels.Add(label);
        }

        plan.TakeAll(trial);
        return labels;
    }

    /// <summary>Near the block first, then further away with a line that leads to it: left edge of the block, or right edge of the last.</summary>
    private Label? Put(LabelPlan trial, IReadOnlyList<HeatBlock> blocks, string first, string second, bool isFree, int rows)
    {
        var above = blocks[0].IsAbove;
        var name = isFree ? Lettering.Free : Lettering.Name;
        var value = isFree ? Lettering.Free : Lettering.Value;
        var edge = -blocks.MaxBy(block => Math.Abs(block.Kelvins))!.Kelvins * layout.PixelsPerKelvin;
        double[] leads = [blocks[0].X + Math.Min(3, blocks[0].Width / 2), blocks[^1].Right - Math.Min(3, blocks[^1].Width / 2)];
        for (var row = 0; row < rows; row++)
        {
            var y = edge + (above ? -row * RowHeight : row * RowHeight);
            double? lead = leads.Where(x => trial.IsFree(Box.Of(x - 1, edge, x + 1, y))).Select(x => (double?)x).FirstOrDefault();
            foreach (var (x, anchor) in Places(blocks, row))
            {
                var box = LabelPlan.TwoLines(x, y, first, second, above, name, value, anchor);
                if ((lead is not null || row >= Rows) && !Covers(box) && trial.TryTake(box))
                {
                    return new(first, second, x, y, above, anchor, isFree, row > 0 ? lead : null, edge);
                }
            }
        }

        return null;
    }

    private static IEnumerable<(double X, Anchor Anchor)> Places(IReadOnlyList<HeatBlock> blocks, int row)
    {
        yield return (blocks[0].X + 3, Anchor.Start);
        yield return (blocks[^1].Right, Anchor.End);
        if (row >= Rows)
        {
            yield return (HeatLayout.Width, Anchor.End);
            yield return (HeatLayout.Left, Anchor.Start);
        }
    }

    private bool Covers(Box box) => layout.Blocks.Any(block =>
        box.Overlaps(Box.Of(block.X, 0, block.Right, -block.Kelvins * layout.PixelsPerKelvin).Grown(-0.2)));

    /// <summary>As many names as there is room for, and the rest.</summary>
    private (string First, string Second) Told(IReadOnlyList<HeatBlock> blocks)
    {
        var names = blocks.OrderByDescending(block => Math.Abs(block.Share.Kilojoules)).Select((block, index) => index == 0 ? block.Name : Capital.Small(block.Name)).ToList();
        var all = voice.List(names);
        if (Lettering.Name.WidthOf(all) <= LongestList)
        {
            var values = blocks.Select(block => block.Value).Distinct().ToList();
            return (all, values.Count <= 3 ? voice.List(values) : voice.Say("heat.several"));
        }

        var told = names.Count;
        while (told > 1 && Lettering.Name.WidthOf(Joined(names, told)) > LongestList)
        {
            told--;
        }

        return (Lettering.Name.Fitted(Joined(names, told), LongestList), voice.Say("heat.and-the-rest"));
    }

    private string Joined(IEnumerable<string> names, int count) => string.Join(voice.Words["list-comma"], names.Take(count));
}
