using Doughwright.Engine.Fermentation;

namespace Doughwright.Engine.Tests.Fermentation;

/// <summary>
/// The model against what is known without a figure that could be laid down as a case, or with one that needs a set-up of its own. The rest is in
/// tests/data/published and run by Cases/PublishedCaseTests.
/// </summary>
public class RiseEvidenceTests
{
    // Home-economics advice [read]: dough rises faster from 3,000 ft; physics makes it 11 % at 3,000 and 23 % at 7,000 ft.
    [Fact]
    public void Altitude_ShortensTheRiseBy11To23Percent()
    {
        var dough = new RiseCase();
        var sea = dough.MinutesTo(2);
        Assert.Equal(0.11, 1 - (dough with { Pascals = 90_810 }).MinutesTo(2) / sea, 0.015);
        Assert.Equal(0.23, 1 - (dough with { Pascals = 78_190 }).MinutesTo(2) / sea, 0.015);
    }

    // Freilich 1949 [read, second hand]: to one height in 270 min in a proofer at 13 °C and in 36 min at 57 °C. The pieces go in at 27 °C
    // and warm slowly, so only the order can be held against a model of one temperature.
    [Fact]
    public void Proof_InACoolProofer_TakesSeveralTimesAsLongAsInAWarmOne()
    {
        RiseCase Proofer(double air) => new() { Yeast = 3, CelsiusAt = at => air + (27 - air) * Math.Exp(-at / 60) };
        var ratio = Proofer(13).MinutesTo(3.5) / Proofer(40).MinutesTo(3.5);
        Assert.InRange(ratio, 2, 270.0 / 36);
    }

    // Marek and Bushuk 1967, and two texts [read]: sugar helps to 4 to 6 % of the flour and slows beyond; salt slows throughout.
    [Fact]
    public void Sugar_HelpsALittleAndThenSlows()
    {
        double At(double sugar) => new RiseCase { Sugar = sugar, Water = 60 - 0.2 * sugar, Salt = 1.8 }.MinutesTo(2);
        Assert.True(At(3) < At(0));
        Assert.True(At(10) > At(6));
        Assert.True(At(20) > At(10));
    }

    [Fact]
    public void Salt_SlowsThroughout()
    {
        double At(double salt) => new RiseCase { Salt = salt }.MinutesTo(2);
        double[] minutes = [At(0), At(1), At(2), At(3)];
        Assert.Equal(minutes.Order(), minutes);
    }

    // Pup loaf of 100 g flour [read, second hand]: 3.55 times its volume at the end of the proof; of all gas made 40 % still in the dough
    // after fermentation, punching, moulding and proof. How often that loaf was punched is not said: here once, and moulded once.
    [Fact]
    public void PupLoaf_ReachesItsVolumeAndLosesMuchOfItsGas()
    {
        var withoutMaltose = RiseCase.WithoutGrowth with { Maltose = new("none", "g/h", 1e-9, 0, PriorLaw.Normal, "") };
        var dough = new RiseCase { Yeast = 3, Sugar = 8, CelsiusAt = _ => 30, Hours = 8, Priors = withoutMaltose };
        var state = dough.Start;
        var sugarAtFirst = state.Substrate[0];
        Rise.TimeToGrowth(state, dough.History, 2.5);
        state.PressOut([0.2]);
        Rise.TimeToGrowth(state, dough.History, 2.5);
        state.PressOut([0.2]);
        Assert.True(double.IsFinite(Rise.TimeToGrowth(state, dough.History, 3.55)[0]));

        var made = (sugarAtFirst - state.Substrate[0]) / RiseCoefficients.HexoseGramsPerMole;
        Assert.InRange(state.Moles[0] / made, 0.3, 0.6);
    }
}
