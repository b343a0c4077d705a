namespace Doughwright.Engine.Quantities;

/// <summary>A percentage: 12.5 means twelve and a half in a hundred. Fractions from 0 to 1 are plain numbers; this type never is one.</summary>
public readonly record struct Percent : IComparable<Percent>
{
    private Percent(double value) => Value = Require.Finite(value, "Percent");

    /// <summary>The value in %.</summary>
    public double Value { get; }

    public static Percent FromValue(double value) => new(value);

    public double Fraction => Value / 100;

    public static Percent FromFraction(double fraction) => new(fraction * 100);

    /// <summary>A part as a percentage of a whole.</summary>
    public static Percent Of(Mass part, Mass whole) => new(100 * (part / whole));

    public int CompareTo(Percent other) => Value.CompareTo(other.Value);

    public static bool operator <(Percent a, Percent b) => a.CompareTo(b) < 0;

    public static bool operator >(Percent a, Percent b) => a.CompareTo(b) > 0;

    public static bool operator <=(Percent a, Percent b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Percent a, Percent b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{Value:R} %");
}
