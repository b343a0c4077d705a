using Doughwright.Engine.Baking.Sections;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Baking.Sections;

/// <summary>Pieces for the tests of the section.</summary>
internal static class Pieces
{
    /// <summary>Dry matter of white bread flour: USDA SR28, record 20129, without its 13.4 % of water.</summary>
    public static SolidsHeat Lean { get; } = SolidsHeat.Of(
        (FoodConstituent.Carbohydrate, 0.837), (FoodConstituent.Protein, 0.139), (FoodConstituent.Fat, 0.019), (FoodConstituent.Ash, 0.005));

    /// <summary>A solid that only conducts: no vapour, no boiling, everything constant.</summary>
    /// <param name="celsius">Of the oven.</param>
    public static BakingPiece Solid(double radius, double height, double coefficient, double conductivity, double diffusivity, double start, double celsius)
    {
        const double Heat = 2000;
        // With next to no water all of the heat is in the solids.
        var density = conductivity / diffusivity / Heat;
        var grams = 1000 * density * Math.PI * radius * radius * height;
        var face = OvenFace.Steady(coefficient, celsius, open: 0);
        return new(Length.FromMetres(radius), Length.FromMetres(height), Mass.FromGrams(grams), 1e-9, new(Heat, 0, 0), Temperature.FromCelsius(start),
            Pressure.FromPascals(1e9), Density.FromKilogramsPerCubicMetre(density), Conductivity.FromWattsPerMetreKelvin(conductivity))
        {
            Top = face,
            Bottom = face,
            Side = face,
            Laws = new(Effectiveness: 0, BoilRate: 0, LiquidDiffusivity: 0, LeastConductivity: 0),
        };
    }

    /// <summary>A lean dough, open on all faces.</summary>
    public static BakingPiece Dough(
        double radius, double height, double grams, double water, double start, double coefficient, double celsius, double pascals = 101_325)
    {
        var face = OvenFace.Steady(coefficient, celsius);
        return new(Length.FromMetres(radius), Length.FromMetres(height), Mass.FromGrams(grams), water, Lean, Temperature.FromCelsius(start),
            Pressure.FromPascals(pascals), Density.FromKilogramsPerCubicMetre(1260), Conductivity.FromWattsPerMetreKelvin(0.45))
        {
            Top = face,
            Bottom = face,
            Side = face,
        };
    }

    public static SectionMarch March(BakingPiece piece) => new(piece, SectionBake.WorkingGrid(piece));

    public static SectionMarch March(BakingPiece piece, int rings, int layers, double outermost, double tolerance = 0.02) =>
        new(piece, new(piece.Radius.Metres, piece.Height.Metres, rings, layers, outermost), tolerance);
}
