using CsCheck;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

public class MixingTests
{
    private static readonly MixPart Flour1000 = Part("flour", 1000, 1.80);
    private static readonly MixPart Salt20 = Part("salt", 20, 0.88);

    /// <summary>1 kg flour, 0.65 kg water, 20 g salt: thermal reference sheet 2.1, marked computed.</summary>
    [Theory]
    [InlineData(20, 20.000)]
    [InlineData(15, 17.0041)]
    public void Mixed_OfAPlainDough_IsTheTabledOne(double water, double expected)
    {
        var balance = Balance(0, Flour1000, Part("water", 650, 4.18), Salt20);
        Assert.Equal(4534.6, balance.JoulesPerKelvin, 1e-9);
        Assert.Equal(expected, balance.Mixed([20, water, 20], Cold), 1e-4);
    }

    /// <summary>
    /// The same with 40 kJ/kg of work and 15.1 kJ/kg flour of wetting: the sheet's 35.065 °C is the plain mix plus (66.8 + 15.1) kJ over
    /// 4.5346 kJ/K as one rise.
    /// </summary>
    [Fact]
    public void Mixed_WithARise_AddsItToTheWholeBowl()
    {
        var balance = Balance(0, Flour1000, Part("water", 650, 4.18), Salt20);
        var conditions = Cold with { RiseKelvins = (66.8 + 15.1) / 4.5346 };
        Assert.Equal(35.065, balance.Mixed([20, 15, 20], conditions), 1e-3);
    }

    /// <summary>A thermodynamics textbook's exercise (Çengel and Boles, 5-157, read): 2 kg flour, 1 kg water, dough at 15 °C.</summary>
    [Theory]
    [InlineData(15.0 * 3, 4.234)]
    [InlineData(15.1 * 2, 7.775)]
    public void Solve_ForTheWaterOfATextbookDough_GivesThePrintedTemperature(double wettingKilojoules, double expected)
    {
        var balance = Balance(0, Part("flour", 2000, 1.80), Part("water", 1000, 4.18));
        var rise = wettingKilojoules / (balance.JoulesPerKelvin / 1000);
        Assert.Equal(expected, balance.Solve(15, [1], [15, 0], Cold with { RiseKelvins = rise }), 1e-3);
    }

    /// <summary>
    /// 80 g flour and 100 g water poured in a bowl at 21 °C: scenario 8, marked computed from flour 1.80 and water 4.18 kJ/(kg K). Tests
    /// the bowl's part in the balance, not what a kitchen shows.
    /// </summary>
    [Theory]
    [InlineData(100, null, 0, 79.8)]
    [InlineData(100, VesselMaterial.Steel, 150, 72.8)]
    [InlineData(100, VesselMaterial.Glass, 350, 59.6)]
    [InlineData(93, null, 0, 74.6)]
    [InlineData(93, VesselMaterial.Steel, 150, 68.2)]
    [InlineData(93, VesselMaterial.Glass, 350, 56.2)]
    public void Mixed_OfAScald_DependsOnItsBowl(double poured, VesselMaterial? material, double grams, double expected)
    {
        var vessel = material is null ? Vessel.None : new Vessel(VesselShape.Bowl, material, Mass.FromGrams(grams), Warmed: false);
        var balance = Balance(DefaultHeats.JoulesPerKelvinOf(vessel)!.Value, Part("flour", 80, 1.80), Part("water", 100, 4.18));
        Assert.Equal(expected, balance.Mixed([21, poured], Cold with { VesselCelsius = 21 }), 0.3);
    }

    [Fact]
    public void Vessel_ThatIsNotNamed_HasNoKnownHeatCapacity()
    {
        Assert.Null(DefaultHeats.JoulesPerKelvinOf(null));
        Assert.Null(DefaultHeats.JoulesPerKelvinOf(new Vessel(VesselShape.Bowl, VesselMaterial.Glass, null, Warmed: false)));
        Assert.Equal(0, DefaultHeats.JoulesPerKelvinOf(Vessel.None));
    }

