using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.Corpus;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>A draw in which the author's own rise cannot be is no quick one: it opens the range, and never begins it at nothing.</summary>
public class OpenRiseTests
{
    private const string Doubles = "    ends: at 2 times its volume";

    public static TheoryData<string> Recipes => [.. Texts.Sound.Where(path => path.StartsWith("demo/recipes/", StringComparison.Ordinal))];

    public static TheoryData<string> Sound => [.. SoundAndFaulty.Sound.Keys];

    private static Request InAir(Recipe recipe, double celsius) =>
        new() { Kitchen = recipe.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(celsius)) } };

    private static IEnumerable<Request> Requests(Recipe recipe) => Texts.Kitchens
        .Select(path => new Request { Kitchen = KitchenText.Read(Texts.Read(path)).Kitchen! })
        .Concat(new[] { 17.0, 20, 26 }.Select(celsius => InAir(recipe, celsius)));

    private static Recipe RecipeIn(string text) => RecipeText.Read(text).Recipe!;

    private static void NeverBeginsAtNothing(Recipe recipe) => Assert.All(Requests(recipe), request =>
        Assert.All(
            Rehearser.Rehearse(recipe, Larder.Shipped, request).Steps.Where(step => step.Kind is StepKind.Bulk or StepKind.Proof && step.Time is { Likely.Minutes: > 5 }),
            step => Assert.True(step.Time!.Value.Low.Minutes > 0.5, $"{step.Id}: {step.Time.Value.Likely.Minutes} min, low {step.Time.Value.Low.Minutes}")));

    [Theory]
    [MemberData(nameof(Recipes))]
    public void DemoRise_ThatTakesTime_NeverBeginsAtNothing(string path) => NeverBeginsAtNothing(RecipeIn(Texts.Read(path)));

    [Theory]
    [MemberData(nameof(Sound))]
    public void SoundRise_ThatTakesTime_NeverBeginsAtNothing(string name) => NeverBeginsAtNothing(RecipeIn(SoundAndFaulty.Sound[name]));

    /// <summary>The highest growth of a strong dough is 4 to within a fifth: one draw in five says that 3.4 cannot be.</summary>
    [Fact]
    public void RiseNearTheHighest_IsToldAndOpensTheRange()
    {
        var recipe = RecipeIn(Texts.PotatoRollsWith(Doubles, "    ends: at 3.4 times its volume"));
        var rehearsal = Rehearser.Rehearse(recipe, Larder.Shipped, InAir(recipe, 24));
        Assert.Contains(rehearsal.Findings, finding => finding is { Kind: "rise-not-as-seen", Grade: Grade.Hint, Place: "steps.bulk" });
        Assert.All(["bulk", "proof"], id =>
        {
            var time = rehearsal.FindStep(id)!.Time!.Value;
            Assert.Null(time.High);
            Assert.InRange(time.Low.Minutes, time.Likely.Minutes / 3, time.Likely.Minutes);
        });
        NeverBeginsAtNothing(recipe);
    }

    [Fact]
    public void RiseFarFromTheHighest_HasAnEnd()
    {
        var recipe = RecipeIn(Texts.PotatoRolls);
        var rehearsal = Rehearser.Rehearse(recipe, Larder.Shipped, InAir(recipe, 24));
        Assert.DoesNotContain(rehearsal.Findings, finding => finding.Kind == "rise-not-as-seen");
        Assert.NotNull(rehearsal.FindStep("bulk")!.Time!.Value.High);
    }

    /// <summary>As the step would take when it were written so in the first place.</summary>
    [Theory]
    [InlineData("16 h")]
    [InlineData("10 h")]
    public void VariantThatStatesItsTime_TakesItAtHome(string time)
    {
        const string Cue = "    cue: at the tape on the bowl";
        var recipe = RecipeIn(Texts.PotatoRollsWith(Cue, $"{Cue}\n    variants:\n      cold:\n        where: fridge\n        fold: none\n        ends: after {time}"));
        var variant = recipe.FindStep("bulk")!.FindVariant("cold")!;
        var stated = ((StepEnd.AfterTime)variant.Step.End!).Time;
        var rehearsal = Rehearser.Rehearse(recipe, Larder.Shipped, new() { Variants = new Dictionary<string, string> { ["bulk"] = "cold" } });
        var bulk = rehearsal.FindStep("bulk")!;
        Assert.Equal(stated.Minutes, bulk.Time!.Value.Likely.Minutes, 1e-3);
        Assert.True(bulk.Time.Value.Low.Minutes > stated.Minutes / 2);
    }
}
