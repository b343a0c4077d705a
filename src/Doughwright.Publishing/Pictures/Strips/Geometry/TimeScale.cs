namespace Doughwright.Publishing.Pictures.Strips.Geometry;

/// <summary>Where a minute lies along the picture. Even, but for long waits that are folded.</summary>
internal sealed class TimeScale
{
    private readonly List<(double Minute, double Place)> knots = [];

    /// <param name="origin">Place of minute 0.</param>
    /// <param name="perMinute">Units of the picture for a minute, above 0.</param>
    /// <param name="folds">In order of time, not touching.</param>
    public TimeScale(double origin, double perMinute, IReadOnlyList<FoldedWait> folds)
    {
        PerMinute = perMinute;
        Folds = folds;
        knots.Add((0, origin));
        foreach (var fold in folds)
        {
            var place = Place(fold.From);
            knots.Add((fold.From, place));
            knots.Add((fold.To, place + FoldedWait.Drawn));
        }
    }

    public double PerMinute { get; }

    public IReadOnlyList<FoldedWait> Folds { get; }

    public double Place(double minute)
    {
        var (index, at) = Last(knot => knot.Minute <= minute);
        return at.Place + ((minute - at.Minute) * Slope(index));
    }

    /// <summary>The minute at a place: the other way round.</summary>
    public double Minute(double place)
    {
        var (index, at) = Last(knot => knot.Place <= place);
        return at.Minute + ((place - at.Place) / Slope(index));
    }

    /// <summary>The minute that lies so many units of the picture from another.</summary>
    public double Shift(double minute, double units) => Minute(Place(minute) + units);

    private (int Index, (double Minute, double Place) Knot) Last(Predicate<(double Minute, double Place)> reached)
    {
        var index = Math.Max(0, knots.FindLastIndex(reached));
        return (index, knots[index]);
    }

    // Folds lie between every odd knot and the next: knot 0 is the origin.
    private double Slope(int index) => index % 2 == 1 && index + 1 < knots.Count
        ? FoldedWait.Drawn / (knots[index + 1].Minute - knots[index].Minute)
        : PerMinute;
}
