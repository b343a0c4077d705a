using Doughwright.Engine.Formulas;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Balance;

/// <summary>Where lines lie at the left and sorts of matter at the right. One scale of thickness for both, so both sides are equally thick.</summary>
internal sealed class BalanceLayout
{
    public const double Width = 520;

    private const double Thickness = 232;
    private const double LineSlot = 20;
    private const double LineGap = 5;
    private const double BundleGap = 8;

    /// <summary>Two lines of text on a phone.</summary>
    private const double BundleSlot = 44;
    private const double Margin = 6;

    private readonly Dictionary<(int Row, Matter Matter), (double Left, double Right)> places = [];

    public BalanceLayout(Makeup makeup)
    {
        var grams = makeup.Rows.Sum(row => row.Mass.Grams);
        PixelsPerGram = grams > 0 ? Thickness / grams : 0;
        var matters = MatterOf.All.Where(matter => MatterOf.Total(makeup, matter) > 0).ToList();
        var lineHeight = makeup.Rows.Sum(row => Math.Max(row.Mass.Grams * PixelsPerGram, LineSlot) + LineGap);
        var bundleHeight = matters.Sum(matter => Math.Max((MatterOf.Total(makeup, matter) * PixelsPerGram) + BundleGap, BundleSlot));
        var y = Margin + Math.Max(0, (bundleHeight - lineHeight) / 2);
        var lines = new List<Box>();
        foreach (var row in makeup.Rows)
        {
            var thickness = row.Mass.Grams * PixelsPerGram;
            var slot = Math.Max(thickness, LineSlot);
            lines.Add(new(0, y + ((slot - thickness) / 2), 0, y + ((slot + thickness) / 2)));
            y += slot + LineGap;
        }

        Height = Math.Max(y, Margin + bundleHeight) + Margin;
        y = Margin + Math.Max(0, (lineHeight - bundleHeight) / 2);
        foreach (var matter in matters)
        {
            var thickness = MatterOf.Total(makeup, matter) * PixelsPerGram;
            var slot = Math.Max(thickness + BundleGap, BundleSlot);
            Bundles[matter] = new(0, y + ((slot - thickness) / 2), 0, y + ((slot + thickness) / 2));
            y += slot;
        }

        Lines = lines;
        Lay(makeup);
    }

    public double PixelsPerGram { get; }

    public double Height { get; }

    /// <summary>Top and bottom of every line at the left.</summary>
    public IReadOnlyList<Box> Lines { get; }

    /// <summary>Top and bottom of every sort at the right.</summary>
    public Dictionary<Matter, Box> Bundles { get; } = [];

    /// <summary>Upper edge of a ribbon at both ends; null when the line has none of it.</summary>
    public (double Left, double Right)? PlaceOf(int row, Matter matter) => places.TryGetValue((row, matter), out var place) ? place : null;

    private void Lay(Makeup makeup)
    {
        var filled = Bundles.ToDictionary(bundle => bundle.Key, bundle => bundle.Value.Top);
        for (var row = 0; row < makeup.Rows.Count; row++)
        {
            var left = Lines[row].Top;
            foreach (var matter in MatterOf.All)
            {
                if (MatterOf.Grams(makeup.Rows[row], matter) is { } grams and > 0)
                {
                    places[(row, matter)] = (left, filled[matter]);
                    left += grams * PixelsPerGram;
                    filled[matter] += grams * PixelsPerGram;
                }
            }
        }
    }
}
