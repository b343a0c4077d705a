using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>A soaker that is poured boiling and cools in its bowl: what is told of the time it is warm, where, and what can be done.</summary>
public class WarmSpellTests
{
    private static readonly string Loaf = Texts.Read("tests/data/heat/rye-tin.yaml");

    private static Recipe Read(string text) => Taken.Recipe(text);

    private static Rehearsal In(double air, string? text = null) => Taken.InAir(text ?? Loaf, air);

    private static bool IsOfWarmth(Finding finding) => finding.Kind.StartsWith("warm-for", StringComparison.Ordinal);

    [Fact]
    public void OneWarmSpell_IsToldOnce_WhereItCools()
    {
        var told = Assert.Single(In(28).Findings, IsOfWarmth);
        Assert.Equal("steps.cool-soaker", told.Place);
        var soak = In(28).FindStep("soak")!.Start!.Value;
        Assert.Equal((In(28).FindStep("mix")!.Start!.Value - soak).Minutes, Assert.IsType<Duration>(told.Arguments["time"]).Minutes, 1e-6);
    }

    /// <summary>Beyond four hours a toxin can be there that baking leaves: that is more than a hint.</summary>
    [Fact]
    public void TimeForAToxin_IsAWarningOfSafety() =>
        Assert.Contains(In(28).Findings, finding => finding is { Kind: "warm-for-too-long", Grade: Grade.Warning, Safety: true });

    [Fact]
    public void Fridge_IsNoWayOutOfPouringOrMixing()
    {
        Finding Warm(string step) => new() { Kind = "warm-for-too-long", Grade = Grade.Warning, Safety = true, Place = $"steps.{step}" };
        Assert.Empty(Engine.Remedies.Remedies.For(Warm("soak"), Read(Loaf)));
        Assert.Empty(Engine.Remedies.Remedies.For(Warm("mix"), Read(Loaf)));
        Assert.Single(Engine.Remedies.Remedies.For(Warm("cool-soaker"), Read(Loaf)));
    }

    [Theory]
    [InlineData(29.4, false)]
    [InlineData(29.8, false)]
    [InlineData(30.3, true)]
    [InlineData(30.5, true)]
    public void TargetBeyondTheRoom_IsSaidToBeMissed_EvenByHalfADegree(double air, bool isMissed)
    {
        var run = In(air, Loaf.Replace("ends: at 86 F", "ends: at 30 C", StringComparison.Ordinal));
        var told = run.Findings.Where(finding => finding is { Kind: "ends-short-here", Place: "steps.cool-soaker" }).ToList();
        Assert.Equal(isMissed, told.Count == 1);
        Assert.Equal(isMissed, run.FindStep("cool-soaker")!.EndTemperature!.Value.Celsius > 30.5);
        Assert.All(told, finding => Assert.Equal(run.FindStep("cool-soaker")!.EndTemperature, finding.Arguments["ends"]));
    }
}
