using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Baking.Sections;

/// <summary>A piece as it stands in the oven, at its risen size.</summary>
/// <param name="Radius">Of the cylinder.</param>
/// <param name="Mass">Of the dough.</param>
/// <param name="Water">kg per kg of dry matter; above 0.</param>
/// <param name="Start">0 to 60 °C.</param>
/// <param name="Pressure">Of the air.</param>
/// <param name="DoughDensity">Of dough without gas.</param>
/// <param name="DoughConductivity">Of dough without gas.</param>
internal sealed record BakingPiece(
    Length Radius,
    Length Height,
    Mass Mass,
    double Water,
    SolidsHeat Solids,
    Temperature Start,
    Pressure Pressure,
    Density DoughDensity,
    Conductivity DoughConductivity)
{
    public required OvenFace Top { get; init; }

    public required OvenFace Bottom { get; init; }

    public required OvenFace Side { get; init; }

    /// <summary>A stone, steel or sole that it stands on, which then takes the place of <see cref="Bottom"/>; null for none.</summary>
    public UnderHearth? Hearth { get; init; }

    public CrumbLaws Laws { get; init; } = CrumbLaws.Standard;

    /// <summary>The same piece in an oven that gives so many times the heat on every face.</summary>
    public BakingPiece Scaled(double factor) => this with { Top = Top.Scaled(factor), Bottom = Bottom.Scaled(factor), Side = Side.Scaled(factor), Hearth = Hearth?.Scaled(factor) };

    public double CubicMetres => Math.PI * Radius.Metres * Radius.Metres * Height.Metres;

    /// <summary>kg per m³ as risen.</summary>
    public double SolidsPerCubicMetre => Mass.Grams / 1000 / (1 + Water) / CubicMetres;

    /// <summary>Share of the volume that is gas.</summary>
    public double GasShare => 1 - (Mass.Grams / 1000 / CubicMetres / DoughDensity.KilogramsPerCubicMetre);

    /// <summary>Of the risen dough without what its vapour carries, W/(m K).</summary>
    public double CrumbConductivity => Math.Max(
        Laws.LeastConductivity,
        new ThermalProperties(SpecificHeat.FromJoulesPerGramKelvin(1), DoughDensity, DoughConductivity).WithGas(GasShare).Conductivity.WattsPerMetreKelvin);
}
