using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>
/// How far a dough may be said to rise. Ends of the trade's ranges: strong white 5, plain 4, wholemeal 3, rye 2 times (from memory: the source
/// rise-ceiling has no publication behind it). What the author saw within them is taken, with no error.
/// </summary>
public class HighRiseTests
{
    private static Rehearsal Of(string flour, double times, double? air = null) => Rehearser.Rehearse(
        RecipeText.Read(FormattableString.Invariant($"""
            doughwright: 1
            title: Wet dough
            make: 1 loaf of 850 g
            home:
              air: 22 C
            parts:
              dough:
                {flour}: 500 g
                water: 400 g, at 25 C
                salt: 10 g
                instant yeast: 2 g
            steps:
              mix:
                of: dough
                hands: 10 min
                way: by hand
              bulk:
                of: dough
                cover: covered
                ends: at {times} times its volume
                measured: 5 h
                cue: at the tape
            """)).Recipe!,
        Larder.Shipped,
        air is { } celsius ? new() { Kitchen = new Kitchen { Air = AirProfile.Constant(Temperature.FromCelsius(celsius)) } } : Request.Home);

    [Theory]
    [InlineData("plain flour", 3, false)]
    [InlineData("plain flour", 3.5, false)]
    [InlineData("plain flour", 4.5, true)]
    [InlineData("strong white flour", 3, false)]
    [InlineData("strong white flour", 4.5, false)]
    [InlineData("strong white flour", 5.5, true)]
    [InlineData("medium rye flour", 2, false)]
    [InlineData("medium rye flour", 2.3, true)]
    public void RiseWithinWhatDoughsHold_IsNoError_AndBeyondTheUsualAWarning(string flour, double times, bool warned)
    {
        var home = Of(flour, times);
        Assert.DoesNotContain(home.Findings, finding => finding.Kind == "rise-impossible");
        Assert.Equal(warned, home.Findings.Any(finding => finding is { Kind: "rise-above-flour", Grade: Grade.Warning, Place: "steps.bulk" }));
        var away = Of(flour, times, 26);
        Assert.InRange(away.FindStep("bulk")!.Time!.Value.Likely.Minutes, 60, 300);
    }

    [Theory]
    [InlineData("plain flour", 9)]
    [InlineData("medium rye flour", 4)]
    public void RiseThatNobodyBelieves_StaysAnError_WithTheLimitNamed(string flour, double times)
    {
        var kinds = Of(flour, times).Findings.Select(finding => finding.Kind).ToList();
        Assert.Contains("rise-impossible", kinds);
        Assert.Contains("rise-above-flour", kinds);
    }
}
