using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Heat;

/// <summary>Shares side by side: what gives, the furthest from the line first, then what takes. Area is heat, on one scale.</summary>
internal sealed class HeatLayout
{
    public const double Width = 520;

    /// <summary>Left edge of the drawing; the figures of the axis stand left of it.</summary>
    public const double Left = 46;

    /// <summary>Least height of a share without a heat capacity, in K; above a lower neighbour by as much as two lines of text.</summary>
    private const double AgreedKelvins = 8;
    private const double OverNeighbour = 4.5;

    /// <summary>Beside what is much higher it is drawn lower, and so wide enough to be seen.</summary>
    private const double HighNeighbour = 10;

    private const double TallestPixelsPerKelvin = 11;
    private const double PlotHeight = 200;
    private const double LeastKelvins = 2;
    private const double Gap = 1.5;
    private const double AllGaps = 24;

    private HeatLayout(IReadOnlyList<HeatBlock> blocks, double pixelsPerCapacity, double above, double below)
    {
        Blocks = blocks;
        PixelsPerCapacity = pixelsPerCapacity;
        Above = above;
        Below = below;
        PixelsPerKelvin = Math.Min(TallestPixelsPerKelvin, PlotHeight / (above + below));
    }

    public IReadOnlyList<HeatBlock> Blocks { get; }

    /// <summary>Units of the picture for 1 kJ/K.</summary>
    public double PixelsPerCapacity { get; }

    public double PixelsPerKelvin { get; }

    /// <summary>How far the drawing goes above the line, in K.</summary>
    public double Above { get; }

    public double Below { get; }

    public static HeatLayout Of(HeatBalance balance, Rehearsal rehearsal, Voice voice)
    {
        var shares = balance.Shares.Where(share => share.Kilojoules != 0 || share.IsFree).ToList();
        var highest = shares.Select(share => OwnKelvins(share, balance) ?? 0).DefaultIfEmpty().Max();
        var agreed = highest <= HighNeighbour ? Math.Max(AgreedKelvins, highest + OverNeighbour) : Math.Max(AgreedKelvins, highest / 2.5);
        var sized = shares
            .Select(share => (Share: share, Kelvins: OwnKelvins(share, balance) ?? Math.CopySign(agreed, share.Kilojoules), Capacity: CapacityOf(share, agreed)))
            .OrderBy(block => block.Kelvins <= 0)
            .ThenByDescending(block => Math.Round(Math.Abs(block.Kelvins), 3))
            .ThenByDescending(block => block.Capacity)
            .ToList();
        var capacity = sized.Sum(block => block.Capacity);
        var gap = Math.Min(Gap, AllGaps / Math.Max(1, sized.Count));
        var scale = capacity > 0 ? (Width - Left - 4 - (gap * sized.Count)) / capacity : 0;
        var x = Left + 2;
        var blocks = new List<HeatBlock>();
        foreach (var (share, kelvins, room) in sized)
        {
            var block = new HeatBlock(share, HeatNames.Of(share, balance, rehearsal, voice), ValueOf(share, voice), x, room * scale, kelvins);
            blocks.Add(block);
            x = block.Right + gap;
        }

        return new(
            blocks,
            scale,
            Math.Max(LeastKelvins, sized.Select(block => block.Kelvins).DefaultIfEmpty().Max()),
            Math.Max(LeastKelvins, -sized.Select(block => block.Kelvins).DefaultIfEmpty().Min()));
    }

    private static double? OwnKelvins(HeatShare share, HeatBalance balance) =>
        share.KilojoulesPerKelvin is null || share.GoesIn is not { } goesIn ? null : goesIn.Celsius - balance.Mixed.Celsius;

    private static double CapacityOf(HeatShare share, double agreed) =>
        share.GoesIn is not null && share.KilojoulesPerKelvin is { } own ? own : Math.Abs(share.Kilojoules) / agreed;

    private static string ValueOf(HeatShare share, Voice voice) =>
        share.KilojoulesPerKelvin is not null && share.GoesIn is { } goesIn
            ? voice.Text(goesIn, "asked")
            : voice.Say("heat.kilojoules", ("heat", Kilojoules.Text(Math.Abs(share.Kilojoules))));
}
