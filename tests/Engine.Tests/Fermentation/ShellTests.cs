using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Fermentation;

/// <summary>A dough whose shells differ: its rate is the sum of theirs.</summary>
public class ShellTests
{
    private const int Steps = 200;

    private static readonly double[] Thirds = [0.2, 0.3, 0.5];

    private static RiseState Run(RiseCase dough, double[] shellCelsius, double[] shares)
    {
        var mean = shellCelsius.Zip(shares, (celsius, share) => celsius * share).Sum();
        var state = new RiseState(dough.Dough, dough.Parameters, [1], [RiseCase.SeaLevel], [mean]);
        state.Begin(RiseStage.ForMinutes([1e6]));
        double[] celsius = [.. Enumerable.Repeat(mean, Steps)];
        double[] shells = [.. Enumerable.Repeat(shellCelsius, Steps).SelectMany(each => each)];
        state.Advance(new RiseWarmth(celsius, shells, shares, 1), Duration.FromMinutes(2));
        return state;
    }

    [Fact]
    public void ShellsOfOneTemperature_AreADoughOfThatTemperature()
    {
        var dough = new RiseCase();
        var together = dough.Start;
        together.Begin(RiseStage.ForMinutes([1e6]));
        together.Advance(new double[Steps].Select(_ => 25.0).ToArray(), Duration.FromMinutes(2));
        Assert.Equal(together.Growth[0], Run(dough, [25, 25, 25], Thirds).Growth[0], 1e-12);
    }

    /// <summary>Sugar is plenty, yeast does not multiply and nothing escapes: gas is the mean of that of three doughs, by their share.</summary>
    [Fact]
    public void Gas_IsThatOfTheShellsByTheirShare()
    {
        var dough = new RiseCase { Sugar = 30, Yeast = 0.2 };
        double Gas(double celsius) => Run(dough, [celsius], [1]).Moles[0];
        double[] celsius = [4, 12, 22];
        var expected = celsius.Zip(Thirds, (each, share) => share * Gas(each)).Sum();
        Assert.Equal(expected, Run(dough, celsius, Thirds).Moles[0], expected * 0.005);
        // Near the cold end the rate bends, so the mean temperature tells too little.
        Assert.True(Gas(0.2 * 4 + 0.3 * 12 + 0.5 * 22) < 0.97 * expected);
    }

    /// <summary>A run along rates that were worked out before has the digits of one that works them out, at every width and for either kind of yeast.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void RatesWorkedOutBefore_ChangeNoDigit(int width) => Engine.Numerics.Lanes.AtWidth(width, () =>
    {
        var dough = new RiseCase();
        double[] shells = [.. Enumerable.Range(0, Steps * Thirds.Length).Select(at => 5 + (at % 31))];
        double[] celsius = [.. Enumerable.Range(0, Steps).Select(step => Thirds.Select((share, shell) => share * shells[(step * Thirds.Length) + shell]).Sum())];
        foreach (var history in new[] { new RiseHistory([20], celsius, Duration.FromMinutes(2)), new RiseHistory([20], celsius, Duration.FromMinutes(2)) { Shells = shells, Shares = Thirds } })
        {
            RiseState After(RiseHistory along)
            {
                var state = dough.Start;
                state.Begin(RiseStage.ForMinutes([300]));
                state.Advance(along);
                return state;
            }

            var (once, before) = (After(history), After(dough.Start.WithRates(history)));
            Assert.Equal((once.Growth[0], once.Moles[0], once.Aged[0], once.Rate[0]), (before.Growth[0], before.Moles[0], before.Aged[0], before.Rate[0]));
            Assert.True(once.Growth[0] > 1.05);
        }

        return true;
    });

    [Fact]
    public void ShellsOfAGrid_HoldAllOfItsVolumeEvenly()
    {
        foreach (var shape in Enum.GetValues<BodyShape>())
        {
            var grid = new ConductionGrid(shape, Length.FromMillimetres(50), 16);
            Assert.Equal(1, grid.ShellShares.Sum(), 1e-12);
            Assert.Equal(16, grid.ShellEnds[^1]);
            Assert.All(grid.ShellShares, share => Assert.InRange(share, 0.1, 0.3));
        }
    }

    /// <summary>The mean of the shells is the mean of the body, in every step and lane, at every width.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(8)]
    public void Shells_AddUpToTheMean(int width)
    {
        const int Lanes = 5;
        double[] Every(double value) => [.. Enumerable.Range(0, Lanes).Select(lane => value * (1 + (0.1 * lane)))];
        var lanes = new ConductionLanes { Conductivity = Every(0.4), HeatCapacity = Every(3e6), Coefficient = Every(8), StartCelsius = Every(25), MeltingHeat = Every(1e7) };
        var run = ConductionRun.Start(new(BodyShape.Sphere, Length.FromMillimetres(60), 16), lanes, Duration.FromMinutes(5), width);
        var shares = run.Grid.ShellShares;
        double[] mean = new double[30 * Lanes], shells = new double[30 * Lanes * shares.Length];
        run.Advance([.. Enumerable.Repeat(4.0, 30)], mean, shells: shells);
        for (var step = 0; step < 30; step++)
        {
            for (var lane = 0; lane < Lanes; lane++)
            {
                var sum = shares.Select((share, shell) => share * shells[(((step * shares.Length) + shell) * Lanes) + lane]).Sum();
                Assert.Equal(mean[(step * Lanes) + lane], sum, 1e-10);
            }
        }
    }

    /// <summary>What escapes and what stays is what is made: sugar used tells the same.</summary>
    [Fact]
    public void EscapedAndHeld_AreAllThatWasMade()
    {
        var dough = new RiseCase { Yeast = 3, Sugar = 6, Hours = 12, Priors = RiseCase.WithoutGrowth with { Maltose = new("none", "g/h", 1e-9, 0, PriorLaw.Normal, "") } };
        var state = dough.Start;
        var sugar = state.Substrate[0];
        Rise.GrowthAfter(state, dough.History, [720]);
        var made = (sugar - state.Substrate[0]) / RiseCoefficients.HexoseGramsPerMole;
        Assert.Equal(made, state.Moles[0] + state.Escaped[0], 1e-9);
        Assert.True(state.GrowthWithEscaped(0) > state.Growth[0] + 1);
        state.PressOut([0.2]);
        Assert.Equal(state.Growth[0], state.GrowthWithEscaped(0), 1e-12);
    }
}
