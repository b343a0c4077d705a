namespace Doughwright.Engine.Quantities;

/// <summary>A length of time, held in minutes. Elapsed time only: the engine knows no clock.</summary>
public readonly record struct Duration : IComparable<Duration>
{
    private Duration(double minutes) => Minutes = Require.Finite(minutes, "Duration");

    /// <summary>The value in min.</summary>
    public double Minutes { get; }

    public static Duration FromMinutes(double minutes) => new(minutes);

    public static Duration Zero => default;

    public static Duration operator +(Duration a, Duration b) => new(a.Minutes + b.Minutes);

    public static Duration operator -(Duration a, Duration b) => new(a.Minutes - b.Minutes);

    public static Duration operator *(Duration a, double factor) => new(a.Minutes * factor);

    public static Duration operator *(double factor, Duration a) => a * factor;

    public static Duration operator /(Duration a, double divisor) => new(a.Minutes / divisor);

    public static double operator /(Duration a, Duration b) => a.Minutes / b.Minutes;

    public double Seconds => Minutes * 60;

    public double Hours => Minutes / 60;

    public static Duration FromSeconds(double seconds) => new(seconds / 60);

    public static Duration FromHours(double hours) => new(hours * 60);

    public int CompareTo(Duration other) => Minutes.CompareTo(other.Minutes);

    public static bool operator <(Duration a, Duration b) => a.CompareTo(b) < 0;

    public static bool operator >(Duration a, Duration b) => a.CompareTo(b) > 0;

    public static bool operator <=(Duration a, Duration b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Duration a, Duration b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{Minutes:R} min");
}
