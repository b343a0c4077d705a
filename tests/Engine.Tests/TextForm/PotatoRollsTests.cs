using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>The potato rolls mean what their author wrote.</summary>
public class PotatoRollsTests
{
    private static readonly Reading Reading = RecipeText.Read(Texts.PotatoRolls);

    private static Recipe Recipe => Reading.Recipe!;

    [Fact]
    public void PotatoRolls_AreSound() => Assert.Empty(Reading.Findings);

    [Fact]
    public void PotatoRolls_AreCanonical() => Assert.Equal(Texts.PotatoRolls, RecipeText.Write(Recipe));

    [Fact]
    public void Make_IsTenRollsOf80Grams() => Assert.Equal(new Make(10, "rolls", Mass.FromGrams(80)), Recipe.Make);

    [Fact]
    public void Home_IsTheKitchenTheTextSays()
    {
        Assert.Equal("Ropewalk, winter term", Recipe.Home.Name);
        Assert.Equal(21, Recipe.Home.Shelf.Celsius);
        Assert.Equal(5, Recipe.Home.Altitude.Metres);
        Assert.Equal(12, Recipe.Home.Tap.Celsius);
        Assert.Equal(OvenMode.Fan, Recipe.Home.Oven);
    }

    [Fact]
    public void Lines_AddUpTo801Grams()
    {
        var scald = Recipe.FindComponent("scald")!.Lines.Sum(line => line.Mass!.Value.Grams);
        var potato = Recipe.FindComponent("potato")!.Lines.Sum(line => line.Mass!.Value.Grams);
        var rest = Recipe.FindComponent("dough")!.Lines.Where(line => line.Uses is null).Sum(line => line.Mass!.Value.Grams);
        Assert.Equal(801, scald + potato + rest);
    }

    [Fact]
    public void LineNamedLikeItsOwnPart_IsAnIngredient()
    {
        var line = Assert.Single(Recipe.FindComponent("potato")!.Lines);
        Assert.Null(line.Uses);
        Assert.Equal(["boiled", "peeled", "mashed"], line.Conditions);
        Assert.Equal("160 g", line.Typed);
    }

    [Fact]
    public void LineNamedLikeAnotherPart_UsesAllOfIt()
    {
        var line = Recipe.FindComponent("dough")!.Lines.Single(line => line.Id == "scald");
        Assert.Equal("scald", line.Uses);
        Assert.Null(line.Mass);
    }

    [Fact]
    public void Boiling_IsAWarmthAndNoCondition()
    {
        var water = Recipe.FindComponent("scald")!.Lines[1];
        Assert.Equal(WarmthKind.Boiling, water.Warmth.Kind);
        Assert.Empty(water.Conditions);
    }

    [Fact]
    public void Kinds_ComeFromTheIdOrAreSaid() => Assert.Equal(
        [
            StepKind.Prepare, StepKind.Cook, StepKind.Cool, StepKind.Scald, StepKind.Mix, StepKind.Bulk, StepKind.Shape, StepKind.Proof,
            StepKind.Glaze, StepKind.Bake, StepKind.Cool,
        ],
        Recipe.Steps.Select(step => step.Kind));

    [Fact]
    public void Mash_CoolsOnATray()
    {
        var mash = Recipe.FindStep("mash")!;
        Assert.Equal(new Vessel(VesselShape.Tray, VesselMaterial.Steel, Mass.FromGrams(300), false), mash.Vessel);
        Assert.Equal(0.01, mash.Depth!.Value.Metres);
        Assert.Equal(Cover.Covered, mash.Cover);
        Assert.Equal(new StepEnd.AtTemperature(Temperature.FromCelsius(28)), mash.End);
        Assert.Equal(new Measured(Duration.FromMinutes(95), null, "9 November", 1), mash.Measured);
    }

