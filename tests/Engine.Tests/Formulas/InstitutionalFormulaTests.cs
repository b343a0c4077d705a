using System.Globalization;
using System.Text;
using System.Text.Json;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Formulas;

/// <summary>
/// Formulas of the United States Army and Department of Agriculture, typed in from public-domain cards and bulletins
/// (tests/data/published/army-recipe-cards, army-bakers, usda-school-recipes): a recipe is written from the printed weights, read and balanced, and
/// its percentages, sums and dough weights are held against the cards. Where a card contradicts itself the file says so, and so does the test.
/// </summary>
public class InstitutionalFormulaTests
{
    private static readonly string[] Folders = ["army-recipe-cards", "army-bakers", "usda-school-recipes"];

    private static readonly Dictionary<string, JsonElement> Cards = Folders
        .SelectMany(folder => JsonDocument.Parse(Texts.Read($"tests/data/published/{folder}/formulas.json")).RootElement.GetProperty("formulas").EnumerateArray())
        .ToDictionary(card => card.GetProperty("id").GetString()!);

    public static TheoryData<string> Ids => [.. Cards.Keys];

    private static IEnumerable<JsonElement> Lines(string id) => Cards[id].GetProperty("lines").EnumerateArray();

    private static string Name(JsonElement line) => line.GetProperty("name").GetString()!;

    private static double Ounces(JsonElement line) => line.GetProperty("ounces").GetDouble();

    private static bool IsFlour(JsonElement line) => Name(line).EndsWith(" flour", StringComparison.Ordinal);

    private static double Sum(string id, Func<JsonElement, bool> which) => Lines(id).Where(which).Sum(Ounces);

    private static Formula Balanced(string id)
    {
        var text = new StringBuilder($"doughwright: 1\ntitle: {id}\nhome:\n  air: 21 C\nparts:\n  dough:\n");
        foreach (var line in Lines(id))
        {
            text.Append(CultureInfo.InvariantCulture, $"    {Name(line)}: {Ounces(line)} oz\n");
        }

        var reading = RecipeText.Read(text.ToString());
        Assert.True(reading.Understood, string.Join("; ", reading.Findings.Select(finding => finding.Id)));
        return Formula.Balance(reading.Recipe!, Larder.Shipped);
    }

    [Fact]
    public void AtLeastTenFormulas_AreThere() => Assert.True(Cards.Count >= 10);

    /// <summary>Worked out by hand from the card, to the one decimal that bakers print.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void PercentOfEveryLine_IsThatOfTheCard(string id)
    {
        var dough = Balanced(id).Components.Single();
        Assert.Equal(Lines(id).Count(), dough.Lines.Count);
        Assert.All(Lines(id).Zip(dough.Lines), pair =>
            Assert.Equal(pair.First.GetProperty("percent").GetDouble(), pair.Second.Percent!.Value.Value, 0.0501));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void SumsByRole_AreThoseOfTheCard(string id)
    {
        var percent = Balanced(id).Percent;
        var flour = Sum(id, IsFlour);
        double On(Func<JsonElement, bool> which) => 100 * Sum(id, which) / flour;
        Assert.Equal(On(line => Name(line) == "water"), percent.Hydration!.Value.Value, 1e-6);
        Assert.Equal(On(line => Name(line) == "salt"), percent.Salt!.Value.Value, 1e-6);
        Assert.Equal(On(line => Name(line) == "sugar"), percent.Sugar!.Value.Value, 1e-6);
        Assert.Equal(On(line => Name(line) is "lard" or "canola oil"), percent.Fat!.Value.Value, 1e-6);
    }

    /// <summary>An ounce is exactly 28.349523125 g, and all of it is dough.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void Dough_WeighsWhatItsIngredientsWeigh(string id) =>
        Assert.Equal(28.349523125 * Sum(id, _ => true), Balanced(id).Dough.Grams, 1e-6 * Balanced(id).Dough.Grams);

    /// <summary>The weight of dough that the card itself prints, by its pieces: within 1 in 100 where it agrees with its own ingredients.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void PrintedPieces_AddUpToTheDough_OrTheFileSaysThatTheyDoNot(string id) => Assert.All(Cards[id].GetProperty("facts").EnumerateArray(), fact =>
    {
        var printed = fact.GetProperty("doughOunces").GetDouble() * 28.349523125;
        var agrees = Math.Abs((Balanced(id).Dough.Grams / printed) - 1) <= 0.01;
        Assert.Equal(fact.GetProperty("agrees").GetBoolean(), agrees);
        Assert.NotEqual(agrees, fact.TryGetProperty("disagreement", out _));
    });

    /// <summary>On 100 lb of flour the printed pounds are per cents: nothing was worked out.</summary>
    [Theory]
    [InlineData("garrison-sponge-1916")]
    [InlineData("field-bread-1941")]
    public void PercentsThatArePrinted_AreMetExactly(string id) => Assert.All(Cards[id].GetProperty("printedPercent").EnumerateObject(), printed =>
        Assert.Equal(
            printed.Value.GetDouble(),
            Balanced(id).Components.Single().Lines.Single(line => line.Name == printed.Name).Percent!.Value.Value,
            1e-9));

    /// <summary>
    /// TM 10-412 (2003), card D 009 00, prints 6 g of protein, 2 g of fat and 34 g of carbohydrate to one of a hundred portions. Nothing of it is
    /// lost in baking.
    /// </summary>
    [Fact]
    public void WhatAPortionHolds_IsWhatTheCardPrints()
    {
        var dough = Balanced("d-009-2003").Components.Single();
        var portion = dough.Mass.Grams / 100;
        Assert.Equal(6, dough.Composition.Protein!.Value / 100 * portion, 0.5);
        Assert.Equal(2, dough.Composition.Fat!.Value / 100 * portion, 0.5);
        Assert.Equal(34, dough.Composition.Carbohydrate!.Value / 100 * portion, 0.5);
    }
}
