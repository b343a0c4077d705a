using Doughwright.Engine.Cases;

namespace Doughwright.Engine.Tests.Cases;

/// <summary>Scores, worked out by hand for answers that are given.</summary>
public class CaseScoreTests
{
    private sealed record Given(Func<double, double[]> At) : ICaseModel
    {
        public CaseAnswer Answer(CaseSeries series) => CaseAnswer.Each(series, At);
    }

    /// <summary>Measured 24 ± 1 at 30 min, 20 to 21 ± 1 at 60, 13.9 ± 1.1 at 120.</summary>
    private static SeriesResult Run(Func<double, double[]> at) =>
        CaseRunner.Run(CaseSamples.Read(CaseSamples.Ball).Case! with { Model = new Given(at) }).Series[0];

    private static double[] Lanes(double central, double low, double high) => [central, .. Enumerable.Range(0, 11).Select(i => low + ((high - low) * i / 10))];

    [Fact]
    public void Errors_CountFromTheFigureOrFromTheEndOfItsRange()
    {
        var result = Run(minutes => [minutes switch { 30 => 25, 60 => 22, _ => 125.0 / 9 }]);
        Assert.Equal([1.0, 1.0, 0.0], result.Points.Select(point => Math.Round(point.Error!.Value, 9)));
        Assert.Equal(Math.Sqrt(2.0 / 3), result.RootMeanSquare!.Value, 1e-9);
        Assert.Equal(2.0 / 3, result.Bias!.Value, 1e-9);
        Assert.Equal(1, result.MaxError!.Value, 1e-9);
        Assert.True(result.Within);
    }

    [Fact]
    public void OnePointOut_IsOut()
    {
        var result = Run(minutes => [minutes switch { 30 => 22.9, 60 => 20.5, _ => 14 }]);
        Assert.False(result.Within);
        Assert.Equal(2, result.PointsWithin);
        Assert.True(result.Bias < 0);
    }

    /// <summary>Low and high are the 10th and 90th percentile of the draws.</summary>
    [Fact]
    public void Range_HoldsAFigureOrAPartOfItsRange()
    {
        var result = Run(minutes => minutes switch { 30 => Lanes(30, 20, 30), 60 => Lanes(25, 20.9, 30), _ => Lanes(30, 25, 35) });
        // Of eleven draws from 20 to 30 the tenth in a hundred has rank 0.1 x 12 = 1.2, a fifth of the way from the first to the second.
        Assert.Equal(20.2, result.Points[0].Low!.Value, 1e-12);
        Assert.Equal(30, result.Points[0].High);
        Assert.Equal([true, false, false], result.Points.Select(point => point.InRange));
        Assert.Equal((3, 1), (result.PointsWithRange, result.PointsInRange));
    }

    [Fact]
    public void NoSpread_IsNoRange()
    {
        var result = Run(_ => [24, 24, 24]);
        Assert.All(result.Points, point => Assert.Null(point.InRange));
        Assert.Equal(0, result.PointsWithRange);
    }

    [Fact]
    public void Never_IsOutAndHasNoScore()
    {
        var result = Run(minutes => [minutes > 60 ? double.PositiveInfinity : 24]);
        Assert.False(result.Within);
        Assert.Null(result.RootMeanSquare);
        Assert.Null(result.Points[2].Computed);
        Assert.Null(result.Points[2].Error);
    }

    [Fact]
    public void NotANumber_IsNotRun()
    {
        var result = Run(_ => [double.NaN]);
        Assert.Equal("case-not-computed", result.Refusal!.Kind);
        Assert.Null(result.Within);
    }

    [Fact]
    public void BeyondAModel_IsTheReason_AndNoCrash()
    {
        var result = Run(_ => throw new ArgumentOutOfRangeException("x", "Must be less."));
        Assert.Equal("case-beyond-model", result.Refusal!.Kind);
        Assert.Equal("Must be less", result.Refusal.Arguments["reason"]);
    }
}
