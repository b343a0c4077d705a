using Doughwright.Engine.Heat;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>How a part cools or warms towards a temperature: the steps of the run that told its minutes.</summary>
internal static class CoolingWay
{
    /// <summary>What moves less than this between two points is drawn by fewer of them.</summary>
    private const double Kelvins = 0.1;

    public static IReadOnlyList<WayPoint> Of(Cooling cooling, CoolingLanes lanes, double minutes, double endCelsius)
    {
        var start = lanes.StartCelsius[0];
        if (minutes <= 0)
        {
            return [new(0, start, null), new(minutes, endCelsius, null)];
        }

        var way = new List<WayPoint> { new(0, start, null) };
        foreach (var (at, celsius) in cooling.Way(lanes, minutes))
        {
            if (Math.Abs(celsius - way[^1].Celsius!.Value) >= Kelvins || at - way[^1].Minutes > minutes / 24)
            {
                way.Add(new(at, celsius, null));
            }
        }

        way.Add(new(minutes, endCelsius, null));
        return way;
    }
}
