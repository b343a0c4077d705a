using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>Turns a place that was followed in every lane into what a person is told.</summary>
internal static class PlaceTelling
{
    /// <summary>Points of the course with the dough.</summary>
    private const int Points = 60;

    /// <summary>Water from here on scalds within minutes; at 60 °C within seconds. Source: scald-limits.</summary>
    private static readonly Temperature Scalds = Temperature.FromCelsius(48);

    /// <summary>A jug is no danger to yeast that it touches through a bowl until here. Source: yeast-heat.</summary>
    private static readonly Temperature HurtsYeast = Temperature.FromCelsius(45);

    public static PlaceAnswer Of(PlaceTrial trial, StepAgain again, Temperature target)
    {
        var (place, found, traces, minutes) = (trial.Place, trial.Recipe, trial.Traces, trial.Minutes);
        var dough = again.DoughIn(trial.Around, minutes);
        var lanes = again.Lanes;
        double DoughAt(int minute, int lane) => minute == 0 ? again.Start[lane] : dough[((minute - 1) * lanes) + lane];
        var doughMean = PerLaneOf(lanes, lane => Enumerable.Range(0, minutes + 1).Sum(minute => DoughAt(minute, lane) * (minute == 0 || minute == minutes ? 0.5 : 1)) / minutes);
        var within = Enumerable.Range(1, minutes).Count(minute => Math.Abs(DoughAt(minute, 0) - target.Celsius) <= PlaceSearch.Tolerance);
        return new()
        {
            Kind = place.Kind,
            Reaches = Math.Abs(traces[0].Mean(place.Around, minutes) - target.Celsius) <= PlaceSearch.Hit,
            Water = Mass.FromKilograms(found.WaterKilograms),
            WaterTemperature = Temperature.FromCelsius(found.Filling.Celsius),
            Lead = found.Filling.Lead,
            RenewEvery = PlaceSearch.Count(found.Filling.RenewEvery, minutes) > 0 ? found.Filling.RenewEvery : null,
            Renewals = PlaceSearch.Count(found.Filling.RenewEvery, minutes),
            Mean = Report.TemperatureOf(PerLaneOf(lanes, lane => traces[lane].Mean(place.Around, minutes))),
            DoughEnd = Report.TemperatureOf(PerLaneOf(lanes, lane => DoughAt(minutes, lane))),
            DoughMean = Report.TemperatureOf(doughMean),
            PlaceWithin = Duration.FromMinutes(traces[0].Within(place.Around, target.Celsius, PlaceSearch.Tolerance, minutes)),
            DoughWithin = Duration.FromMinutes(within),
            Time = trial.Time is { } taken ? Report.TimeOf(taken) : null,
            Course = [.. Moments(traces[0].Lead, minutes).Select(minute => new PlacePoint(
                Duration.FromMinutes(minute),
                again.Room.At(Duration.FromMinutes(Math.Max(0, minute))),
                Temperature.FromCelsius(traces[0][minute].Water),
                Report.TemperatureOf(PerLaneOf(lanes, lane => place.Around(traces[lane][minute]))),
                minute < 0 ? null : Report.TemperatureOf(PerLaneOf(lanes, lane => DoughAt(minute, lane)))))],
            Cautions = [.. Cautions(place, found)],
            RestsOn = place.RestsOn(),
        };
    }

    private static IEnumerable<int> Moments(int lead, int minutes)
    {
        var every = Math.Max(1, minutes / Points);
        for (var minute = -lead; minute < minutes; minute += every)
        {
            // The moment at which the dough goes in is always told.
            if (minute < 0 && minute + every > 0)
            {
                yield return minute;
                minute = -every;
                continue;
            }

            yield return minute;
        }

        yield return minutes;
    }

    private static IEnumerable<PlaceCaution> Cautions(WarmPlace place, PlaceRecipe found)
    {
        if (found.Filling.Celsius >= Scalds.Celsius)
        {
            yield return PlaceCaution.HotWater;
        }

        if (place.Kind == PlaceKind.Oven)
        {
            yield return PlaceCaution.OvenOff;
        }

        if (found.Filling.Celsius >= (place.IsBath ? HeatAnswer.YeastBears.Celsius - 2 : HurtsYeast.Celsius))
        {
            yield return PlaceCaution.YeastHeat;
        }

        if (place.IsBath)
        {
            yield return PlaceCaution.WaterOut;
        }

        yield return PlaceCaution.Thermometer;
    }

    private static PerLane PerLaneOf(int lanes, Func<int, double> of)
    {
        var values = new double[lanes];
        for (var lane = 0; lane < lanes; lane++)
        {
            values[lane] = of(lane);
        }

        return new(values);
    }
}