    /// <summary>
    /// 350 g of fridge butter to 500 g flour and 300 g egg: melted throughout it takes 284 g · 60 J/g, which is 6.1 K of this dough.
    /// Corrections 3 say about 5.6 K for 350 g to 500 g flour, from memory and without naming the rest.
    /// </summary>
    [Fact]
    public void Butter_CostsWhatItsMeltingTakes()
    {
        var balance = Balance(
            0,
            Part("flour", 500, 1.80),
            Part("egg", 300, 3.65),
            Part("butter", 350, 2.34) with { MeltingFat = Mass.FromGrams(284) });
        double[] celsius = [45, 45, 5];
        var melting = Cold with { MeltingJoulesPerGram = FatMelting.Butter.JoulesPerGram };
        var cost = balance.Mixed(celsius, Cold) - balance.Mixed(celsius, melting);
        Assert.Equal(284 * 60 / balance.JoulesPerKelvin, cost, 1e-9);
        Assert.Equal(5.6, cost, 0.6);
    }

    [Fact]
    public void Solve_ForAFreePart_GivesBackTheTemperatureItWasMixedWith() =>
        Gen.Select(Gen.Double[0, 100].Array[4], Gen.Double[0, 2000], Gen.Double[-2, 60], Gen.Double[0, 8], Gen.Double[0, 90]).Sample(
            (celsius, vessel, vesselCelsius, rise, melting) =>
            {
                var balance = Balance(vessel, Butter("butter", 50), Flour1000, Part("water", 400, 4.18), Butter("cream", 80));
                var conditions = new MixingConditions(vesselCelsius, rise, melting);
                for (var free = 0; free < 4; free++)
                {
                    Assert.Equal(celsius[free], balance.Solve(balance.Mixed(celsius, conditions), [free], celsius, conditions), 1e-6);
                }

                celsius[3] = celsius[0];
                Assert.Equal(celsius[0], balance.Solve(balance.Mixed(celsius, conditions), [3, 0], celsius, conditions), 1e-6);
                var measured = balance.Mixed(celsius, conditions);
                Assert.Equal(rise, balance.RiseFor(measured, celsius, conditions with { RiseKelvins = 0 }), 1e-9);
            });

    [Fact]
    public void Mixed_NeverLeavesTheRangeOfItsParts_AndRisesWithEachOfThem() =>
        Gen.Select(Gen.Double[0, 100].Array[3], Gen.Double[0, 90], Gen.Int[0, 2], Gen.Double[0.1, 20]).Sample((parts, melting, warmer, by) =>
        {
            var celsius = parts.ToArray();
            var balance = Balance(0, Butter("butter", 50), Flour1000, Part("water", 400, 4.18));
            var conditions = Cold with { MeltingJoulesPerGram = melting };
            var mixed = balance.Mixed(celsius, conditions);
            Assert.InRange(mixed, celsius.Min() - 1e-9, celsius.Max() + 1e-9);
            celsius[warmer] += by;
            Assert.True(balance.Mixed(celsius, conditions) > mixed);
        });

    [Fact]
    public void Mixed_OfTwiceEverything_IsTheSame_AndOrderChangesNothing()
    {
        var conditions = new MixingConditions(21, 1.5, 60);
        var once = Balance(250, Flour1000, Butter("butter", 80), Part("water", 500, 4.18));
        var twice = Balance(500, Part("flour", 2000, 1.80), Butter("butter", 160), Part("water", 1000, 4.18));
        var turned = Balance(250, Part("water", 500, 4.18), Butter("butter", 80), Flour1000);
        Assert.Equal(once.Mixed([18, 8, 40], conditions), twice.Mixed([18, 8, 40], conditions), 1e-9);
        Assert.Equal(once.Mixed([18, 8, 40], conditions), turned.Mixed([40, 8, 18], conditions), 1e-9);
    }

