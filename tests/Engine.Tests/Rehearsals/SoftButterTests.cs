using Doughwright.Engine.Tests.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>Butter that is to be soft. It softens from 15 °C and is worked in at 18 to 21 °C: common practice, no source.</summary>
public class SoftButterTests
{
    /// <summary>In a room where it creams or nearly does, it is taken out in time; in a colder one it is said that it does not get soft. One of the two, never none.</summary>
    [Fact]
    public void SoftButter_IsTakenOutInTime_OrToldNotToGetSoft_InEveryCoolRoom()
    {
        for (var air = 8.0; air <= 24; air += 0.25)
        {
            var run = Taken.InAir(Texts.PotatoRolls, air);
            var isTakenOut = run.Steps.Any(step => step.Id == "dough-butter-out");
            var isTold = run.Findings.Any(finding => finding is { Kind: "butter-too-cold", Place: "parts.dough.butter" });
            Assert.True(isTakenOut ^ isTold, $"At {air} °C it is {(isTakenOut ? "both" : "neither")}.");
            Assert.Equal(air < 16, isTold);
        }
    }

    /// <summary>
    /// In a cool room butter is waited for until it is nearly as warm as the room, which takes longer the warmer that is; in a warm one until it can be creamed,
    /// which takes less. That the first is no mistake is said where a reader asks why.
    /// </summary>
    [Theory]
    [InlineData(16, true)]
    [InlineData(18, true)]
    [InlineData(20, false)]
    [InlineData(23, false)]
    public void ButterThatIsOnlyNearlyAsWarmAsTheRoom_SaysSo(double air, bool isNear)
    {
        var step = Taken.InAir(Texts.PotatoRolls, air).FindStep("dough-butter-out")!;
        Assert.Equal(isNear, step.Why!().Parts.Any(reason => reason.Kind == "nearly-the-air"));
        Assert.Equal(isNear ? air - 1 : 18, step.EndTemperature!.Value.Celsius, 0.01);
    }

    /// <summary>A mash that is to be at 28 °C, in a room as warm as that.</summary>
    [Theory]
    [InlineData(26, false)]
    [InlineData(28, true)]
    public void MashThatIsOnlyNearlyAsColdAsTheRoom_SaysSo(double air, bool isNear) =>
        Assert.Equal(isNear, Taken.InAir(Texts.PotatoRolls, air).FindStep("mash")!.Why!().Parts.Any(reason => reason.Kind == "nearly-the-air"));

    /// <summary>An author who says how warm it goes in is taken at their word.</summary>
    [Fact]
    public void SoftButterOfAStatedWarmth_IsJudgedByThat()
    {
        var stated = Texts.PotatoRolls.Replace("butter: 50 g, soft", "butter: 50 g, soft, at 15.5 C", StringComparison.Ordinal);
        Assert.DoesNotContain(Taken.InAir(stated, 21).Findings, finding => finding.Kind == "butter-too-cold");
        Assert.Contains(Taken.InAir(stated.Replace("15.5", "14.5", StringComparison.Ordinal), 21).Findings, finding => finding.Kind == "butter-too-cold");
    }
}
