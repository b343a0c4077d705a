namespace Doughwright.Engine.Quantities;

/// <summary>A length, held in metres. Altitudes are lengths above the sea.</summary>
public readonly record struct Length : IComparable<Length>
{
    private Length(double metres) => Metres = Require.Finite(metres, "Length");

    /// <summary>The value in m.</summary>
    public double Metres { get; }

    /// <summary>The value in international feet.</summary>
    public double Feet => Metres / 0.3048;

    public static Length FromMetres(double metres) => new(metres);

    public static Length Zero => default;

    public static Length operator +(Length a, Length b) => new(a.Metres + b.Metres);

    public static Length operator -(Length a, Length b) => new(a.Metres - b.Metres);

    public static Length operator *(Length a, double factor) => new(a.Metres * factor);

    public static Length operator *(double factor, Length a) => a * factor;

    public static Length operator /(Length a, double divisor) => new(a.Metres / divisor);

    public static double operator /(Length a, Length b) => a.Metres / b.Metres;

    public double Millimetres => 1000 * Metres;

    public static Length FromMillimetres(double millimetres) => new(millimetres / 1000);

    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    public static bool operator <(Length a, Length b) => a.CompareTo(b) < 0;

    public static bool operator >(Length a, Length b) => a.CompareTo(b) > 0;

    public static bool operator <=(Length a, Length b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Length a, Length b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{Metres:R} m");
}
