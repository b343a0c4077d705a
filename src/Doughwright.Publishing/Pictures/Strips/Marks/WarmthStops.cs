using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Geometry;

namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>A gradient whose stops sit where the class of warmth changes.</summary>
internal static class WarmthStops
{
    /// <summary>Units of the picture between two looks at the warmth.</summary>
    private const double Step = 2.5;

    /// <summary>Before a jump of more kelvins the old colour is held by a stop of its own.</summary>
    private const double Jump = 2;

    public static string Of(double from, double to, TimeScale time, Func<double, Temperature?> warmth)
    {
        var (start, end) = (time.Place(from), time.Place(to));
        var steps = Math.Max(2, (int)Math.Ceiling((end - start) / Step));
        var stops = new List<(string Offset, string Class, double Celsius)>();
        (string Offset, string Class, double Celsius) before = default;
        for (var i = 0; i <= steps; i++)
        {
            var minute = i == 0 ? from : i == steps ? to : time.Minute(start + ((end - start) * i / steps));
            if (warmth(minute) is not { } here)
            {
                continue;
            }

            var now = (Offset: Offset(i, steps), Class: Warmth.Class(here), here.Celsius);
            if (stops.Count == 0 || now.Class != stops[^1].Class)
            {
                if (stops.Count > 0 && before.Offset != stops[^1].Offset && Math.Abs(now.Celsius - before.Celsius) > Jump)
                {
                    stops.Add(before);
                }

                stops.Add(now);
            }

            before = now;
        }

        if (stops.Count > 0 && before.Offset != stops[^1].Offset)
        {
            stops.Add(before);
        }

        return string.Concat(stops.Select(stop => $"<stop offset=\"{stop.Offset}\" class=\"{stop.Class}\"/>"));
    }

    private static string Offset(int step, int steps) =>
        ((double)step / steps).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
}
