using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>A bread whose middle stays raw. Food authorities ask 160 °F (71 °C) of what holds egg (from memory).</summary>
public class RawCoreTests
{
    private static readonly string Braid = Texts.Read("tests/data/heat/poppy-braid.yaml");

    private static Finding Of(string text, string place = "steps.bake") => Assert.Single(
        Taken.Rehearsal(text, Request.Home).Findings,
        finding => finding.Place == place && finding.Kind.StartsWith("core-", StringComparison.Ordinal));

    private static string BakedTo(string core, string text) => text.Replace("measured: 35 min and 94 C on 3 May", $"measured: 35 min and {core} on 3 May", StringComparison.Ordinal);

    [Fact]
    public void RawMiddleWithEgg_NamesEggAndFlour_AndIsAboutSafety()
    {
        var told = Of(BakedTo("62 C", Braid));
        Assert.Equal(("core-leaves-egg-raw", Grade.Warning, true), (told.Kind, told.Grade, told.Safety));
        Assert.Equal(["egg"], Assert.IsType<string[]>(told.Arguments["egg"]));
        Assert.Equal(["strong white flour"], Assert.IsType<string[]>(told.Arguments["flour"]));
    }

    [Fact]
    public void RawMiddleWithoutEgg_NamesFlour()
    {
        var told = Of(BakedTo("62 C", Braid.Replace("    egg: 100 g\n", "", StringComparison.Ordinal)));
        Assert.Equal(("core-leaves-flour-raw", true), (told.Kind, told.Safety));
    }

    [Fact]
    public void RawMiddle_IsToldInEveryKitchen()
    {
        var recipe = RecipeText.Read(BakedTo("62 C", Braid)).Recipe!;
        var cooler = recipe.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(19)) };
        Assert.Contains(
            Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = cooler }).Findings, finding => finding is { Kind: "core-leaves-egg-raw", Safety: true });
    }

    [Fact]
    public void CoreThatIsOnlyLow_IsUnusualAndNoMore()
    {
        var told = Of(BakedTo("80 C", Braid));
        Assert.Equal(("core-unusual", false), (told.Kind, told.Safety));
    }

    [Fact]
    public void CoreAsked_IsJudgedAsOneMeasured() =>
        Assert.Equal("core-leaves-egg-raw", Of(Braid.Replace("measured: 35 min and 94 C on 3 May", "ends: core at 62 C\n    measured: 35 min", StringComparison.Ordinal)).Kind);
}