    [Fact]
    public void Trace_TellsMeanAndWarmestAfterEachAddition()
    {
        var balance = Balance(250, Part("scald", 180, 3.1), Part("yeast", 4, 1.8), Flour1000);
        var trace = balance.Trace([47, 21, 21], Cold with { VesselCelsius = 21 });
        Assert.Equal(["scald", "yeast", "flour"], trace.Additions.Select(addition => addition.Id));
        // 180 · 3.1 = 558 J/K at 47 °C against 250 J/K of bowl at 21 °C.
        Assert.Equal(((558 * 47) + (250 * 21)) / 808.0, trace.Additions[0].MeanCelsius, 1e-9);
        Assert.Equal(47, trace.WarmestMet(1));
        Assert.Equal(21, trace.WarmestMet(0));
        Assert.Equal(trace.Additions[1].MeanCelsius, trace.WarmestMean(1));
        Assert.All(trace.Additions, addition => Assert.Equal(47, addition.WarmestPartCelsius));
    }

    [Fact]
    public void SolveIce_GivesAMixThatIsAsColdAsWanted()
    {
        var conditions = Cold with { RiseKelvins = 6 };
        var ice = Balance(0, Flour1000, Part("water", 650, 4.18)).SolveIce(22, 1, [26, 20], conditions);
        // By hand: the ice takes its melting heat and comes in at 0 °C, the rest of the water at 20 °C.
        var kelvins = (1800.0 * 26) + ((650 - ice) * 4.18 * 20) - (ice * IceInWater.MeltingJoulesPerGram);
        Assert.InRange(ice, 1, 649);
        Assert.Equal(22 - 6, kelvins / (1800 + (650 * 4.18)), 1e-9);
    }

    /// <summary>Thermal reference sheet 2.3: trade rule and full balance (c = 4.186), marked from memory and computed.</summary>
    [Fact]
    public void Ice_OfTheTradeRuleAndTheBalance_IsTheTabledOne()
    {
        var heat = SpecificHeat.FromJoulesPerGramKelvin(4.186);
        var (tap, want, water) = (Temperature.FromCelsius(20), Temperature.FromCelsius(5), Mass.FromKilograms(10));
        Assert.Equal(1500, IceInWater.ByTradeRule(water, tap, want).Grams, 1e-9);
        Assert.Equal(1504.78, IceInWater.ByBalance(water, tap, want, heat).Grams, 0.005);
        var small = IceInWater.ByTradeRule(Mass.FromGrams(1000), Temperature.FromCelsius(18), Temperature.FromCelsius(4));
        Assert.Equal(142.857, small.Grams, 5e-4);
        Assert.Equal(Mass.Zero, IceInWater.ByTradeRule(water, want, tap));
        Assert.Throws<ArgumentOutOfRangeException>(() => IceInWater.ByTradeRule(water, tap, Temperature.FromCelsius(-1)));
    }

    [Fact]
    public void Balance_OfNothing_HasNoTemperature()
    {
        var nothing = Balance(250, Part("flour", 0, 1.8));
        Assert.False(nothing.HoldsSomething);
        Assert.Throws<InvalidOperationException>(() => nothing.Mixed([20], new(20, 0, 0)));
        Assert.Throws<InvalidOperationException>(() => nothing.RiseFor(26, [20], new(20, 0, 0)));
        Assert.Throws<InvalidOperationException>(() => nothing.Solve(26, [0], [20], new(20, 0, 0)));
    }

    private static MixingConditions Cold => new(0, 0, 0);

    private static MixPart Part(string id, double grams, double specificHeat) =>
        new(id, Mass.FromGrams(grams), SpecificHeat.FromJoulesPerGramKelvin(specificHeat));

    private static MixPart Butter(string id, double grams) => Part(id, grams, 2.34) with { MeltingFat = Mass.FromGrams(0.81 * grams) };

    private static MixingBalance Balance(double vessel, params MixPart[] parts) => new(parts, vessel, FatMelting.Butter);
}
