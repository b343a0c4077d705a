using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Fermentation;

public class RisePriorTests
{
    private const int Lanes = 512;
    private const int ReadingDimension = 15;
    private const double ReadingError = 0.10;

    private readonly RiseParameters parameters = RiseParameters.Draw(new(), Lanes, dimension => Draws.Normal(dimension, Lanes));
    private readonly double[] pascals = [.. Enumerable.Repeat(RiseCase.SeaLevel, Lanes)];

    [Fact]
    public void LaneZero_IsTheCentralValueToTheLastDigit()
    {
        var central = RiseParameters.Central(1);
        Assert.Equal(37, parameters.Optimum[0]);
        Assert.Equal(central.Ceiling[0], parameters.Ceiling[0]);
        Assert.Equal(central.Substrate[0], parameters.Substrate[0]);
        Assert.Equal(1, parameters.Scale[0]);
    }

    [Fact]
    public void EveryPrior_IsCentralAtZeroAndStaysFarOutAtItsEdge() => Assert.All(new RisePriors().All, prior =>
    {
        Assert.Equal(prior.Central, prior.At(0));
        Assert.Equal(prior.At(Prior.Edge), prior.At(40));
        Assert.True(prior.At(-40) < prior.Central);
    });

    // fermentation sheet 14.4 [computed there by random draws over the same priors]: spread of ln(minutes to double) of a dough that
    // doubled in 120 min at 25 °C, read to 10 %. Growth of the yeast was off there and is off here.
    [Theory]
    [InlineData(10, 0.22)]
    [InlineData(15, 0.14)]
    [InlineData(20, 0.11)]
    [InlineData(30, 0.11)]
    [InlineData(35, 0.13)]
    public void Anchor_LeavesTheSpreadThatWasTabulated(double celsius, double tabulated)
    {
        var priors = RiseCase.WithoutGrowth;
        var drawn = RiseParameters.Draw(priors, Lanes, dimension => Draws.Normal(dimension, Lanes));
        var dough = Dough(drawn);
        var minutes = Array.ConvertAll(Draws.Normal(ReadingDimension, Lanes), z => 120 * Math.Exp(ReadingError * z));
        var anchor = Rise.Anchor(dough, drawn, pascals, At(25, 4), minutes, 2, RiseFolds.AtMinutes(Lanes));
        Assert.Equal(tabulated, SpreadOfLogMinutes(dough, drawn, anchor.Scale, celsius), 0.2 * tabulated);
    }

    [Theory]
    [InlineData(15)]
    [InlineData(25)]
    [InlineData(35)]
    public void WithoutAnAnchor_TheSpreadIsAsTabulated(double celsius) => // 0.33 to 0.39 [computed, as above]
        Assert.InRange(SpreadOfLogMinutes(Dough(parameters), parameters, parameters.Scale, celsius), 0.30, 0.42);

    private static RiseDough Dough(RiseParameters parameters) => RiseDough.Of(
        new()
        {
            Flour = Mass.FromGrams(100),
            Water = Mass.FromGrams(65),
            Salt = Mass.FromGrams(2),
            FreshYeast = Mass.FromGrams(1),
        },
        parameters);

    private static RiseHistory At(double celsius, double hours) => RiseHistory.Constant(
        Temperature.FromCelsius(celsius), Lanes, Duration.FromHours(hours), Duration.FromMinutes(3));

    private double SpreadOfLogMinutes(RiseDough dough, RiseParameters drawn, double[] scale, double celsius)
    {
        var history = At(celsius, 80);
        var minutes = Rise.TimeToGrowth(new(dough, drawn, scale, pascals, history.StartCelsius), history, 2);
        var logs = minutes.Where(double.IsFinite).Select(m => Math.Log(m)).ToArray();
        Assert.True(logs.Length > 0.98 * Lanes);
        var mean = logs.Average();
        return Math.Sqrt(logs.Average(log => (log - mean) * (log - mean)));
    }
}
