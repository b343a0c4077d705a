using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals.Sections;

/// <summary>What a bake takes over its section is what a rehearsal tells, and the author's own minutes stand where the author baked.</summary>
public class SectionMoveTests
{
    public static TheoryData<string, string> Everywhere => new MatrixTheoryData<string, string>(
        Texts.All("demo/recipes").Select(path => Path.GetFileNameWithoutExtension(path)),
        Texts.All("demo/kitchens").Select(path => Path.GetFileNameWithoutExtension(path)));

    [Theory]
    [MemberData(nameof(Everywhere))]
    public void Elsewhere_ABakeTakesAsLongAsItsSection_AndItsRangeAndAllAfterItGoWithIt(string demo, string kitchen)
    {
        var formula = Of(demo);
        var asked = new Request { Kitchen = KitchenOf(kitchen) };
        var over = Over(formula, asked);
        var (once, moved) = (Rehearser.Rehearse(formula, Larder.Shipped, asked), Rehearser.Rehearse(formula, Larder.Shipped, over.Request));
        Assert.NotEmpty(over.All);
        foreach (var section in over.All)
        {
            var (before, after) = (once.FindStep(section.Step)!, moved.FindStep(section.Step)!);
            Assert.Equal(section.Minutes.Minutes, after.Time!.Value.Likely.Minutes, 1e-9);
            if (before.Basis != Basis.Computed)
            {
                Assert.Equal(before.Time, after.Time);
                Assert.Null(after.AlongRadius);
                continue;
            }

            var times = section.Minutes / before.Time!.Value.Likely;
            Assert.Equal(before.Time.Value.Likely, after.AlongRadius);
            Assert.Equal(times * before.Time.Value.Low.Minutes, after.Time.Value.Low.Minutes, 1e-9);
            Assert.Equal(before.Time.Value.High is null, after.Time.Value.High is null);
            Assert.Equal(times * (before.Time.Value.High?.Minutes ?? 0), after.Time.Value.High?.Minutes ?? 0, 1e-9);
            Assert.Equal(["bake-over-section", "bake-along-radius"], after.Why().Parts.Take(2).Select(part => part.Kind));
            Assert.Equal(after.Time.Value.Likely.Minutes, after.Why().Value);
            // What comes after the bake begins when the bake is over.
            var bakes = once.Steps.Select(step => step.Id).ToList().IndexOf(section.Step);
            foreach (var later in once.Steps.Skip(bakes + 1).Where(step => step.Component == before.Component && step.Start is not null && before.Start is not null))
            {
                Assert.Equal((later.Start! - before.Start!).Value.Minutes + (section.Minutes - before.Time.Value.Likely).Minutes, (moved.FindStep(later.Id)!.Start! - after.Start!).Value.Minutes, 0.1);
            }
        }
    }

    [Fact]
    public void AtHome_TheAuthorsMinutesStand_AndABakeThatNobodyTimedTakesAsLongAsItsSection()
    {
        var timed = Of("hearth-loaf");
        var home = Rehearser.Rehearse(timed, Larder.Shipped, Over(timed, Request.Home).Request);
        Assert.True(home.AtHome);
        Assert.False(home.HasComputedBake);
        Assert.Equal(home.Recipe.FindStep("bake")!.Measured!.Time, home.FindStep("bake")!.Time!.Value.Likely);

        var untimed = Of("tin-loaf");
        var over = Over(untimed, Request.Home);
        var (once, moved) = (Rehearser.Rehearse(untimed, Larder.Shipped, Request.Home), Rehearser.Rehearse(untimed, Larder.Shipped, over.Request));
        Assert.True(moved is { AtHome: true, HasComputedBake: true });
        Assert.Equal(over.Find("bake")!.Minutes, moved.FindStep("bake")!.Time!.Value.Likely);
        Assert.Equal(moved.FindStep("bake")!.Time!.Value.Likely, moved.FindStep("bake")!.HomeTime);
        Assert.Equal(
            (moved.FindStep("bake")!.Time!.Value.Likely - once.FindStep("bake")!.Time!.Value.Likely).Minutes, (moved.Total!.Value.Likely - once.Total!.Value.Likely).Minutes, 1e-6);
    }

    /// <summary>What is seen of another kitchen is held against home as home is told there.</summary>
    [Fact]
    public void ElsewhereToo_HomeIsToldOverItsSection()
    {
        var formula = Of("tin-loaf");
        var home = Rehearser.Rehearse(formula, Larder.Shipped, Over(formula, Request.Home).Request);
        var away = Rehearser.Rehearse(formula, Larder.Shipped, Over(formula, new() { Kitchen = KitchenOf("mountain") }).Request);
        Assert.Equal(home.FindStep("bake")!.Time!.Value.Likely, away.FindStep("bake")!.HomeTime);
    }

    [Fact]
    public void TheLikelyAnswer_IsTheSameInAnyNumberOfLanes()
    {
        var formula = Of("hearth-loaf");
        var request = Over(formula, new() { Kitchen = KitchenOf("mountain") }).Request;
        Assert.Equal(
            Rehearser.Rehearse(formula, Larder.Shipped, request, lanes: 1).FindStep("bake")!.Time!.Value.Likely,
            Rehearser.Rehearse(formula, Larder.Shipped, request).FindStep("bake")!.Time!.Value.Likely);
    }

    /// <summary>A bake that is done in another way goes by what the author timed in that way, and by the step as written where nothing was timed.</summary>
    [Fact]
    public void AVariantWithItsOwnMinutes_IsBakedInTheOvenThatTheseAskFor()
    {
        var recipe = Taken.Recipe(Texts.PotatoRolls);
        var bake = recipe.FindStep("bake")!;
        var slow = new StepVariant("slow", bake with { Oven = bake.Oven! with { Dial = Temperature.FromCelsius(150) }, Measured = bake.Measured! with { Time = Duration.FromMinutes(28) } });
        var formula = Formula.Balance(recipe with { Steps = [.. recipe.Steps.Select(step => step.Id == "bake" ? step with { Variants = [slow] } : step)] }, Larder.Shipped);
        var asked = new Request { Kitchen = KitchenOf("mountain") };
        var (written, otherwise) = (Over(formula, asked).Find("bake")!, Over(formula, asked with { Variants = new Dictionary<string, string> { ["bake"] = "slow" } }).Find("bake")!);
        Assert.Equal(28 / 19.0, otherwise.Minutes / written.Minutes, 0.1);
    }

    private static BakesOverSections Over(Formula formula, Request request) =>
        Rehearser.OverSections(Rehearser.BakesAtHome(formula, TestContext.Current.CancellationToken), Larder.Shipped, request, TestContext.Current.CancellationToken);

    private static Formula Of(string demo) => Formula.Balance(Taken.Recipe(Texts.Read($"demo/recipes/{demo}.yaml")), Larder.Shipped);

    private static Kitchen KitchenOf(string name) => KitchenText.Read(Texts.Read($"demo/kitchens/{name}.yaml")).Kitchen!;
}
