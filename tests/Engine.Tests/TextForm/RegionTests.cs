using Doughwright.Engine.Formulas;
using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Where a recipe was written decides what its words mean.</summary>
public class RegionTests
{
    private static string Text(string? region, string lines) =>
        $"doughwright: 1\ntitle: Small\n{(region is null ? "" : $"region: {region}\n")}home:\n  air: 21 C\nparts:\n  dough:\n    strong white flour: 500 g\n    {lines}\n";

    private static Line LineOf(string region, string line)
    {
        var reading = RecipeText.Read(Text(region, line));
        Assert.Empty(reading.Findings);
        return reading.Recipe!.Components[0].Lines[1];
    }

    /// <summary>
    /// Sugar: 200 g in a US cup of 236.588 ml (USDA SR28, file WEIGHT), so 211.34 g in the metric one of 250 ml. Egg of US grade large 50 g (the same).
    /// Salt: 18 g a tablespoon of 14.787 ml there, so 24.35 g in 20 ml.
    /// </summary>
    [Theory]
    [InlineData("US", "sugar: 1 cup", 200)]
    [InlineData("AU", "sugar: 1 cup", 211.34)]
    [InlineData("US", "egg: 2 large", 100)]
    [InlineData("US", "salt: 1 tbsp", 18)]
    [InlineData("GB", "salt: 1 tbsp", 18)]
    [InlineData("AU", "salt: 1 tbsp", 24.35)]
    [InlineData("AU", "sugar: 1 US cup", 200)]
    public void Measure_IsThatOfTheRegion(string region, string line, double grams)
    {
        Assert.Equal(grams, LineOf(region, line).Mass!.Value.Grams, 0.01);
        Assert.Contains($"    {line}\n", RecipeText.Write(RecipeText.Read(Text(region, line)).Recipe!), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("GB", "cornstarch")]
    [InlineData("US", "corn-flour-whole")]
    public void Name_IsThatOfTheRegion(string region, string id)
    {
        var formula = Formula.Balance(RecipeText.Read(Text(region, "cornflour: 30 g")).Recipe!, Larder.Shipped);
        Assert.Equal(id, formula.Components[0].Lines[1].Ingredient!.Id);
        Assert.DoesNotContain(formula.Findings, finding => finding.Kind == "ingredient-not-clear");
    }

    [Fact]
    public void WithoutARegion_TheWayOutOffersThoseThatDecide_AndCarryingItOutDoes()
    {
        var text = Text(null, "sugar: 1 cup");
        var reading = RecipeText.Read(text);
        var finding = Assert.Single(reading.Findings);
        Assert.Equal("AU, US", string.Join(", ", ((string)finding.Arguments["regions"]).Split(", ").Order(StringComparer.Ordinal)));
        var remedies = Engine.Remedies.Remedies.For(finding, reading.Recipe);
        Assert.All(remedies.Where(remedy => remedy.Verb == "write-region"), remedy => Assert.Empty(RecipeText.Read(remedy.CarryOut(text)).Findings));
        Assert.Contains(remedies, remedy => remedy.CarryOut(text) == Text("US", "sugar: 1 cup"));
    }

    [Fact]
    public void NameThatIsNotClear_OffersTheRegionsThatDecide()
    {
        var text = Text(null, "cornflour: 30 g");
        var recipe = RecipeText.Read(text).Recipe!;
        var finding = Assert.Single(Formula.Balance(recipe, Larder.Shipped).Findings, one => one.Kind == "ingredient-not-clear");
        Assert.Contains(Engine.Remedies.Remedies.For(finding, recipe), remedy => remedy.CarryOut(text) == Text("GB", "cornflour: 30 g"));
    }

    [Theory]
    [InlineData("UK", "GB")]
    [InlineData("Germany", "DE")]
    public void UnknownRegion_IsTold_WithWhatWasMeant(string written, string meant)
    {
        var finding = Assert.Single(RecipeText.Read(Text(written, "sugar: 10 g")).Findings);
        Assert.Equal(("unknown-word", meant), (finding.Kind, (string)finding.Arguments["nearest"]));
    }

    [Fact]
    public void ResizedAndSwappedRecipes_KeepTheirRegion()
    {
        var recipe = RecipeText.Read(Text("US", "sugar: 1 cup\n    butter: 1 stick\n    water: 300 g\n    salt: 9 g")).Recipe!;
        var larger = Resizer.Resize(recipe, Larder.Shipped, new(new ResizeWish.Dough(Engine.Quantities.Mass.FromGrams(2000))));
        Assert.Contains("region: US\n", RecipeText.Write(larger.Recipe!), StringComparison.Ordinal);
        var swapped = Swapping.Swap(recipe, [new("butter", "margarine", null)], Larder.Shipped);
        Assert.True(swapped.Recipe is null || swapped.Recipe.Region == Region.UnitedStates);
    }

    /// <summary>Total carbohydrate of a US label holds the fibre (21 CFR 101.9(c)(6)), that of a European one does not (Regulation 1169/2011, annex I).</summary>
    [Theory]
    [InlineData("region: US\n", "carbohydrate", 10)]
    [InlineData("region: US\n", "carbohydrate without fibre", 14)]
    [InlineData("region: DE\n", "carbohydrate", 14)]
    [InlineData("region: DE\n", "total carbohydrate", 10)]
    [InlineData("", "carbohydrate", 14)]
    public void CarbohydrateOfALabel_IsThatOfTheRegion(string region, string key, double all)
    {
        var text = $"doughwright: 1\ntitle: Small\n{region}home:\n  air: 21 C\nown:\n  harbour bran:\n    counts as: starchy\n    {key}: 10 g\n    fibre: 4 g\nparts:\n  dough:\n    harbour bran: 50 g\n";
        var reading = RecipeText.Read(text);
        Assert.Empty(reading.Findings);
        Assert.Equal(all, reading.Recipe!.Own[0].Ingredient.Composition.Carbohydrate);
        var written = RecipeText.Write(reading.Recipe!);
        Assert.Equal(all, RecipeText.Read(written).Recipe!.Own[0].Ingredient.Composition.Carbohydrate);
    }

    [Fact]
    public void LarderOfARegion_IsAnotherVersion_AndLeadsBack()
    {
        var there = Larder.Shipped.In(Region.France);
        Assert.NotEqual(Larder.Shipped.Version, there.Version);
        Assert.Same(Larder.Shipped, there.In(null));
        Assert.Same(there, there.In(Region.France));
        Assert.Equal(there.In(Region.Italy).Version, Larder.Shipped.In(Region.Italy).Version);
    }
}
