using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Tests.Baking.Radial;

/// <summary>Pieces for the tests of the bake along one radius.</summary>
internal static class Pieces
{
    public static readonly Pressure AtTheSea = StandardAtmosphere.PressureAt(Length.Zero);

    /// <summary>Flour of 12.7 % water with so much water and 2 % salt on it: the dough of the thermal reference sheet, 1.7.</summary>
    public static BakingDough Lean(double water) => BakingDough.Of(Composition(water, 0, 0))!;

    /// <summary>The same with fat and sugar on the flour.</summary>
    public static BakingDough Enriched(double water, double fat, double sugar) => BakingDough.Of(Composition(water, fat, sugar))!;

    /// <summary>
    /// A small dome loaf at 190 °C. Not in the publication and given with the case: 51 g, a risen cylinder of 45 mm radius and 50 mm height, 10
    /// W/(m² K) in all. Moisture 0.537 kg/kg at the start, 24 °C.
    /// </summary>
    public static RadialPiece SmallLoaf { get; } = new()
    {
        Dough = Lean(WaterFor(0.5373)),
        Mass = Mass.FromGrams(51),
        CubicMetres = Math.PI * 0.045 * 0.045 * 0.050,
        Form = RadialForm.OfCylinder(Length.FromMillimetres(45), Length.FromMillimetres(50)),
        Start = Temperature.FromCelsius(24),
        Pressure = AtTheSea,
        Effectiveness = BakeLaws.Effectiveness.Central,
        Skin = BakeLaws.Skin.Central,
        Oven = new(190, 10, 0),
    };

    /// <summary>A cylinder as the bake structure sheet has it for its cases: risen, all faces alike.</summary>
    public static RadialPiece Cylinder(BakingDough dough, double grams, double millilitresPerGram, double heightOverRadius, double celsius, double coefficient, double shut = 0)
    {
        var cubicMetres = grams * millilitresPerGram * 1e-6;
        var radius = Elementary.Pow(cubicMetres / Math.PI / heightOverRadius, 1.0 / 3);
        return SmallLoaf with
        {
            Dough = dough,
            Mass = Mass.FromGrams(grams),
            CubicMetres = cubicMetres,
            Form = RadialForm.OfCylinder(Length.FromMetres(radius), Length.FromMetres(radius * heightOverRadius)),
            Start = Temperature.FromCelsius(27),
            Oven = new(celsius, coefficient, 0),
            Shut = shut,
        };
    }

    public static BakeTrace Bake(RadialPiece piece, double minutes) => Bake([piece], minutes);

    public static BakeTrace Bake(IReadOnlyList<RadialPiece> pieces, double minutes) =>
        RadialBake.Until(RadialBake.WorkingGrid(pieces[0].Form.Dimensions), new(60 * minutes, RadialBake.WorkingSteps, RadialBake.WorkingSteps), RadialPiece.Lanes(pieces), 60 * minutes);

    /// <summary>So many cells and steps that they stand for the exact solution.</summary>
    public static BakeTrace Finely(IReadOnlyList<RadialPiece> pieces, double minutes) =>
        RadialBake.Until(new(pieces[0].Form.Dimensions, 120, 0.004), new(60 * minutes, 3000, 3000), RadialPiece.Lanes(pieces), 60 * minutes);

    private static double WaterFor(double ratio) => (100 * ratio * (0.873 + 0.02)) - 12.7;

    private static Composition Composition(double water, double fat, double sugar)
    {
        var total = 102 + water + fat + sugar;
        return new(
            100 * (12.7 + water) / total, 100 * 12.0 / total, 100 * (1.5 + fat) / total, 100 * (70.8 + 3 + sugar) / total, 100 * sugar / total, 100 * 3.0 / total, 100 * 2.0 / total, null, null, 0);
    }
}
