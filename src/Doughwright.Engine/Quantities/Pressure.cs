namespace Doughwright.Engine.Quantities;

/// <summary>An absolute pressure, held in pascals.</summary>
public readonly record struct Pressure : IComparable<Pressure>
{
    private Pressure(double pascals) => Pascals = Require.Finite(pascals, "Pressure");

    /// <summary>The value in Pa.</summary>
    public double Pascals { get; }

    public static Pressure FromPascals(double pascals) => new(pascals);

    public double Kilopascals => Pascals / 1000;

    public int CompareTo(Pressure other) => Pascals.CompareTo(other.Pascals);

    public static bool operator <(Pressure a, Pressure b) => a.CompareTo(b) < 0;

    public static bool operator >(Pressure a, Pressure b) => a.CompareTo(b) > 0;

    public static bool operator <=(Pressure a, Pressure b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Pressure a, Pressure b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{Pascals:R} Pa");
}
