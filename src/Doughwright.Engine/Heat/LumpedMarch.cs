using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>A body that has one temperature throughout, with its vessel: exact between the changes of the air.</summary>
/// <remarks>T = T_air + (T_0 - T_air) exp(-t/τ), τ = (ρ c V + C_wall)/(h A). Valid for Biot numbers below 0.1. Source: biot-rule.</remarks>
internal sealed class LumpedMarch(Body body, CoolingTarget target, AirProfile air) : ICoolingMarch
{
    private const int PointsOfWay = 48;

    public CoolingTimes TimeToReach(CoolingLanes lanes, double[]? limitMinutes)
    {
        var settles = air.Knots[^1].Air.Celsius;
        var minutes = new double[lanes.Count];
        var end = new double[lanes.Count];
        for (var lane = 0; lane < lanes.Count; lane++)
        {
            (minutes[lane], end[lane]) = Reach(lanes.StartCelsius[lane], MinutesConstant(lanes, lane), settles);
            if (limitMinutes is not null && minutes[lane] > limitMinutes[lane])
            {
                (minutes[lane], end[lane]) = (double.PositiveInfinity, settles);
            }
        }

        return new(minutes, end, settles);
    }

    public double[] MeanAfter(CoolingLanes lanes, Duration time)
    {
        var celsius = lanes.StartCelsius.ToArray();
        foreach (var (airCelsius, from, to) in Spells())
        {
            var spell = Math.Min(to, time.Minutes) - from;
            for (var lane = 0; lane < celsius.Length && spell > 0; lane++)
            {
                celsius[lane] = After(celsius[lane], airCelsius, spell / MinutesConstant(lanes, lane));
            }
        }

        return celsius;
    }

    public IReadOnlyList<(double Minutes, double Celsius)> Way(CoolingLanes one, double minutes)
    {
        var way = new (double, double)[PointsOfWay - 1];
        for (var point = 1; point < PointsOfWay; point++)
        {
            var at = minutes * point / PointsOfWay;
            way[point - 1] = (at, MeanAfter(one, Duration.FromMinutes(at))[0]);
        }

        return way;
    }

    private static double After(double start, double airCelsius, double constants) =>
        airCelsius + ((start - airCelsius) * Elementary.Exp(-constants));

    private (double Minutes, double Celsius) Reach(double celsius, double constant, double settles)
    {
        foreach (var (airCelsius, from, to) in Spells())
        {
            if (target.In(airCelsius) is { } waitedFor)
            {
                if (target.IsReached(celsius, waitedFor))
                {
                    return (from, celsius);
                }

                var minutes = from + (constant * Elementary.Log((celsius - airCelsius) / (waitedFor - airCelsius)));
                if (minutes <= to)
                {
                    return (minutes, waitedFor);
                }
            }

            if (double.IsFinite(to))
            {
                celsius = After(celsius, airCelsius, (to - from) / constant);
            }
        }

        return (double.PositiveInfinity, settles);
    }

    private double MinutesConstant(CoolingLanes lanes, int lane)
    {
        var capacity = (lanes.HeatCapacityScaleOf(lane) * body.JoulesPerKelvin) + body.WallJoulesPerKelvin;
        return capacity / (lanes.WattsPerSquareMetreKelvin[lane] * body.OuterSquareMetres) / 60;
    }

    private IEnumerable<(double AirCelsius, double FromMinutes, double ToMinutes)> Spells()
    {
        for (var knot = 0; knot < air.Knots.Count; knot++)
        {
            var to = knot + 1 < air.Knots.Count ? air.Knots[knot + 1].From.Minutes : double.PositiveInfinity;
            yield return (air.Knots[knot].Air.Celsius, air.Knots[knot].From.Minutes, to);
        }
    }
}
