using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>What holds for every recipe and every kitchen that comes with the program.</summary>
public class DemoLawTests
{
    public static TheoryData<string> Recipes => [.. Demo("demo/recipes/")];

    public static TheoryData<string, string> InKitchens => [.. Demo("demo/recipes/").SelectMany(recipe => Texts.Kitchens, (recipe, kitchen) => (recipe, kitchen))];

    private static IEnumerable<string> Demo(string folder) => Texts.Recipes.Where(path => path.StartsWith(folder, StringComparison.Ordinal));

    private static Recipe Read(string path) => RecipeText.Read(Texts.Read(path)).Recipe!;

    private static Kitchen KitchenOf(string path) => KitchenText.Read(Texts.Read(path)).Kitchen!;

    [Fact]
    public void EveryRecipe_IsRehearsedInFourKitchens()
    {
        Assert.InRange(Recipes.Count, 6, 100);
        Assert.Equal(4 * Recipes.Count, InKitchens.Count);
    }

    /// <summary>Exactly what the author measured: minutes, temperatures, folds; and the oven is set as it was set.</summary>
    [Theory]
    [MemberData(nameof(Recipes))]
    public void Home_IsHome(string path)
    {
        var recipe = Read(path);
        var home = Rehearser.Rehearse(recipe, Larder.Shipped);
        Assert.True(home.AtHome);
        foreach (var step in recipe.Steps)
        {
            var rehearsed = home.FindStep(step.Id)!;
            if (step.Measured?.Time is { } minutes)
            {
                Assert.Equal(minutes.Minutes, rehearsed.Time!.Value.Likely.Minutes, 1e-9);
                Assert.Equal(Basis.Measured, rehearsed.Basis);
            }

            if (step.Measured?.Temperature is { } measured)
            {
                Assert.Equal(measured.Celsius, rehearsed.EndTemperature!.Value.Celsius, 1e-9);
            }

            Assert.Equal(step.Folds.Select(fold => fold.After.Minutes), rehearsed.Events.Select(fold => Math.Round(fold.After.Likely.Minutes, 6)));
            if (step.Oven is { Mode: { } mode } oven)
            {
                Assert.Equal((mode, oven.Dial.Celsius), (rehearsed.Dial!.Here.Mode, rehearsed.Dial.Here.Celsius));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Recipes))]
    public void Classroom_IsHome(string path) =>
        Assert.True(Rehearser.Rehearse(Read(path), Larder.Shipped, new() { Kitchen = KitchenOf("demo/kitchens/classroom.yaml") }).AtHome);

    /// <summary>A kitchen that is the same in all that matters goes the other way through the models and comes to the same.</summary>
    [Theory]
    [MemberData(nameof(Recipes))]
    public void HomeByAnotherWay_GivesTheSame(string path)
    {
        var recipe = Read(path);
        var home = Rehearser.Rehearse(recipe, Larder.Shipped);
        var again = Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = recipe.Home with { Trays = recipe.Home.Trays + 1 } });
        Assert.False(again.AtHome);
        foreach (var (here, there) in home.Steps.Zip(again.Steps))
        {
            Assert.Equal(here.Time?.Likely.Minutes ?? -1, there.Time?.Likely.Minutes ?? -1, 1e-3);
            Assert.Equal(here.EndTemperature?.Celsius ?? -99, there.EndTemperature?.Celsius ?? -99, 1e-3);
        }
    }

    /// <summary>Every step that can end has a time with a range around it, and says what of it is known.</summary>
    [Theory]
    [MemberData(nameof(InKitchens))]
    public void EveryFigure_StandsInsideItsRange(string path, string kitchen)
    {
        var rehearsal = Rehearser.Rehearse(Read(path), Larder.Shipped, new() { Kitchen = KitchenOf(kitchen) });
        Assert.DoesNotContain("NaN", Picture.Of(rehearsal), StringComparison.Ordinal);
        Assert.DoesNotContain(rehearsal.Findings, finding => finding.Grade == Grade.Error);
        Assert.All(rehearsal.Steps.Where(step => step.SettlesAt is null), step =>
        {
            Assert.True(step.Time!.Value.Low <= step.Time.Value.Likely);
            Assert.True(step.Time.Value.High is not { } high || step.Time.Value.Likely <= high);
        });
        Assert.All(
            rehearsal.Steps.Where(step => step is { Kind: StepKind.Bulk or StepKind.Proof or StepKind.Bake, SettlesAt: null }),
            step => Assert.True(step.Time!.Value.Low < step.Time.Value.Likely, step.Id));
    }
}
