using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Kitchens;

/// <summary>How large a vessel is inside. Three lengths are a box, two of a tray are its floor, two of anything else are across and deep.</summary>
/// <param name="Long">Length, or the way across a round one; null when only the volume is said.</param>
/// <param name="Wide">Width; null for a round vessel.</param>
/// <param name="Deep">Depth; null for a tray that is given by its floor.</param>
/// <param name="Stated">The volume as its maker or the author gives it.</param>
public sealed record VesselSize(Length? Long, Length? Wide, Length? Deep, Volume? Stated)
{
    // Quarter turns of a circle, to the last bit of a double.
    private const double QuarterPi = 0.785398163397448310;

    /// <summary>Its floor in square metres; null when only the volume is said.</summary>
    public double? Floor => (Long, Wide) switch
    {
        ({ } length, { } width) => length.Metres * width.Metres,
        ({ } across, null) => QuarterPi * across.Metres * across.Metres,
        _ => null,
    };

    /// <summary>What it holds to the brim, walls taken as upright; null for a floor without a depth.</summary>
    public Volume? Volume => Stated ?? (Floor is { } floor && Deep is { } deep ? Quantities.Volume.FromLitres(1000 * floor * deep.Metres) : null);
}
