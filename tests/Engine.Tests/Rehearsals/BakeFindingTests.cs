using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>Bakes that cannot be as they are written. The author's minutes stand, and a finding says why nothing follows from them.</summary>
public class BakeFindingTests
{
    private const string Measured = "    measured: 19 min on 9 November";

    private static Rehearsal Of(string piece, string instead, Request? request = null) =>
        Rehearser.Rehearse(RecipeText.Read(Texts.PotatoRollsWith(piece, instead)).Recipe!, Larder.Shipped, request);

    [Fact]
    public void CoreMeasuredAboveBoiling_IsNotBelieved()
    {
        var home = Of(Measured, "    measured: 19 min and 101 C on 9 November");
        Assert.Contains(home.Findings, finding => finding is { Kind: "core-measured-above-boiling", Place: "steps.bake" });
        Assert.Equal(19, home.FindStep("bake")!.Time!.Value.Likely.Minutes, 1e-9);
        Assert.True(home.FindStep("bake")!.EndTemperature < home.Boils);
    }

    [Fact]
    public void CoreMeasuredLow_IsUnusual() =>
        Assert.Contains(Of(Measured, "    measured: 19 min and 80 C on 9 November").Findings, finding => finding.Kind == "core-unusual");

    [Fact]
    public void OvenBelowTheCore_LeavesTheAuthorsMinutesAtHome_AndNoneElsewhere()
    {
        var home = Of("    oven: 170 C fan", "    oven: 85 C fan");
        Assert.Equal(19, home.FindStep("bake")!.Time!.Value.Likely.Minutes, 1e-9);
        Assert.Contains(home.Findings, finding => finding is { Kind: "core-never-reached", Place: "steps.bake" });
        var away = Of("    oven: 170 C fan", "    oven: 85 C fan", new() { Pour = Temperature.FromCelsius(93) });
        Assert.Null(away.FindStep("bake")!.Time);
        Assert.Contains(away.Findings, finding => finding is { Kind: "core-never-reached", Place: "steps.bake" });
    }

    [Fact]
    public void BakeBeyondAllBakes_StandsAsWritten_AndSaysSo()
    {
        var home = Of(Measured, "    measured: 5124 min");
        Assert.Equal(5124, home.FindStep("bake")!.Time!.Value.Likely.Minutes, 1e-9);
        Assert.Null(home.FindStep("bake")!.Bake);
        Assert.Contains(home.Findings, finding => finding is { Kind: "bake-too-long", Place: "steps.bake" });
        Assert.InRange(Of(Measured, "    measured: 5124 min", new() { Pour = Temperature.FromCelsius(93) }).FindStep("bake")!.Time!.Value.Likely.Minutes, 5, 40);
    }

    /// <summary>No recipe that was tried comes to this: so few Newton steps are allowed that its skin cannot come to rest.</summary>
    [Fact]
    public void BakeThatDoesNotComeToRest_LeavesTheAuthorsMinutesAtHome_AndNoneElsewhere()
    {
        var (home, away) = NewtonPasses.AtMost(1, () => (Of(Measured, Measured), Of(Measured, Measured, new() { Pour = Temperature.FromCelsius(93) })));
        Assert.Contains(home.Findings, finding => finding is { Kind: "bake-not-worked-out", Place: "steps.bake" });
        Assert.Equal(19, home.FindStep("bake")!.Time!.Value.Likely.Minutes, 1e-9);
        Assert.Null(home.FindStep("bake")!.Bake);
        Assert.Contains(away.Findings, finding => finding is { Kind: "bake-not-worked-out", Place: "steps.bake" });
        Assert.Null(away.FindStep("bake")!.Time);
        Assert.DoesNotContain(Of(Measured, Measured).Findings, finding => finding.Kind.StartsWith("bake-", StringComparison.Ordinal));
    }

    [Fact]
    public void BulkThatCannotBe_IsToldAndCarriesNothing()
    {
        var home = Of("    ends: at 2 times its volume", "    ends: at 9 times its volume");
        Assert.Contains(home.Findings, finding => finding is { Kind: "rise-impossible", Place: "steps.bulk" });
        Assert.Equal(105, home.FindStep("bulk")!.Time!.Value.Likely.Minutes, 1e-9);
    }
}
