namespace Doughwright.Engine.Quantities;

/// <summary>A thermal conductivity, held in W/(m K).</summary>
public readonly record struct Conductivity : IComparable<Conductivity>
{
    private Conductivity(double wattsPerMetreKelvin) => WattsPerMetreKelvin = Require.Finite(wattsPerMetreKelvin, "Conductivity");

    /// <summary>The value in W/(m K).</summary>
    public double WattsPerMetreKelvin { get; }

    public static Conductivity FromWattsPerMetreKelvin(double wattsPerMetreKelvin) => new(wattsPerMetreKelvin);

    public int CompareTo(Conductivity other) => WattsPerMetreKelvin.CompareTo(other.WattsPerMetreKelvin);

    public static bool operator <(Conductivity a, Conductivity b) => a.CompareTo(b) < 0;

    public static bool operator >(Conductivity a, Conductivity b) => a.CompareTo(b) > 0;

    public static bool operator <=(Conductivity a, Conductivity b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Conductivity a, Conductivity b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{WattsPerMetreKelvin:R} W/(m K)");
}
