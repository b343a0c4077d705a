using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Tests.Formulas;

namespace Doughwright.Engine.Tests.Recipes;

public class RecipeCheckTests
{
    private static string[] Kinds(Recipe recipe) => [.. RecipeChecks.Of(recipe).Select(finding => finding.Kind)];

    private static string[] Ids(Recipe recipe) => [.. RecipeChecks.Of(recipe).Select(finding => finding.Id)];

    private static Duration Minutes(double minutes) => Duration.FromMinutes(minutes);

    [Fact]
    public void SoundRecipe_HasNoFinding() => Assert.Empty(RecipeChecks.Of(PotatoRolls.Sound));

    [Theory]
    [InlineData("bulk")]
    [InlineData("proof")]
    [InlineData("bake")]
    [InlineData("boil")]
    public void Cue_Missing(string step) =>
        Assert.Equal([$"cue-missing@steps.{step}"], Ids(PotatoRolls.WithStep(step, it => it with { Cue = null })));

    [Fact]
    public void Oven_WithoutFanOrStatic()
    {
        var noMode = new OvenSetting(Temperature.FromCelsius(170), null);
        Assert.Equal(["oven-mode-not-said"], Kinds(PotatoRolls.WithStep("bake", it => it with { Oven = noMode })));
        Assert.Equal(["oven-not-said"], Kinds(PotatoRolls.WithStep("bake", it => it with { Oven = null })));
    }

    [Fact]
    public void Scald_WithoutABowl()
    {
        Assert.Contains("bowl-not-said@steps.scald", Ids(PotatoRolls.WithStep("scald", it => it with { Vessel = null })));
        Assert.DoesNotContain("bowl-not-said", Kinds(PotatoRolls.WithStep("scald", it => it with { Vessel = Vessel.None })));
    }

    [Fact]
    public void Steps_None() => Assert.Equal(["no-steps@steps"], Ids(PotatoRolls.Sound with { Steps = [], Tools = null }));

    [Theory]
    [InlineData("bulk")]
    [InlineData("proof")]
    [InlineData("bake")]
    public void Step_BeforeItsMix(string id)
    {
        var steps = PotatoRolls.Sound.Steps;
        var moved = PotatoRolls.Sound with { Steps = [PotatoRolls.Sound.FindStep(id)!, .. steps.Where(step => step.Id != id)] };
        Assert.Equal([$"order-of-steps@steps.{id}"], Ids(moved));
    }

    [Fact]
    public void Step_WithoutAnyMix_HasNoOrder() =>
        Assert.DoesNotContain("order-of-steps", Kinds(PotatoRolls.Sound with { Steps = [.. PotatoRolls.Sound.Steps.Where(step => step.Id != "mix")] }));

    [Theory]
    [InlineData(105, true)]
    [InlineData(120, true)]
    [InlineData(104, false)]
    public void Fold_AfterTheEnd(double minutes, bool speaks)
    {
        Step Folded(Step step) => step with { Folds = [new(Minutes(minutes), Minutes(2))] };
        string[] told = speaks ? ["fold-after-end@steps.bulk"] : [];
        var measured = new Measured(Minutes(105), null, null, 1);
        Assert.Equal(told, Ids(PotatoRolls.WithStep("bulk", it => Folded(it) with { Measured = measured })));
        Assert.Equal(told, Ids(PotatoRolls.WithStep("bulk", it => Folded(it) with { End = new StepEnd.AfterTime(Minutes(105)) })));
        Assert.Empty(Ids(PotatoRolls.WithStep("bulk", Folded)));
    }

    [Theory]
    [InlineData(21, true)]
    [InlineData(20, false)]
    public void Hands_LongerThanTheirStep(double minutes, bool speaks) =>
        Assert.Equal(
            speaks ? ["hands-longer-than-step@steps.boil"] : [],
            Ids(PotatoRolls.WithStep("boil", it => it with { Hands = Minutes(minutes) })));

    [Fact]
    public void Pieces_ThatNothingDivides()
    {
        var undivided = PotatoRolls.Sound with { Steps = [.. PotatoRolls.Sound.Steps.Where(step => step.Id != "shape")] };
        Assert.Equal(["nothing-divides@steps.proof"], Ids(undivided));
        Assert.Empty(Ids(undivided with { Make = new(1, "loaf", Mass.FromGrams(800)) }));
    }

    [Fact]
    public void Piece_NotSaid()
    {
        var unsaid = PotatoRolls.Sound with { Make = null };
        Assert.Equal(["piece-not-said@steps.bake"], Ids(unsaid));
        Assert.DoesNotContain("piece-not-said", Kinds(unsaid with { Steps = [.. unsaid.Steps.Where(step => step.Id != "bake")] }));
    }

    [Theory]
    [InlineData("fork", "mash")]
    [InlineData("knife", "peel")]
    [InlineData("tape", "bulk")]
    [InlineData("brush", "brush")]
    [InlineData("pot", "boil")]
    public void Tool_UsedAndNotListed(string tool, string step)
    {
        var recipe = PotatoRolls.Sound with { Tools = [.. PotatoRolls.Sound.Tools!.Where(listed => listed != tool)] };
        recipe = recipe with { Steps = [.. recipe.Steps.Select(it => tool == "fork" ? it with { Tools = [] } : it)] };
        Assert.Contains($"tool-not-listed@steps.{step}.tools.{tool}", Ids(recipe));
    }

    [Fact]
    public void Tool_SpokenOfInTheWords()
    {
        var rolled = PotatoRolls.WithStep("shape", it => it with { Words = "Roll out to a sheet." });
        Assert.Equal(["tool-not-listed"], Kinds(rolled));
        Assert.Empty(Kinds(rolled with { Tools = [.. rolled.Tools!, "rolling pin"] }));
        Assert.Empty(Kinds(PotatoRolls.WithStep("shape", it => it with { Words = "Put the rolls outside on the tray." })));
    }

    [Fact]
    public void Tool_WithoutAListOfTools_IsNoFinding() => Assert.Empty(Kinds(PotatoRolls.Sound with { Tools = null }));

    [Theory]
    [InlineData("rolling pin", true)]
    [InlineData("glass bowl of 350 g", true)]
    [InlineData("steel bowl of 800 g", true)]
    [InlineData("cloth", false)]
    [InlineData("kitchen scale", false)]
    [InlineData("wooden spoon", false)]
    public void Tool_ListedAndNotUsed(string tool, bool speaks) =>
        Assert.Equal(speaks ? ["tool-not-used"] : [], Kinds(PotatoRolls.Sound with { Tools = [.. PotatoRolls.Sound.Tools!, tool] }));
}
