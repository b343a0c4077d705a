using Doughwright.Engine.Baking;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Tests.Baking;

/// <summary>
/// The model before any bake of the author against a published one: a small dome loaf at 190 °C, start 24 °C, centre at 93 °C after
/// 9 minutes (within 1). Zhang and others 2005 (AIChE Journal, DOI 10.1002/aic.10518), curves digitised in an open data set, thermal reference
/// sheet 8.1, marked read. Not in the publication: mass 50.6 g, risen cylinder of radius 45 and height 50 mm, inferred from its energy balance
/// (bake structure sheet); 2.6 J/(g K) for its 35 % water, computed.
/// </summary>
public class PublishedBakeTests
{
    private const double MeasuredMinutes = 9;
    private const double Grams = 50.6;
    private const double JoulesPerGramKelvin = 2.6;
    private const double CubicMetres = Math.PI * 0.045 * 0.045 * 0.050;

    /// <summary>
    /// The factor on the diffusivity was fitted to this loaf, so this holds the program to its fit. The coefficient is 10 in the case and 20
    /// in the model: both must stay within the spread the model admits, the pace, which the author's bake then fixes.
    /// </summary>
    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    public void Minutes_WithoutAnAuthorsBake_AreWithinTheSpreadOfThePace(double coefficient)
    {
        var minutes = MinutesTo93(coefficient);
        var spreads = Elementary.Log(minutes / MeasuredMinutes) / OvenPiece.PaceSpread;
        TestContext.Current.TestOutputHelper?.WriteLine(
            $"h {coefficient} W/(m² K): model {minutes:F1} min, measured {MeasuredMinutes} ± 1 min; pace {minutes / MeasuredMinutes:F2}, {spreads:F1} spreads off");
        Assert.InRange(Math.Abs(spreads), 0, StepFindings.FarFromPrior);
    }

    /// <summary>
    /// Once the surface boils a hotter oven can add nothing in this model, so it answers too weakly: the finer trial model of the bake
    /// structure sheet has 16 % for 20 K more. Only the direction is asked; the size is reported.
    /// </summary>
    [Fact]
    public void Minutes_InAHotterOven_AreFewer()
    {
        var shorter = 1 - (MinutesTo93(10, 210) / MinutesTo93(10));
        TestContext.Current.TestOutputHelper?.WriteLine($"20 K more: {shorter:P1} shorter");
        Assert.InRange(shorter, 0, 1);
    }

    private static double MinutesTo93(double coefficient, double oven = 190)
    {
        var radius = Elementary.Pow(3 * CubicMetres / (4 * Math.PI), 1.0 / 3);
        var gas = 1 - (Grams * 0.83e-6 / CubicMetres);
        var diffusivity = CrumbDiffusivity.OfRisenPiece * CrumbDiffusivity.AtPorosity(gas);
        var conductivity = diffusivity * Grams * JoulesPerGramKelvin / CubicMetres;
        var lanes = Bakes.One(23.7, oven, 100, coefficient * radius / conductivity);
        var share = (93 - 23.7) / (100 - 23.7);
        var fourier = BakeModel.TimeToShare(lanes, [.. Enumerable.Repeat(share, lanes.Count)])[0];
        return fourier * radius * radius / diffusivity / 60;
    }
}
