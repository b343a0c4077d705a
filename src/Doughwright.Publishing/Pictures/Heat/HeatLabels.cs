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
    /// <param name="HasLead">Whether such a line can be drawn without crossing another text.</param>
    public sealed record Label(string Name, string Value, double X, double Y, bool Above, Anchor Anchor, bool IsFree, double LeadX, double Edge, bool HasLead);

    public IReadOnlyList<Label> Place() => [.. Side(above: true), .. Side(above: false)];

    private IEnumerable<Label> Side(bool above)
    {
        var blocks = layout.Blocks.Where(block => block.IsAbove == above).ToList();
        var labels = new List<Label>();
        var together = new List<HeatBlock>();
        foreach (var block in blocks.OrderByDescending(block => block.Share.IsFree))
        {
            var wanted = block.Share.IsFree || block.Width >= NarrowestNamed;
            if (wanted && Put([block], Lettering.Name.Fitted(block.Name, LongestName), block.Value, block.Share.IsFree, block.Share.IsFree ? AllRows : Rows) is { } label)
            {
                labels.Add(label);
            }
            else
            {
                together.Add(block);
            }
        }

        if (together.Count > 0)
        {
            var (first, second) = Told(together);
            labels.Add(Put(together, first, second, false, AllRows) ?? throw new InvalidOperationException("No row of a picture is endless."));
        }

        return labels;
    }

    /// <summary>Left edge of the block first, then its right edge, then the edge of the picture; near the block first, then further away.</summary>
    private Label? Put(IReadOnlyList<HeatBlock> blocks, string first, string second, bool isFree, int rows)
    {
        var above = blocks[0].IsAbove;
        var name = isFree ? Lettering.Free : Lettering.Name;
        var value = isFree ? Lettering.Free : Lettering.Value;
        var edge = -blocks.MaxBy(block => Math.Abs(block.Kelvins))!.Kelvins * layout.PixelsPerKelvin;
        (double X, Anchor Anchor)[] places = [(blocks[0].X + 3, Anchor.Start), (blocks[^1].Right, Anchor.End), (HeatLayout.Width, Anchor.End)];
        var leadX = blocks[0].X + Math.Min(3, blocks[0].Width / 2);
        for (var row = 0; row < rows; row++)
        {
            var y = edge + (above ? -row * RowHeight : row * RowHeight);
            var leadIsFree = plan.IsFree(Box.Of(leadX - 1, edge, leadX + 1, y));
            foreach (var (x, anchor) in leadIsFree || row >= Rows ? places : [])
            {
                var box = LabelPlan.TwoLines(x, y, first, second, above, name, value, anchor);
                if (!Covers(box) && plan.TryTake(box))
                {
                    return new(first, second, x, y, above, anchor, isFree, leadX, edge, row > 0 && leadIsFree);
                }
            }
        }

        return null;
    }

    private bool Covers(Box box) => layout.Blocks.Any(block =>
        box.Overlaps(Box.Of(block.X, 0, block.Right, -block.Kelvins * layout.PixelsPerKelvin).Grown(-0.2)));

    /// <summary>As many names as there is room for, and the rest.</summary>
    private (string First, string Second) Told(IReadOnlyList<HeatBlock> blocks)
    {
        var names = blocks.OrderByDescending(block => Math.Abs(block.Share.Kilojoules)).Select((block, index) => index == 0 ? block.Name : Small(block.Name)).ToList();
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

    private static string Small(string name) => name.Length == 0 ? name : char.ToLowerInvariant(name[0]) + name[1..];
}
