using CsCheck;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>In the author's own kitchen every recipe gives what the author measured.</summary>
public class HomeLawTests
{
    private const int Bakes = 60;

    private static Rehearsal At(Bake bake, Request? request = null) => Rehearser.Rehearse(bake.Recipe, Larder.Shipped, request);

    [Fact]
    public void Home_IsHome() => Bake.Any.Sample(bake =>
    {
        var recipe = bake.Recipe;
        var home = Rehearser.Rehearse(recipe, Larder.Shipped);
        Assert.True(home.AtHome);
        foreach (var step in recipe.Steps)
        {
            var rehearsed = home.FindStep(step.Id)!;
            if (StatedTime.Of(step) is { } minutes)
            {
                Assert.Equal(minutes, rehearsed.Time!.Value.Likely.Minutes, 1e-6);
            }

            if (step is { Kind: StepKind.Mix, Measured.Temperature: { } measured })
            {
                Assert.Equal(measured.Celsius, rehearsed.EndTemperature!.Value.Celsius, 1e-6);
            }

            if (step.End is StepEnd.AtTemperature { Temperature: var target })
            {
                Assert.Equal(target.Celsius, rehearsed.EndTemperature!.Value.Celsius, 1e-6);
            }

            Assert.Equal(step.Folds.Select(fold => fold.After.Minutes), rehearsed.Events.Select(fold => Math.Round(fold.After.Likely.Minutes, 6)));
        }

        Assert.Equal(2, home.FindStep("bulk")!.Growth!.Value, 1e-6);
        foreach (var (written, balanced) in recipe.Components.Zip(home.Formula.Components))
        {
            Assert.Equal(
                written.Lines.Where(line => line.Mass is not null).Select(line => line.Mass!.Value.Grams),
                balanced.Lines.Where(line => line.Source.Mass is not null).Select(line => line.Mass.Grams));
        }
    }, iter: Bakes);

    [Fact]
    public void HomeGivenAsAKitchen_IsHome() => Bake.Any.Sample(
        bake => Assert.Equal(Picture.Of(At(bake)), Picture.Of(At(bake, new() { Kitchen = bake.Recipe.Home with { Name = "another name" } }))),
        iter: Bakes / 2);

    /// <summary>A kitchen elsewhere that is the same in all that matters gives the author's minutes again, by the other way through the models.</summary>
    [Fact]
    public void HomeByAnotherWay_GivesTheSameMinutes() => Bake.Any.Sample(bake =>
    {
        var home = At(bake);
        var again = At(bake, new() { Kitchen = bake.Recipe.Home with { Trays = bake.Recipe.Home.Trays + 1 } });
        Assert.False(again.AtHome);
        foreach (var (here, there) in home.Steps.Zip(again.Steps))
        {
            Assert.Equal(here.Time?.Likely.Minutes ?? -1, there.Time?.Likely.Minutes ?? -1, 1e-3);
            Assert.Equal(here.EndTemperature?.Celsius ?? -99, there.EndTemperature?.Celsius ?? -99, 1e-3);
        }
    }, iter: Bakes);

    [Fact]
    public void SameQuestion_SameDigits() => Gen.Select(Bake.Any, Bake.AnyKitchen).Sample(
        (bake, kitchen) => Assert.Equal(Picture.Of(At(bake, new() { Kitchen = kitchen })), Picture.Of(At(bake, new() { Kitchen = kitchen }))),
        iter: Bakes / 3);
}
