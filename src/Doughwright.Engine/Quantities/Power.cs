namespace Doughwright.Engine.Quantities;

/// <summary>Heat or work in a time, held in watts.</summary>
public readonly record struct Power : IComparable<Power>
{
    private Power(double watts) => Watts = Require.Finite(watts, "Power");

    /// <summary>The value in W.</summary>
    public double Watts { get; }

    public static Power FromWatts(double watts) => new(watts);

    public int CompareTo(Power other) => Watts.CompareTo(other.Watts);

    public static bool operator <(Power a, Power b) => a.CompareTo(b) < 0;

    public static bool operator >(Power a, Power b) => a.CompareTo(b) > 0;

    public static bool operator <=(Power a, Power b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Power a, Power b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{Watts:R} W");
}
