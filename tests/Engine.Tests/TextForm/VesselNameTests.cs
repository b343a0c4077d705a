using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Vessels that a kitchen has by name, and steps that are done in them.</summary>
public class VesselNameTests
{
    private const string Bowl = "the big bowl: steel bowl, 900 g, 6 l";

    [Fact]
    public void Step_NamesAVesselOfItsHome_HoweverItsLettersAreWritten()
    {
        var mix = Recipe("The big bowl, warmed").FindStep("mix")!.Vessel!;
        Assert.Equal((VesselMaterial.Steel, 900.0, 6.0, true, "the big bowl"), (mix.Material, mix.Mass!.Value.Grams, mix.Size!.Volume!.Value.Litres, mix.Warmed, mix.Name));
        Assert.Contains("vessel: the big bowl, warmed\n", RecipeText.Write(Recipe("The big bowl, warmed")), StringComparison.Ordinal);
    }

    [Fact]
    public void NamedVessel_IsReckonedAsIfItWereDescribed() =>
        Assert.Equal(Minutes(Rehearser.Rehearse(Recipe("steel bowl, 900 g, 6 l"), Larder.Shipped)), Minutes(Rehearser.Rehearse(Recipe("the big bowl"), Larder.Shipped)));

    [Fact]
    public void OtherKitchen_TakesItsOwnOfThatName()
    {
        var heavy = In("Attic", "the big bowl: ceramic bowl, 4000 g");
        var light = In("Attic", "the big bowl: aluminium bowl, 100 g");
        Assert.NotEqual(Mixed(heavy), Mixed(light));
        Assert.Equal(Mixed(In("Attic", "the big bowl: steel bowl, 900 g, 6 l")), Mixed(In("Attic", null)));
    }

    [Fact]
    public void KitchenWithoutIt_IsTold_OnlyWhereItSaysWhatItHas()
    {
        var told = Assert.Single(In("Attic", "small one: glass bowl, 300 g").Findings, finding => finding.Kind == "vessel-not-here");
        Assert.Equal(("steps.mix", "the big bowl", "small one"), (told.Place, told.Arguments["vessel"], told.Arguments["there"]));
        Assert.DoesNotContain(In("Attic", null).Findings, finding => finding.Kind == "vessel-not-here");
        Assert.Equal(Mixed(In("Attic", null)), Mixed(In("Attic", "small one: glass bowl, 300 g")));
    }

    [Fact]
    public void HomeWithMoreVessels_IsStillHome()
    {
        var recipe = Recipe("the big bowl");
        var more = KitchenText.Read(KitchenText.Write(recipe.Home).Replace(Bowl, Bowl + "\n  small one: glass bowl, 300 g", StringComparison.Ordinal)).Kitchen!;
        Assert.Equal(2, more.Vessels.Count);
        Assert.True(Rehearser.Rehearse(recipe, Larder.Shipped, Request.Home with { Kitchen = more }).AtHome);
    }

    [Theory]
    [InlineData("steel bowl: glass bowl, 300 g", "vessel-name-taken")]
    [InlineData("pot: steel pot, 900 g", "vessel-name-taken")]
    [InlineData("big, blue: glass bowl, 300 g", "vessel-name-taken")]
    [InlineData("mine: none", "vessel-not-understood")]
    [InlineData("mine: glass bowl, 300 g, warmed", "vessel-not-understood")]
    [InlineData("mine: something", "vessel-not-understood")]
    public void WhatIsNoVesselOfAKitchen_IsTold(string vessel, string kind) =>
        Assert.Contains(KitchenText.Read($"doughwright: 1\nkitchen: Attic\nair: 20 C\nvessels:\n  {vessel}\n").Findings, finding => finding.Kind == kind);

    private static Rehearsal In(string name, string? vessel) => Rehearser.Rehearse(
        Recipe("the big bowl"),
        Larder.Shipped,
        Request.Home with { Kitchen = KitchenText.Read($"doughwright: 1\nkitchen: {name}\nair: 16 C\n{(vessel is null ? "" : "vessels:\n  " + vessel + "\n")}").Kitchen! });

    private static double Mixed(Rehearsal rehearsal) => rehearsal.Steps.First(step => step.Id == "mix").EndTemperature!.Value.Celsius;

    private static string Minutes(Rehearsal rehearsal) => string.Join(';', rehearsal.Steps.Select(step => $"{step.Time} {step.EndTemperature}"));

    private static Recipe Recipe(string vessel)
    {
        var reading = RecipeText.Read(Texts.PotatoRollsWith("scale: 1 g\n", $"scale: 1 g\n  vessels:\n    {Bowl}\n")
            .Replace("    way: by hand\n    vessel: steel bowl, 500 g\n", $"    way: by hand\n    vessel: {vessel}\n", StringComparison.Ordinal));
        Assert.DoesNotContain(reading.Findings, finding => finding.NotUnderstood);
        return reading.Recipe!;
    }
}
