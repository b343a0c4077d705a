using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>A line that is typed as a percentage stays one, and weighs what its part's base makes of it.</summary>
public class TypedPercentTests
{
    private static string Bread(string lines) => $"doughwright: 1\ntitle: Bread\nhome:\n  air: 21 C\nparts:\n  dough:\n{string.Concat(lines.Split('|').Select(line => $"    {line}\n"))}";

    private static Recipe Read(string text)
    {
        var reading = RecipeText.Read(text);
        Assert.Empty(reading.Findings);
        return reading.Recipe!;
    }

    private static double Grams(Recipe recipe, string line) => recipe.FindComponent("dough")!.Lines.First(one => one.Id == line).Mass!.Value.Grams;

    [Fact]
    public void Percentage_IsOfTheFlour()
    {
        var recipe = Read(Bread("strong white flour: 400 g|water: 65 %|butter: 12.5 %, soft"));
        Assert.Equal((260, 50), (Grams(recipe, "water"), Grams(recipe, "butter")));
        var line = recipe.Components[0].Lines[2];
        Assert.Equal((12.5, "12.5 %", "soft"), (line.Share!.Value.Value, line.Typed, line.Conditions[0]));
    }

    /// <summary>400 g are the 80 % that 20 % rye leaves of all flour.</summary>
    [Fact]
    public void FlourAsAPercentage_IsOfAllFlour()
    {
        var recipe = Read(Bread("strong white flour: 400 g|wholemeal rye flour: 20 %|water: 60 %"));
        Assert.Equal(100, Grams(recipe, "wholemeal-rye-flour"), 9);
        Assert.Equal(300, Grams(recipe, "water"), 9);
    }

    [Fact]
    public void NamedBase_IsWhatPercentagesAreOf() =>
        Assert.Equal(15, Grams(Read(Bread("flour: 300 g|water: 100 g|base: water|salt: 15 %").Replace("    base: water\n", "").Replace("  dough:\n", "  dough:\n    base: water\n")), "salt"));

    [Fact]
    public void FormulaOfAPercentage_IsThatPercentage()
    {
        var formula = Formula.Balance(Read(Bread("strong white flour: 437 g|wholemeal rye flour: 13.7 %|water: 66.6 %|salt: 1.9 %")), Larder.Shipped);
        double[] percents = [.. formula.Components[0].Lines.Select(line => line.Percent!.Value.Value)];
        Assert.Equal([86.3, 13.7, 66.6, 1.9], percents.Select(percent => Math.Round(percent, 9)));
    }

    [Theory]
    [InlineData("strong white flour: 400 g|wholemeal rye flour: 20 %|water: 65.25 %|butter: 12.5 %, soft")]
    [InlineData("strong white flour: 437 g|water: 66.6 %|salt: 2%")]
    public void Percentages_AreWrittenAsTyped(string lines) => Assert.Contains(Bread(lines).Split("parts:")[1], RecipeText.Write(Read(Bread(lines))), StringComparison.Ordinal);

    [Fact]
    public void TypedMeansTheSame_HoweverOftenItIsWritten()
    {
        var text = RecipeText.Write(Read(Bread("strong white flour: 437 g|wholemeal rye flour: 13.7 %|water: 66.6 %")));
        Assert.Equal(text, RecipeText.Write(Read(text)));
    }

    /// <summary>Somebody rounded the rye: it is weighed now, and what hung on the flour weighs what it did.</summary>
    [Fact]
    public void MassThatNoLongerFollows_IsWrittenAsAWeight()
    {
        var recipe = Read(Bread("strong white flour: 400 g|wholemeal rye flour: 20 %|butter: 12.5 %"));
        var part = recipe.Components[0];
        var rounded = recipe with
        {
            Components = [part with { Lines = [.. part.Lines.Select(line => line.Id == "wholemeal-rye-flour" ? line with { Mass = Mass.FromGrams(99) } : line)] }],
        };
        var again = Read(RecipeText.Write(rounded));
        Assert.Equal([400, 99, 62.5], again.Components[0].Lines.Select(line => line.Mass!.Value.Grams));
        Assert.All(again.Components[0].Lines, line => Assert.Null(line.Share));
    }

    /// <summary>One slip is told once.</summary>
    [Fact]
    public void FlourThatIsNotUnderstood_IsTheOnlyFault() =>
        Assert.Equal("unit-missing", Assert.Single(RecipeText.Read(Bread("strong white flour: 400|water: 65 %|salt: 2 %")).Findings).Kind);

    [Theory]
    [InlineData("water: 100 g|salt: 2 %")]
    [InlineData("strong white flour: 100 %|water: 60 g")]
    [InlineData("strong white flour: 400 g|wholemeal rye flour: 100 %")]
    public void PercentageOfNothing_IsTold(string lines)
    {
        var finding = Assert.Single(RecipeText.Read(Bread(lines)).Findings, finding => finding.Kind == "percent-without-base");
        Assert.True(finding.NotUnderstood);
    }
}
