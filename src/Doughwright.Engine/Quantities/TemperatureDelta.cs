namespace Doughwright.Engine.Quantities;

/// <summary>A difference of two temperatures, held in kelvins. A different type from a temperature, so that the two cannot be mixed up.</summary>
public readonly record struct TemperatureDelta : IComparable<TemperatureDelta>
{
    private TemperatureDelta(double kelvins) => Kelvins = Require.Finite(kelvins, "TemperatureDelta");

    /// <summary>The value in K.</summary>
    public double Kelvins { get; }

    public static TemperatureDelta FromKelvins(double kelvins) => new(kelvins);

    public static TemperatureDelta Zero => default;

    public static TemperatureDelta operator +(TemperatureDelta a, TemperatureDelta b) => new(a.Kelvins + b.Kelvins);

    public static TemperatureDelta operator -(TemperatureDelta a, TemperatureDelta b) => new(a.Kelvins - b.Kelvins);

    public static TemperatureDelta operator *(TemperatureDelta a, double factor) => new(a.Kelvins * factor);

    public static TemperatureDelta operator *(double factor, TemperatureDelta a) => a * factor;

    public static TemperatureDelta operator /(TemperatureDelta a, double divisor) => new(a.Kelvins / divisor);

    public static double operator /(TemperatureDelta a, TemperatureDelta b) => a.Kelvins / b.Kelvins;

    public int CompareTo(TemperatureDelta other) => Kelvins.CompareTo(other.Kelvins);

    public static bool operator <(TemperatureDelta a, TemperatureDelta b) => a.CompareTo(b) < 0;

    public static bool operator >(TemperatureDelta a, TemperatureDelta b) => a.CompareTo(b) > 0;

    public static bool operator <=(TemperatureDelta a, TemperatureDelta b) => a.CompareTo(b) <= 0;

    public static bool operator >=(TemperatureDelta a, TemperatureDelta b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{Kelvins:R} K");
}
