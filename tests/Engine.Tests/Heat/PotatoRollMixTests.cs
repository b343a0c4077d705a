using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Tests.Heat;

/// <summary>
/// The potato rolls of the demo book, mixed in the kitchens of the product's own scenarios. The figures are what the agreed defaults give,
/// expected from the model: they hold the balance to its purpose, they are no evidence. Specific heats are typed in, rounded.
/// </summary>
public class PotatoRollMixTests
{
    private static readonly MixPart[] Parts =
    [
        Part("scald", 180, 3.12),
        Part("potato", 160, 3.63),
        Part("egg", 50, 3.65),
        Part("sugar", 30, 1.6),
        Part("yeast", 4, 2),
        Part("salt", 7, 0.88),
        Part("butter", 50, 2.34) with { MeltingFat = Mass.FromGrams(40.5) },
        Part("flour", 320, 1.80),
    ];

    private static readonly MixingBalance AtHome = In(500);

    private static double HomeRise => AtHome.RiseFor(26, Temperatures(28, 28, 21), new(21, 0, FatMelting.Butter.JoulesPerGram));

    [Fact]
    public void MeasuredDough_SolvesARiseThatIsUsualByHand() =>
        Assert.InRange(HandlingRise.Of(MixingWay.ByHand).StandardDeviationsOff(TemperatureDelta.FromKelvins(HomeRise)), -1, 1);

    [Theory]
    [InlineData(0, 27.4)]
    [InlineData(500, 28.1)]
    [InlineData(1800, 30.2)]
    public void ScaldAndPotatoTogether_DependOnTheBowl(double steelGrams, double expected) =>
        Assert.Equal(expected, In(steelGrams).Solve(26, [0, 1], Temperatures(0, 0, 21), At(21, HomeRise)), 0.6);

    [Fact]
    public void ScaldAndPotatoTogether_ByMachine_MayBeCooler() =>
        Assert.Equal(25.1, AtHome.Solve(26, [0, 1], Temperatures(0, 0, 21), At(21, HandlingRise.Of(MixingWay.Machine).Mean.Kelvins)), 0.6);

    [Fact]
    public void OneKelvinOnThePotato_MovesTheDoughByAQuarter() => Assert.Equal(
        0.25, AtHome.Mixed(Temperatures(28, 29, 21), At(21, 1.5)) - AtHome.Mixed(Temperatures(28, 28, 21), At(21, 1.5)), 0.005);

    [Theory]
    [InlineData(28, 28, 17, 23.9)]
    [InlineData(17, 17, 17, 18.5)]
    [InlineData(30, 30, 30, 31.5)]
    [InlineData(28, 28, 30, 30.5)]
    public void Dough_InOtherKitchens_IsAsTheScenariosSay(double scald, double potato, double kitchen, double expected) =>
        Assert.Equal(expected, AtHome.Mixed(Temperatures(scald, potato, kitchen), At(kitchen, HomeRise)), 0.7);

    [Theory]
    [InlineData(new[] { 0, 1 }, 32)]
    [InlineData(new[] { 1 }, 47)]
    [InlineData(new[] { 0 }, 48)]
    public void FreeParts_InTheColdKitchen_AreAsTheScenariosSay(int[] free, double expected) =>
        Assert.Equal(expected, AtHome.Solve(26, free, Temperatures(17, 17, 17), At(17, HomeRise)), 2.0);

    private static MixingConditions At(double kitchen, double rise) => new(kitchen, rise, FatMelting.Butter.JoulesPerGram);

    private static double[] Temperatures(double scald, double potato, double rest) => [scald, potato, rest, rest, rest, rest, rest, rest];

    private static MixingBalance In(double steelGrams) =>
        new(Parts, Mass.FromGrams(steelGrams) * DefaultHeats.Of(VesselMaterial.Steel), FatMelting.Butter);

    private static MixPart Part(string id, double grams, double specificHeat) =>
        new(id, Mass.FromGrams(grams), SpecificHeat.FromJoulesPerGramKelvin(specificHeat));
}
