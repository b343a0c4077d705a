using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Kitchens;

/// <summary>What a vessel is made of.</summary>
public enum VesselMaterial
{
    Steel,
    Glass,
    Ceramic,
    Plastic,
    Aluminium,
}

/// <summary>What sort of vessel it is.</summary>
public enum VesselShape
{
    Bowl,
    Tray,
    Pot,
    Tin,
    Board,

    /// <summary>The author said that there is none.</summary>
    None,
}

/// <summary>A bowl, tray, pot or tin. Its mass and material decide how much heat it takes.</summary>
/// <param name="Material">Null when the text names none: "pot".</param>
/// <param name="Mass">Null when the text does not say. That is not the same as no vessel.</param>
public sealed record Vessel(VesselShape Shape, VesselMaterial? Material, Mass? Mass, bool Warmed)
{
    /// <summary>What its kitchen calls it; null for one that only a step describes.</summary>
    public string? Name { get; init; }

    /// <summary>How large it is inside; null when the text does not say.</summary>
    public VesselSize? Size { get; init; }

    public static Vessel None => new(VesselShape.None, null, null, false);

    /// <summary>The author said "none": no vessel takes heat.</summary>
    public bool IsNone => Shape == VesselShape.None;

    public bool TakesHeat => Mass is { Grams: > 0 };
}
