namespace Doughwright.Engine.Quantities;

/// <summary>A volume, held in litres, as bowls and tins are sold.</summary>
public readonly record struct Volume : IComparable<Volume>
{
    private Volume(double litres) => Litres = Require.Finite(litres, "Volume");

    /// <summary>The value in l.</summary>
    public double Litres { get; }

    public static Volume FromLitres(double litres) => new(litres);

    public static double operator /(Volume a, Volume b) => a.Litres / b.Litres;

    public static Volume operator *(Volume a, double factor) => new(a.Litres * factor);

    public int CompareTo(Volume other) => Litres.CompareTo(other.Litres);

    public static bool operator <(Volume a, Volume b) => a.CompareTo(b) < 0;

    public static bool operator >(Volume a, Volume b) => a.CompareTo(b) > 0;

    public static bool operator <=(Volume a, Volume b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Volume a, Volume b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{Litres:R} l");
}
