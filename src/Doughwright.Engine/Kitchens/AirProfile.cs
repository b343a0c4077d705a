using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Kitchens;

/// <summary>
/// Air temperature over elapsed time: constant from each knot to the next, as a heating that turns on and off. The first knot lies at zero.
/// </summary>
public sealed class AirProfile : IEquatable<AirProfile>
{
    private readonly (Duration From, Temperature Air)[] knots;

    private AirProfile((Duration, Temperature)[] knots) => this.knots = knots;

    public IReadOnlyList<(Duration From, Temperature Air)> Knots => knots;

    public bool IsConstant => knots.Length == 1;

    /// <summary>Air that stays as it is.</summary>
    public static AirProfile Constant(Temperature air) => new([(Duration.Zero, air)]);

    /// <summary>A profile from knots in rising order of time, the first at zero.</summary>
    /// <exception cref="ArgumentException">The knots are empty, unsorted or do not begin at zero.</exception>
    public static AirProfile Of(IEnumerable<(Duration From, Temperature Air)> knots)
    {
        var sorted = knots.ToArray();
        if (sorted.Length == 0 || sorted[0].From != Duration.Zero || sorted.Zip(sorted.Skip(1)).Any(pair => pair.First.From >= pair.Second.From))
        {
            throw new ArgumentException("An air profile needs knots in rising order, the first at zero.", nameof(knots));
        }

        return new(sorted);
    }

    /// <summary>The air so long after the start.</summary>
    public Temperature At(Duration elapsed)
    {
        var index = knots.Length - 1;
        while (index > 0 && knots[index].From > elapsed)
        {
            index--;
        }

        return knots[index].Air;
    }

    /// <summary>The same air seen by someone who starts later.</summary>
    public AirProfile StartingAt(Duration later) => IsConstant
        ? this
        : Of(knots.Where(knot => knot.From > later).Select(knot => (knot.From - later, knot.Air)).Prepend((Duration.Zero, At(later))));

    /// <summary>The mean over so long a time from the start, longer than zero.</summary>
    internal Temperature MeanOver(Duration time)
    {
        var sum = 0.0;
        for (var index = 0; index < knots.Length && knots[index].From < time; index++)
        {
            var to = index + 1 < knots.Length && knots[index + 1].From < time ? knots[index + 1].From : time;
            sum += knots[index].Air.Celsius * (to - knots[index].From).Minutes;
        }

        return Temperature.FromCelsius(sum / time.Minutes);
    }

    public bool Equals(AirProfile? other) => other is not null && knots.AsSpan().SequenceEqual(other.knots);

    public override bool Equals(object? obj) => Equals(obj as AirProfile);

    public override int GetHashCode() => HashCode.Combine(knots.Length, knots[0]);
}
