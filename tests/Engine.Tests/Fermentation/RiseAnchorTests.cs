using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Fermentation;

public class RiseAnchorTests
{
    private const int Lanes = 32;
    private const double Minutes = 105;

    private readonly RiseParameters parameters = RiseParameters.Draw(new(), Lanes, dimension => Draws.Normal(dimension, Lanes));
    private readonly double[] readAt = Array.ConvertAll(Draws.Normal(40, Lanes), z => Minutes * Math.Exp(0.10 * z));
    private readonly double[] pascals = [.. Enumerable.Repeat(RiseCase.SeaLevel, Lanes)];

    [Fact]
    public void AtHome_EveryLaneGrowsToTheTargetAtItsOwnMinutes()
    {
        var home = Drift(26, 21);
        var dough = RollDough.Of(parameters);
        var anchor = Rise.Anchor(dough, parameters, pascals, home, readAt, 2, RiseFolds.AtMinutes(Lanes, 45));

        Assert.All(anchor.IsFound, Assert.True);
        var state = new RiseState(dough, parameters, anchor.Scale, pascals, home.StartCelsius);
        var growth = Rise.GrowthAfter(state, home, readAt, RiseFolds.AtMinutes(Lanes, 45));
        Assert.All(growth, v => Assert.Equal(2, v, 1e-9));
        Assert.Equal(Minutes, readAt[0]);
    }

    [Fact]
    public void AtHome_WithFoldsByGrowth_TheMinutesAreThoseMeasured()
    {
        var home = Drift(26, 21);
        var dough = RollDough.Of(parameters);
        var anchor = Rise.Anchor(dough, parameters, pascals, home, readAt, 2, RiseFolds.AtMinutes(Lanes, 45));
        var folds = anchor.Folds.Elsewhere();
        var minutes = Rise.TimeToGrowth(
            new(dough, parameters, anchor.Scale, pascals, home.StartCelsius), home, 2, folds);

        for (var lane = 0; lane < Lanes; lane++)
        {
            Assert.Equal(readAt[lane], minutes[lane], 1e-7);
            Assert.Equal(45, folds.Minutes[lane], 1e-7);
        }
    }

    [Fact]
    public void Anchor_OfAGrowthAboveTheHighest_IsNotFoundAndSaysSo()
    {
        var rye = RiseParameters.Central(1, RisePriors.For(RiseCeiling.Rye.Likely));
        var dough = RollDough.Of(rye);
        var home = RiseHistory.Constant(Temperature.FromCelsius(25), 1, Duration.FromHours(4), Duration.FromMinutes(2.5));
        var anchor = Rise.Anchor(dough, rye, [RiseCase.SeaLevel], home, [105], 2, RiseFolds.AtMinutes(1));

        Assert.False(anchor.IsFound[0]);
        Assert.Equal(0, anchor.Scale[0]);
    }

    [Fact]
    public void Anchor_BeyondTheHistory_IsRefused()
    {
        var case1 = new RiseCase { Hours = 1 };
        Assert.Throws<ArgumentOutOfRangeException>(() => case1.AnchoredAt(105));
    }

    [Fact]
    public void Fold_TakesAFifthOfTheGasInTheBubblesAndNoneOfTheDissolved()
    {
        var dough = new RiseCase { Scale = 2 };
        var plain = dough.Start;
        Rise.GrowthAfter(plain, dough.History, [60]);
        var folded = plain.Copy();
        var before = plain.Growth[0];

        folded.PressOut([RiseFolds.Keeps]);
        plain.PressOut([0]);
        var air = 0.08;
        Assert.Equal(1, plain.Growth[0], 0.12); // dissolved gas comes out again, so a little more than air is left
        Assert.InRange(folded.Growth[0], 1 - air, before - 0.1 * (before - 1));
    }

    [Fact]
    public void Fold_InTheMiddleOfAStep_IsAsAFoldBetweenSteps()
    {
        var fine = new RiseCase { Scale = 2, StepMinutes = 1 };
        var coarse = fine with { StepMinutes = 4 };
        var between = fine.MinutesTo(2, RiseFolds.AtMinutes(1, 45));
        var within = coarse.MinutesTo(2, RiseFolds.AtMinutes(1, 45));
        Assert.Equal(between, within, between * 1e-3);
        Assert.True(between > fine.MinutesTo(2) + 3);
    }

    [Fact]
    public void ALaneThatStopped_WaitsForTheOthersAndGoesOnFromThere()
    {
        var two = RiseParameters.Central(2);
        var dough = RollDough.Of(two);
        var history = RiseHistory.Constant(Temperature.FromCelsius(25), 2, Duration.FromHours(6), Duration.FromMinutes(2));
        var state = new RiseState(dough, two, [1, 2], [RiseCase.SeaLevel, RiseCase.SeaLevel], history.StartCelsius);
        Rise.TimeToGrowth(state, history, 2);

        Assert.True(state.AllStopped);
        Assert.True(state.StoppedMinutes[0] > 1.5 * state.StoppedMinutes[1]);
        Assert.Equal(2, state.Growth[0], 1e-12);
        Assert.Equal(2, state.Growth[1], 1e-12);

        var growth = Rise.GrowthAfter(state, history, [20, 20]);
        Assert.True(growth[1] > growth[0]);
    }

    private static RiseHistory Drift(double from, double air) => RiseHistory.Of(
        at => Temperature.FromCelsius(air + (from - air) * Math.Exp(-at.Minutes / 120)),
        Lanes,
        Duration.FromMinutes(300),
        Duration.FromMinutes(2.5));
}
