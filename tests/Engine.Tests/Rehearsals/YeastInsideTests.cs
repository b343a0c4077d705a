using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>Yeast suffers above 40 °C and dies from 50 °C (common advice, from memory), wherever in the recipe it was written.</summary>
public class YeastInsideTests
{
    private static readonly string Braid = Texts.Read("tests/data/heat/poppy-braid.yaml");

    private static Rehearsal Of(string text, Request? request = null) => Taken.Rehearsal(text, request);

    private static Request ColdKitchen => new() { Kitchen = RecipeText.Read(Braid).Recipe!.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(12)) } };

    private static Request MilkAt(double celsius) => new() { At = new Dictionary<string, Temperature> { ["milk"] = Temperature.FromCelsius(celsius) } };

    [Fact]
    public void ColdKitchen_OffersNoMilkHotterThanTheSpongesYeastBears()
    {
        var missed = Of(Braid, ColdKitchen).Findings.Single(finding => finding.Place == "steps.mix" && finding.Kind.StartsWith("dough-temperature-missed", StringComparison.Ordinal));
        Assert.Equal("dough-temperature-missed-limit", missed.Kind);
        Assert.Equal("sponge", missed.Arguments["thing"]);
        Assert.Equal(HeatAnswer.YeastBears, missed.Arguments["bears"]);
        Assert.True((Temperature)missed.Arguments["meets"] > HeatAnswer.YeastBears);
        var asked = Of(Braid, ColdKitchen with { Dough = Temperature.FromCelsius(26) });
        var solution = Assert.Single(asked.Solutions);
        Assert.True(solution.Warmth!.Value.Likely.Celsius > 40);
        Assert.False(solution.Offered);
        Assert.Contains(solution.Meets, meeting => meeting.What == "sponge" && meeting.Temperature.Celsius > 40);
    }

    [Fact]
    public void HotMilkOntoASponge_MeetsItsYeast()
    {
        var told = Of(Braid.Replace("milk: 110 g, at 30 C", "milk: 110 g, at 57 C", StringComparison.Ordinal)).Findings;
        Assert.Contains(told, finding => finding is { Kind: "yeast-meets-heat", Place: "steps.mix" } && Equals(finding.Arguments["yeast"], "sponge"));
        Assert.DoesNotContain(Of(Braid).Findings, finding => finding.Kind == "yeast-meets-heat");
    }

    [Fact]
    public void HotMilkOntoAPartWithEgg_MeetsTheEgg()
    {
        var text = Braid.Replace("    fresh yeast: 18 g\n", "    fresh yeast: 18 g\n    egg: 20 g\n", StringComparison.Ordinal)
            .Replace("    egg: 100 g\n", "", StringComparison.Ordinal);
        Assert.DoesNotContain(Of(text).Findings, finding => finding.Kind == "egg-meets-heat");
        Assert.Contains(
            Of(text.Replace("milk: 110 g, at 30 C", "milk: 110 g, at 80 C", StringComparison.Ordinal)).Findings,
            finding => finding is { Kind: "egg-meets-heat", Place: "steps.mix" });
    }

    [Fact]
    public void DeadYeast_HasNoRise_NeitherInItsSpongeNorInTheDough()
    {
        var dead = Of(Braid, MilkAt(90));
        Assert.True(dead.FindStep("sponge-mix")!.EndTemperature!.Value.Celsius >= 50);
        Assert.Contains(dead.Findings, finding => finding is { Kind: "yeast-killed", Grade: Grade.Error, Place: "steps.sponge-mix" });
        Assert.All(new[] { "sponge-rise", "bulk", "proof" }, step => Assert.Null(dead.FindStep(step)!.Time));
        Assert.DoesNotContain(dead.Findings, finding => finding.Kind == "rise-not-computed");
    }

    [Fact]
    public void NewYeastInTheDough_RisesAgain()
    {
        var text = Braid.Replace("    ends: doubled\n    measured: 35 min\n", "    ends: after 35 min\n", StringComparison.Ordinal);
        Assert.Null(Of(text, MilkAt(90)).FindStep("bulk")!.Time);
        var again = Of(text.Replace("    vanilla extract: 5 g", "    instant yeast: 4 g", StringComparison.Ordinal), MilkAt(90));
        Assert.Null(again.FindStep("sponge-rise")!.Growth);
        Assert.True(again.FindStep("mix")!.EndTemperature!.Value.Celsius < 50);
        Assert.NotNull(again.FindStep("bulk")!.Time);
    }

    [Fact]
    public void SpongeWarmButAlive_StillRises()
    {
        var warm = Of(Braid, MilkAt(50));
        Assert.DoesNotContain(warm.Findings, finding => finding.Kind == "yeast-killed");
        Assert.NotNull(warm.FindStep("sponge-rise")!.Time);
    }
}
