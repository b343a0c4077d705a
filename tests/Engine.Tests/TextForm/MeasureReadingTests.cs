using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Household measures become grams when a text is read, and stand in it as they were typed when it is written.</summary>
public class MeasureReadingTests
{
    private static Reading Read(string line) => RecipeText.Read($"doughwright: 1\ntitle: Small\nhome:\n  air: 21 C\nparts:\n  dough:\n    strong white flour: 500 g\n    {line}\n");

    private static Line LineOf(Reading reading) => reading.Recipe!.Components[0].Lines[1];

    /// <summary>Weights of USDA SR28, file WEIGHT: granulated sugar 200 g a cup, butter 227 g, an egg of grade large 50 g; a tablespoon is 1/16 of a cup.</summary>
    [Theory]
    [InlineData("sugar: 1 US cup", 200)]
    [InlineData("sugar: 1.5 US cups", 300)]
    [InlineData("sugar: 1 1/2 US cups", 300)]
    [InlineData("sugar: 1½ US cups", 300)]
    [InlineData("sugar: 1/4 US cup", 50)]
    [InlineData("sugar: ¼ US cup", 50)]
    [InlineData("butter: 1/2 US cup, soft", 113.5)]
    [InlineData("butter: 0.5 US cup, soft", 113.5)]
    [InlineData("egg: 1 US large", 50)]
    [InlineData("egg: 2 US large, from the fridge", 100)]
    [InlineData("butter: 4 oz", 113.398)]
    public void Measure_IsWeighedByTheLarder(string line, double grams)
    {
        var reading = Read(line);
        Assert.Empty(reading.Findings);
        Assert.Equal(grams, LineOf(reading).Mass!.Value.Grams, 0.01);
        Assert.Contains($"    {line}\n", RecipeText.Write(reading.Recipe!), StringComparison.Ordinal);
    }

    [Fact]
    public void MeasureThatIsNotKnown_StaysInTheText_AndIsToldOnce()
    {
        var reading = Read("sugar: 1 sachet");
        Assert.Equal("measure-not-held", Assert.Single(reading.Findings).Kind);
        Assert.True(reading.Understood);
        Assert.Null(LineOf(reading).Mass);
        Assert.Contains("    sugar: 1 sachet\n", RecipeText.Write(reading.Recipe!), StringComparison.Ordinal);
        Assert.DoesNotContain(Formula.Balance(reading.Recipe!, Larder.Shipped).Findings, finding => finding.Kind == "mass-not-said");
    }

    [Fact]
    public void UnclearCup_NamesTheCupsItCanBe() =>
        Assert.Contains("metric cup", (string)Assert.Single(Read("sugar: 1 cup").Findings).Arguments["known"], StringComparison.Ordinal);

    [Fact]
    public void MassThatWasChanged_IsWrittenAsAWeight()
    {
        var recipe = Read("sugar: 1 US cup").Recipe!;
        var part = recipe.Components[0];
        var changed = recipe with { Components = [part with { Lines = [part.Lines[0], part.Lines[1] with { Mass = Engine.Quantities.Mass.FromGrams(90) }] }] };
        Assert.Contains("    sugar: 90 g\n", RecipeText.Write(changed), StringComparison.Ordinal);
    }

    private const string Own = """
        doughwright: 1
        title: Small
        home:
          air: 21 C
        own:
          harbour drink:
            counts as: liquid
            fat: 1.5 g
            carbohydrate: 6.6 g
            of which sugars: 4.1 g
            fibre: 0.8 g
            protein: 1 g
            salt: 0.1 g
            allergens: oat gluten
          cottage spread:
            counts as: fat
            fat: 60 g
        parts:
          dough:
            strong white flour: 500 g
            harbour drink: 300 g
            cottage spread: 50 g
        """;

    /// <summary>Water is what is left of 100 g: 100 - 1.5 - 6.6 - 0.8 - 1 - 0.1 = 90 g (Regulation 1169/2011: carbohydrate without fibre).</summary>
    [Fact]
    public void OwnIngredient_IsInTheLarderOfItsRecipe_AndWhatItsLabelDoesNotSayIsUnknown()
    {
        var reading = RecipeText.Read(Own);
        Assert.Empty(reading.Findings);
        var formula = Formula.Balance(reading.Recipe!, Larder.Shipped);
        var lines = formula.Components[0].Lines;
        Assert.Equal(Role.Liquid, lines[1].Role);
        Assert.Equal(270, lines[1].Water!.Value.Grams, 1e-9);
        Assert.Equal(Role.Fat, lines[2].Role);
        Assert.Null(lines[2].Water);
        Assert.Equal(30 + 4.5 + 500 * Larder.Shipped.Find("strong white flour", []).Ingredient!.Composition.Fat!.Value / 100, formula.Fat.Total!.Value.Grams, 1e-6);
        Assert.DoesNotContain(formula.Findings, finding => finding.Kind.StartsWith("ingredient-", StringComparison.Ordinal));
    }

    [Fact]
    public void LarderOfARecipe_IsTheSameWhicheverOfTheTwoItIsAskedOf()
    {
        var recipe = RecipeText.Read(Own).Recipe!;
        var larder = recipe.LarderOver(Larder.Shipped);
        Assert.NotEqual(Larder.Shipped.Version, larder.Version);
        Assert.Same(larder, recipe.LarderOver(larder));
    }

    [Fact]
    public void ImpossibleLabel_LeavesItsIngredientUnknown()
    {
        var reading = RecipeText.Read(Own.Replace("fat: 60 g", "fat: 160 g"));
        Assert.Equal("label-above-hundred", Assert.Single(reading.Findings).Kind);
        Assert.Null(Formula.Balance(reading.Recipe!, Larder.Shipped).Fat.Total);
        Assert.Contains("fat: 160 g", RecipeText.Write(reading.Recipe!), StringComparison.Ordinal);
    }
}
