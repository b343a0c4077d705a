using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Shapes;

/// <summary>
/// Pieces from their volume. Proportions nobody wrote down are those in which such pieces are made; what the text says of tin, tray and depth
/// goes before. Source: piece-proportions.
/// </summary>
internal static class PieceForms
{
    private const double BatardLongPerAcross = 2.5;

    /// <summary>55 cm at 350 g, rolled out and not yet proofed.</summary>
    private const double BaguetteLongPerAcross = 20;

    /// <summary>From the middle of the tube on one side to that on the other, in thicknesses of the tube.</summary>
    private const double RingAcrossPerTube = 3;
    private const double FlatAcrossPerHigh = 12;
    private const double SpiralHighPerAcross = 0.5;

    /// <summary>Room of a tin over the dough that is laid in, and the measures of the usual one in metres.</summary>
    private const double TinPerDough = 3.5;
    private static readonly (double Long, double Wide, double Deep) UsualTin = (0.25, 0.11, 0.08);

    /// <summary>Depth of a sheet whose tray nobody measured.</summary>
    private static readonly Length UsualSheet = Length.FromMillimetres(15);

    /// <param name="cubicMetres">As it was shaped.</param>
    /// <param name="growth">Volume now over that.</param>
    /// <param name="vessel">The tin or tray it fills; null where its size is not known.</param>
    /// <param name="depth">Of a sheet as it was shaped; null where the tray tells.</param>
    /// <exception cref="ArgumentOutOfRangeException">The volume or the growth is not above nought.</exception>
    public static PieceForm Of(PieceShape shape, double cubicMetres, double growth = 1, VesselSize? vessel = null, Length? depth = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(cubicMetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(growth);
        var volume = cubicMetres * growth;
        return shape switch
        {
            PieceShape.Ball => Ball(volume),
            PieceShape.Boule => Boule(volume),
            // What is long grows thicker and no longer.
            PieceShape.Batard => Stick(shape, volume, BatardLongPerAcross * StickAcross(cubicMetres, BatardLongPerAcross)),
            PieceShape.Baguette => Stick(shape, volume, BaguetteLongPerAcross * StickAcross(cubicMetres, BaguetteLongPerAcross)),
            PieceShape.Ring => Ring(volume, Math.PI * RingAcrossPerTube * StickAcross(cubicMetres, Math.PI * RingAcrossPerTube)),
            PieceShape.Flat => Round(shape, volume, FlatAcross(cubicMetres)),
            PieceShape.Spiral => Round(shape, volume, HeatForm.Root(4 * volume / (Math.PI * SpiralHighPerAcross))),
            PieceShape.TinLoaf => InTin(volume, vessel, cubicMetres),
            PieceShape.Sheet => Layer(volume, depth is { } said ? cubicMetres / said.Metres : vessel?.Floor ?? (cubicMetres / UsualSheet.Metres)),
            _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "No such shape."),
        };
    }

    /// <summary>A slice of a roll, on its cut.</summary>
    public static PieceForm Slice(SpiralRoll roll, double growth = 1) =>
        Round(PieceShape.Spiral, roll.PieceCubicMetres * growth, roll.Across.Metres * HeatForm.Root(growth));

    private static PieceForm Ball(double volume)
    {
        var radius = Length.FromMetres(HeatForm.Root(3 * volume / (4 * Math.PI)));
        return new(PieceShape.Ball, volume, radius * 2, radius * 2, radius * 2, 4 * Math.PI * radius.Metres * radius.Metres, 0, [new(3, radius)]);
    }

    /// <summary>Half a ball, heat going in through dome and floor, as into the ball of the same volume over area. Source: body-shapes.</summary>
    private static PieceForm Boule(double volume)
    {
        var radius = HeatForm.Root(3 * volume / (2 * Math.PI));
        var floor = Math.PI * radius * radius;
        var across = Length.FromMetres(2 * radius);
        return new(PieceShape.Boule, volume, across, across, across / 2, 2 * floor, floor, [new(3, Length.FromMetres(3 * volume / (3 * floor)))]);
    }

    private static PieceForm Stick(PieceShape shape, double volume, double length)
    {
        var across = Math.Sqrt(4 * volume / (Math.PI * length));
        var ends = Math.PI * across * across / 2;
        return new(
            shape,
            volume,
            Length.FromMetres(length),
            Length.FromMetres(across),
            Length.FromMetres(across),
            (Math.PI * across * length) + ends,
            0,
            [new(2, Length.FromMetres(across / 2)), new(1, Length.FromMetres(length / 2))]);
    }

    /// <summary>A tube bent to a ring, of the length of its middle line.</summary>
    private static PieceForm Ring(double volume, double length)
    {
        var tube = Math.Sqrt(4 * volume / (Math.PI * length));
        var outer = Length.FromMetres((length / Math.PI) + tube);
        return new(PieceShape.Ring, volume, outer, outer, Length.FromMetres(tube), Math.PI * tube * length, 0, [new(2, Length.FromMetres(tube / 2))]);
    }

    private static PieceForm Round(PieceShape shape, double volume, double across)
    {
        var floor = Math.PI * across * across / 4;
        var high = volume / floor;
        var wide = Length.FromMetres(across);
        return new(
            shape,
            volume,
            wide,
            wide,
            Length.FromMetres(high),
            floor + (Math.PI * across * high),
            floor,
            [new(2, wide / 2), new(1, Length.FromMetres(high / 2))]);
    }

    private static PieceForm InTin(double volume, VesselSize? tin, double asShaped)
    {
        if (tin is { Long: { } across, Wide: null })
        {
            // Only the top is open; floor and wall touch the tin.
            var round = Round(PieceShape.TinLoaf, volume, across.Metres);
            return round with { OpenSquareMetres = round.RestingSquareMetres, RestingSquareMetres = round.OpenSquareMetres };
        }

        var scale = HeatForm.Root((tin?.Stated?.Litres / 1000 ?? TinPerDough * asShaped) / (UsualTin.Long * UsualTin.Wide * UsualTin.Deep));
        var (length, width) = tin is { Long: { } one, Wide: { } other } ? (one.Metres, other.Metres) : (scale * UsualTin.Long, scale * UsualTin.Wide);
        var floor = length * width;
        var high = volume / floor;
        return new(
            PieceShape.TinLoaf,
            volume,
            Length.FromMetres(length),
            Length.FromMetres(width),
            Length.FromMetres(high),
            floor,
            floor + (2 * high * (length + width)),
            [new(1, Length.FromMetres(length / 2)), new(1, Length.FromMetres(width / 2)), new(1, Length.FromMetres(high / 2))]);
    }

    /// <summary>Two faces, the edges neglected. Source: body-shapes.</summary>
    private static PieceForm Layer(double volume, double floor)
    {
        var (high, side) = (Length.FromMetres(volume / floor), Length.FromMetres(Math.Sqrt(floor)));
        return new(PieceShape.Sheet, volume, side, side, high, floor, floor, [new(1, high / 2)]);
    }

    private static double StickAcross(double volume, double longPerAcross) => HeatForm.Root(4 * volume / (Math.PI * longPerAcross));

    private static double FlatAcross(double volume) => HeatForm.Root(4 * FlatAcrossPerHigh * volume / Math.PI);
}
