using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pages.Measures;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Pages;

/// <summary>Weights in the measures of a US kitchen: what the larder has weighed, to the nearest that can be measured, or nothing.</summary>
public class MeasureTests
{
    /// <summary>Against USDA SR28 weights of one measure: salt 6 g a teaspoon, butter 14.2 g a tablespoon, egg 50 g large, bread flour 137 g a cup dipped.</summary>
    [Theory]
    [InlineData("salt", 6, "1 tsp")]
    [InlineData("salt", 9, "½ tbsp")]
    [InlineData("salt", 12.1, "2 tsp")]
    [InlineData("butter", 50, "3½ tbsp")]
    [InlineData("egg", 50, "1 large")]
    [InlineData("egg", 100, "2 large")]
    [InlineData("strong white flour", 320, "2⅓ cups (unsifted dipped)")]
    [InlineData("milk", 244, "1 cup")]
    [InlineData("egg", 75, "⅓ cup")]
    [InlineData("strong white flour", 80, null)]
    [InlineData("instant yeast", 4, null)]
    [InlineData("salt", 0.1, null)]
    public void Weight_IsSaidInTheNearestMeasure(string name, double grams, string? said)
    {
        var ingredient = Larder.Shipped.Find(name, []).Ingredient!;
        Assert.Equal(said, Spoons.Of(Mass.FromGrams(grams), ingredient, [], Larder.Shipped, Words.Shipped)?.Replace('\u00a0', ' '));
    }

    /// <summary>The source's large tomato has 182 g; nobody measures cherry tomatoes by it.</summary>
    [Fact]
    public void OnlyEggs_AreCountedByTheirSize() => Assert.DoesNotContain(
        "large", Spoons.Of(Mass.FromGrams(182), Larder.Shipped.Find("cherry tomato", []).Ingredient!, [], Larder.Shipped, Words.Shipped) ?? "", StringComparison.Ordinal);

    /// <summary>The source's cup of boiled potato holds pieces (156 g); mash lies closer, and the source has no cup of it.</summary>
    [Theory]
    [InlineData("boiled", "1 cup")]
    [InlineData("boiled,mashed", null)]
    public void WhatIsMashed_IsNotMeasuredAsPieces(string conditions, string? said)
    {
        var given = conditions.Split(',');
        var potato = Larder.Shipped.Find("potato", given).Ingredient!;
        Assert.Equal(said, Spoons.Of(Mass.FromGrams(160), potato, given, Larder.Shipped, Words.Shipped)?.Replace('\u00a0', ' '));
    }

    /// <summary>No printed measure lies further from the weight than a level spoon does.</summary>
    [Fact]
    public void Measure_IsNeverFarFromTheWeight()
    {
        (double, string)[] halves = [(0, ""), (0.5, "½"), (1, "")];
        for (var count = 0.01; count < 12; count += 0.013)
        {
            if (Spoons.Nearest(count, halves, 12) is var (number, _))
            {
                var shown = number.Contains('½') ? (number.Length > 1 ? double.Parse(number[..^1], System.Globalization.CultureInfo.InvariantCulture) : 0) + 0.5 : double.Parse(number, System.Globalization.CultureInfo.InvariantCulture);
                Assert.InRange(shown / count, 0.92, 1.08);
            }
        }
    }
}
