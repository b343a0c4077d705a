using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Warming;

namespace Doughwright.Publishing.Pictures.Warming;

/// <summary>Where a time and a temperature lie in the picture of a place. The water is left out of the height: it has a ribbon of its own.</summary>
internal sealed class PlaceFrame
{
    public const double Width = 520;
    public const double Left = 44;

    /// <summary>Right of it stand the names of the lines.</summary>
    public const double Right = 382;

    public const double Foot = 214;
    public const double Head = 16;

    private const double MarginKelvins = 0.5;
    private const double LeastKelvins = 4;

    private static readonly double[] MinuteSteps = [10, 15, 30, 60, 120, 180, 240, 360];

    private readonly double from;

    private PlaceFrame(double from, double to, double lowest, double highest)
    {
        (this.from, To, Lowest, Highest) = (from, to, lowest, highest);
        StepMinutes = MinuteSteps.FirstOrDefault(minutes => to / minutes <= 5, MinuteSteps[^1]);
    }

    public double To { get; }

    public double StepMinutes { get; }

    public double Lowest { get; }

    public double Highest { get; }

    public static PlaceFrame Of(PlaceAnswer place, Temperature target)
    {
        var celsius = place.Course.SelectMany(Drawn).Append(target.Celsius).ToList();
        var (low, high) = (celsius.Min() - MarginKelvins, celsius.Max() + MarginKelvins);
        var missing = Math.Max(0, LeastKelvins - (high - low)) / 2;
        return new(place.Course[0].After.Minutes, place.Course[^1].After.Minutes, low - missing, high + missing);
    }

    public double X(Duration after) => Left + ((after.Minutes - from) / (To - from) * (Right - Left));

    public double Y(Temperature temperature) => Foot - ((temperature.Celsius - Lowest) / (Highest - Lowest) * (Foot - Head));

    public IReadOnlyList<(double X, double Y)> Run(IEnumerable<PlacePoint> course, Func<PlacePoint, Temperature?> of) =>
        [.. course.Where(point => of(point) is not null).Select(point => (X(point.After), Y(of(point)!.Value)))];

    /// <summary>The range of a line: its low ends there, its high ends back.</summary>
    public IReadOnlyList<(double X, double Y)> Band(IReadOnlyList<PlacePoint> course, Func<PlacePoint, Estimate<Temperature>?> of) =>
        [.. Run(course, point => of(point)?.Low), .. Run(course, point => of(point)?.High).Reverse()];

    private static IEnumerable<double> Drawn(PlacePoint point)
    {
        yield return point.Room.Celsius;
        yield return point.Around.Low.Celsius;
        yield return point.Around.High!.Value.Celsius;
        if (point.Dough is { } dough)
        {
            yield return dough.Low.Celsius;
            yield return dough.High!.Value.Celsius;
        }
    }
}
