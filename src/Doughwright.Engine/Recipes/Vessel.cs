using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes;

public enum VesselMaterial
{
    Steel,
    Glass,
    Ceramic,
    Plastic,
    Aluminium,
}

public enum VesselShape
{
    Bowl,
    Tray,
    Pot,
    Tin,
    Board,
}

/// <summary>A bowl, tray, pot or tin. Its mass and material decide how much heat it takes.</summary>
/// <param name="Material">Null together with a null mass means that the author said "none": no vessel takes heat.</param>
public sealed record Vessel(VesselShape Shape, VesselMaterial? Material, Mass? Mass, bool Warmed)
{
    public static Vessel None => new(VesselShape.Board, null, null, false);

    public bool TakesHeat => Mass is { Grams: > 0 };
}
