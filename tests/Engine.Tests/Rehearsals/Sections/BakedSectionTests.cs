using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Engine.Tests.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals.Sections;

/// <summary>Bakes of the demo recipes over sections through their pieces.</summary>
public class BakedSectionTests
{
    public static TheoryData<string> Demos => [.. Texts.All("demo/recipes").Select(path => Path.GetFileNameWithoutExtension(path))];

    [Theory]
    [MemberData(nameof(Demos))]
    public void AtHome_ABakeTakesTheAuthorsMinutes_ToTheAuthorsCore(string demo)
    {
        var recipe = Of(demo);
        var home = Rehearser.Rehearse(recipe, Larder.Shipped);
        foreach (var bake in home.Steps.Where(step => step.Kind == StepKind.Bake))
        {
            var section = In(recipe, null, bake.Id);
            Assert.NotNull(section);
            // A core that the author measured is met; one that nobody did is done by then, and nobody knows by how much more.
            var (core, told) = (section.Course[^1].Core.Celsius, bake.Bake!()!);
            Assert.True(told.CoreAfter < bake.Time!.Value.Likely - Duration.FromMinutes(0.1) ? core > told.DoneCore.Celsius : Math.Abs(core - bake.EndTemperature!.Value.Celsius) < 1e-6, $"{core}");
            if (recipe.FindStep(bake.Id)!.Measured?.Time is { } minutes)
            {
                Assert.Equal(minutes.Minutes, section.Minutes.Minutes, 1e-6);
            }

            Holds(section);
        }
    }

    /// <summary>
    /// A loaf that was laid into its tin for the proof bakes in it over its section as along its radius: it lies, and with one oven for both the two are
    /// within a sixth of each other.
    /// </summary>
    [Fact]
    public void WhatWasProofedInATin_BakesInItOverItsSectionToo()
    {
        var recipe = Of("tin-loaf");
        var (section, radius) = (In(recipe, null, "bake")!, Rehearser.Rehearse(recipe, Larder.Shipped).FindStep("bake")!.Time!.Value.Likely);
        Assert.True(section.Lies);
        Assert.InRange(section.Minutes / radius, 1, 1.17);
    }

    /// <summary>Above, water boils cooler, and crumb with it. No surface that is dry is held up by that.</summary>
    [Fact]
    public void OnAMountain_ThePieceIsHeldUpLower()
    {
        var recipe = Of("potato-rolls");
        var (home, mountain) = (In(recipe, null, "bake")!, In(recipe, recipe.Home with { Altitude = Length.FromMetres(2500) }, "bake")!);
        Assert.True((home.Course[^1].Core - mountain.Course[^1].Core).Kelvins > 5);
        Holds(mountain);
    }

    [Fact]
    public void WhatIsNoBake_HasNoSection() => Assert.Null(In(Of("potato-rolls"), null, "bulk"));

    /// <summary>Dough that is as hot as it is to be when it goes in, and an oven that is cooler than the core that is asked for.</summary>
    [Theory]
    [InlineData("170 C fan", "60 C fan")]
    [InlineData("170 C fan", "300 C fan")]
    public void AnOvenThatCannotDoIt_GivesNone_AndOneThatCan_Holds(string was, string oven)
    {
        var text = Texts.PotatoRolls;
        Assert.Contains(was, text, StringComparison.Ordinal);
        if (In(Taken.Recipe(text.Replace(was, oven, StringComparison.Ordinal)), null, "bake") is { } section)
        {
            Holds(section);
            Assert.NotEqual("60 C fan", oven);
        }
    }

    [Fact]
    public void Stopped_ItStops()
    {
        var recipe = Of("hearth-loaf");
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Rehearser.BakesAtHome(Formula.Balance(recipe, Larder.Shipped), stop.Token));
    }

    /// <summary>Every figure is one, time goes on, nothing comes back that is lost, and the last slice is that of the end.</summary>
    private static void Holds(BakedSection section)
    {
        Assert.True(section.Heat is > 0.1 and < 9);
        Assert.All(section.Course, moment => Assert.All(
            (double[])[moment.Core.Celsius, moment.Top.Celsius, moment.Side.Celsius, moment.Bottom.Celsius, moment.Lost.Value], figure => Assert.True(double.IsFinite(figure))));
        Assert.All(section.Course.Zip(section.Course.Skip(1)), pair =>
        {
            Assert.True(pair.First.After < pair.Second.After);
            Assert.True(pair.Second.Lost.Value > pair.First.Lost.Value - 0.05);
        });
        Assert.Equal(4, section.Slices.Count);
        Assert.Equal(section.Minutes.Minutes, section.Slices[^1].After.Minutes, 1e-9);
        Assert.All(section.Slices, slice => Assert.Equal((slice.Edges.Count - 1) * (slice.Levels.Count - 1), slice.Cells.Count));
    }

    private static Recipe Of(string demo) => Taken.Recipe(Texts.Read($"demo/recipes/{demo}.yaml"));

    private static BakedSection? In(Recipe recipe, Kitchen? kitchen, string step) => Over(recipe, kitchen).Find(step);

    private static BakesOverSections Over(Recipe recipe, Kitchen? kitchen)
    {
        var home = Rehearser.BakesAtHome(Formula.Balance(recipe, Larder.Shipped), TestContext.Current.CancellationToken);
        return Rehearser.OverSections(home, Larder.Shipped, new() { Kitchen = kitchen }, TestContext.Current.CancellationToken);
    }
}
