using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>A body on its way towards the air, followed with the shells and the coefficients of a rehearsal.</summary>
/// <param name="Coefficient">W/(m² K) as the source states it; null for that of the place, with its spread.</param>
internal sealed record CoolingBody(Body Body, Step Step, double Start, AirProfile Air, double? Coefficient) : ICaseModel
{
    private const int StepsPerTimeConstant = 400;
    private const int FewestSteps = 400;
    private const int MostSteps = 60_000;

    /// <summary>Time constants after which what has not been reached never is.</summary>
    private const double LongestWait = 15;

    private static readonly Priors Priors = Priors.For(Rehearser.OrdinaryLanes, new RisePriors());

    public CaseAnswer Answer(CaseSeries series)
    {
        var places = series.Points.Select(point => point.Place).ToArray();
        if (series.Of == CoolingKind.Core || series.Of == CoolingKind.Mean || series.Of == CoolingKind.Surface)
        {
            var way = Follow(Math.Max(places.Max(), 0.01), ExchangeTowards(Air.At(Duration.Zero).Celsius));
            return CaseAnswer.Each(series, minutes => way.At(WhatOf(series.Of), minutes));
        }

        return CaseAnswer.Each(series, celsius =>
        {
            var exchange = ExchangeTowards(celsius);
            var wait = LongestWait * Body.TimeConstantSeconds(exchange[0]) / 60;
            return Follow(wait + Air.Knots[^1].From.Minutes, exchange).TimeTo(series.Of == CoolingKind.TimeToCore ? Watched.Core : Watched.Mean, celsius);
        });
    }

    private static Watched WhatOf(CaseQuantity quantity) =>
        quantity == CoolingKind.Core ? Watched.Core : quantity == CoolingKind.Mean ? Watched.Mean : Watched.Surface;

    private double[] ExchangeTowards(double celsius) => Coefficient is { } stated
        ? [stated]
        : Bodies.Draw(Bodies.ExchangeOf(Step, Start, celsius, Air.At(Duration.Zero).Celsius, Body.Faces), Priors).Values;

    /// <param name="minutes">How long anybody looks; what has long become as warm as the air is not followed on.</param>
    private CoolingTrack Follow(double minutes, double[] coefficient)
    {
        var lanes = coefficient.Length;
        var constant = Body.TimeConstantSeconds(coefficient[0]) / 60;
        minutes = Math.Min(minutes, (LongestWait * constant) + Air.Knots[^1].From.Minutes);
        var needed = Math.Ceiling(StepsPerTimeConstant * minutes / constant);
        var steps = (int)Require.Within(Math.Max(needed, FewestSteps), 0, MostSteps, "Steps of a body that follows its air");
        var step = Duration.FromMinutes(minutes / steps);
        var start = PerLane.Same(Start, lanes);
        var run = Bodies.Begin(Body, lanes == 1 ? new(start.Values, coefficient) : Bodies.LanesOf(Body, start, new(coefficient), Priors), step);
        double[] air = [.. Enumerable.Range(0, steps).Select(index => Air.At(step * (index + 0.5)).Celsius)];
        var (mean, centre, surface) = (new double[steps * lanes], new double[steps * lanes], new double[steps * lanes]);
        run.Advance(air, mean, centre, surface);
        return new(Start, step.Minutes, lanes, mean, centre, surface);
    }
}
