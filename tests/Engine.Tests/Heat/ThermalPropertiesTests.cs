using Doughwright.Engine.Heat;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

public class ThermalPropertiesTests
{
    // The sheet gives carbohydrate without fibre; a composition counts the fibre in.
    private static readonly Composition Flour = Grams(water: 12.7, protein: 12, fat: 1.5, carbohydrate: 70.8, fibre: 3, ash: 0);

    /// <summary>Thermal reference sheet, table 1.7, marked computed: tests the mixture rules. The flour analysis is marked read.</summary>
    public static TheoryData<string, double, double, double, double> Mixtures => new()
    {
        { "flour", 20, 1.98350, 1423.86, 0.29053 },
        { "flour", 25, 1.99063, 1422.26, 0.29644 },
        { "dough 58", 25, 2.77265, 1236.14, 0.43853 },
        { "dough 58", 60, 2.80588, 1223.99, 0.47708 },
        { "dough 58", 90, 2.83341, 1208.52, 0.50025 },
        { "dough 65", 25, 2.83153, 1223.71, 0.44742 },
        { "dough 80", 25, 2.94245, 1200.95, 0.46369 },
        { "milk", 20, 3.88045, 1023.28, 0.56328 },
        { "egg", 20, 3.65036, 1028.25, 0.51576 },
        { "butter", 20, 2.34110, 943.25, 0.24162 },
        { "enriched", 25, 2.53732, 1224.83, 0.37887 },
    };

    [Theory, MemberData(nameof(Mixtures))]
    public void Of_AMixture_HasTheTabledValues(string name, double celsius, double specificHeat, double density, double conductivity)
    {
        var properties = ThermalProperties.Of(Named(name), Temperature.FromCelsius(celsius))!;
        Near(specificHeat, properties.SpecificHeat.JoulesPerGramKelvin);
        Near(density, properties.Density.KilogramsPerCubicMetre);
        Near(conductivity, properties.Conductivity.WattsPerMetreKelvin);
    }

    /// <summary>Thermal reference sheet, gassed dough of 58 % water at 25 °C, marked computed.</summary>
    [Theory]
    [InlineData(0.08, 0.3921, 1137.3)]
    [InlineData(0.30, 0.2800, 865.3)]
    [InlineData(0.50, 0.1939, 618.1)]
    [InlineData(0.65, 0.1373, 432.7)]
    [InlineData(0.80, 0.0864, 247.2)]
    public void WithGas_OfDough_HasTheTabledValues(double gas, double conductivity, double density)
    {
        var gassed = ThermalProperties.Of(Named("dough 58"), Temperature.FromCelsius(25))!.WithGas(gas);
        Assert.Equal(conductivity, gassed.Conductivity.WattsPerMetreKelvin, 1e-4);
        Assert.Equal(density, gassed.Density.KilogramsPerCubicMetre, 0.1);
    }

    [Fact]
    public void Of_WithAnUnknownConstituent_IsUnknown()
    {
        Assert.Null(ThermalProperties.Of(Flour with { Fibre = null }, Temperature.FromCelsius(20)));
        Assert.Null(ThermalProperties.Of(Composition.Unknown, Temperature.FromCelsius(20)));
    }

    [Fact]
    public void Of_WithUnknownAlcohol_IsKnownOnlyWhenThereIsNoRoomForIt()
    {
        Assert.NotNull(ThermalProperties.Of(Flour with { Alcohol = null }, Temperature.FromCelsius(20)));
        Assert.Null(ThermalProperties.Of(Flour with { Alcohol = null, Water = 2 }, Temperature.FromCelsius(20)));
    }

    [Fact]
    public void Of_TheSameFoodInOtherUnits_IsTheSame()
    {
        var twice = Grams(water: 25.4, protein: 24, fat: 3, carbohydrate: 141.6, fibre: 6, ash: 0);
        var one = ThermalProperties.Of(Flour, Temperature.FromCelsius(20))!;
        var two = ThermalProperties.Of(twice, Temperature.FromCelsius(20))!;
        Near(one.JoulesPerCubicMetreKelvin, two.JoulesPerCubicMetreKelvin);
        Near(1.0287e-7, one.DiffusivitySquareMetresPerSecond);
    }

    private static Composition Named(string name) => name switch
    {
        "flour" => Flour,
        "dough 58" => Dough(58),
        "dough 65" => Dough(65),
        "dough 80" => Dough(80),
        "enriched" => Grams(water: 62.7, protein: 12, fat: 21.5, carbohydrate: 85.8, fibre: 3, ash: 2),
        "milk" => Grams(water: 87.5, protein: 3.4, fat: 3.7, carbohydrate: 4.7, fibre: 0, ash: 0.7),
        "egg" => Grams(water: 76.15, protein: 12.56, fat: 9.51, carbohydrate: 0.72, fibre: 0, ash: 1.06),
        "butter" => Grams(water: 16, protein: 0.9, fat: 81.1, carbohydrate: 0.1, fibre: 0, ash: 1.9),
        "bread" => Grams(water: 44.5, protein: 7.7, fat: 1, carbohydrate: 43, fibre: 2.4, ash: 1.4),
        "oil" => Grams(water: 0, protein: 0, fat: 100, carbohydrate: 0, fibre: 0, ash: 0),
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };

    private static Composition Dough(double water) =>
        Grams(water: 12.7 + water, protein: 12, fat: 1.5, carbohydrate: 70.8, fibre: 3, ash: 2);

    private static Composition Grams(double water, double protein, double fat, double carbohydrate, double fibre, double ash) =>
        new(water, protein, fat, carbohydrate + fibre, Sugars: null, fibre, ash, Salt: null, Lactose: null, Alcohol: 0);

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, 1e-4 * expected);
}