    [Theory]
    [InlineData("measured: 26 C and 12 min")]
    [InlineData("measured: 26 C, 12 min on 9 November")]
    [InlineData("measured: 12 min, 26 C, seen 2 times")]
    public void Measured_TakesTimeAndTemperatureInAnyOrder(string measured)
    {
        var mix = RecipeText.Read(Texts.PotatoRollsWith("measured: 26 C on 9 November", measured)).Recipe!.FindStep("mix")!;
        Assert.Equal((26, 12), (mix.Measured!.Temperature!.Value.Celsius, mix.Measured.Time!.Value.Minutes));
    }

    [Fact]
    public void Mix_SaysWayOrderAndWhatWasMeasured()
    {
        var mix = Recipe.FindStep("mix")!;
        Assert.Equal(MixingWay.ByHand, mix.Way);
        Assert.Equal(["scald", "potato", "egg", "sugar", "instant-yeast", "salt", "butter", "strong-white-flour"], mix.Order);
        Assert.Equal(26, mix.Measured!.Temperature!.Value.Celsius);
    }

    [Fact]
    public void Bulk_DoublesWithOneFold()
    {
        var bulk = Recipe.FindStep("bulk")!;
        Assert.Equal(new StepEnd.AtGrowth(2), bulk.End);
        Assert.Equal([new Fold(Duration.FromMinutes(45), Duration.FromMinutes(2))], bulk.Folds);
        Assert.Contains("[bulk time]", bulk.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Bake_KeepsTheDialAsSet() =>
        Assert.Equal(new OvenSetting(Temperature.FromCelsius(170), OvenMode.Fan), Recipe.FindStep("bake")!.Oven);

    [Theory]
    [InlineData("no-bowl")]
    [InlineData("weighed-puree")]
    [InlineData("machine")]
    [InlineData("core-above-boiling")]
    public void Variant_IsSoundAndCanonical(string variant)
    {
        var text = Texts.Read($"tests/data/texts/potato-rolls-{variant}.yaml");
        var reading = RecipeText.Read(text);
        Assert.Empty(reading.Findings);
        Assert.Equal(text, RecipeText.Write(reading.Recipe!));
    }

    [Fact]
    public void Variants_SayWhatTheyAreFor()
    {
        Recipe Variant(string name) => RecipeText.Read(Texts.Read($"tests/data/texts/potato-rolls-{name}.yaml")).Recipe!;
        Assert.Null(Variant("no-bowl").FindStep("scald")!.Vessel);
        var weighed = new Weighed(Mass.FromGrams(200), Mass.FromGrams(170));
        Assert.Equal(weighed, Variant("weighed-puree").FindComponent("potato")!.Lines[0].Weighed);
        Assert.Equal(MixingWay.Machine, Variant("machine").FindStep("mix")!.Way);
        Assert.Equal(new StepEnd.AtCore(Temperature.FromCelsius(97)), Variant("core-above-boiling").FindStep("bake")!.End);
        Assert.Equal(1200, Variant("core-above-boiling").Home.Altitude.Metres);
    }

    [Theory]
    [InlineData("winter-cottage", 17, 1200, 9, OvenMode.Static)]
    [InlineData("summer", 30, 5, 20, OvenMode.Fan)]
    [InlineData("mountain", 21, 1200, 12, OvenMode.Fan)]
    [InlineData("classroom", 21, 5, 12, OvenMode.Fan)]
    public void DemoKitchen_IsSoundAndCanonical(string name, double air, double altitude, double tap, OvenMode oven)
    {
        var text = Texts.Read($"demo/kitchens/{name}.yaml");
        var reading = KitchenText.Read(text);
        Assert.Empty(reading.Findings);
        Assert.Equal(
            (air, altitude, tap, oven),
            (reading.Kitchen!.Shelf.Celsius, reading.Kitchen.Altitude.Metres, reading.Kitchen.Tap.Celsius, reading.Kitchen.Oven));
        Assert.Equal(text, KitchenText.Write(reading.Kitchen));
    }

    [Fact]
    public void Classroom_IsTheHomeOfThePotatoRolls() =>
        Assert.Equal(RecipePicture.Of(Recipe.Home), RecipePicture.Of(KitchenText.Read(Texts.Read("demo/kitchens/classroom.yaml")).Kitchen));
}
