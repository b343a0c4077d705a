namespace Doughwright.Engine.Quantities;

/// <summary>A mass, held in grams because every formula of the trade is in grams.</summary>
public readonly record struct Mass : IComparable<Mass>
{
    private Mass(double grams) => Grams = Require.Finite(grams, "Mass");

    /// <summary>The value in g.</summary>
    public double Grams { get; }

    public static Mass FromGrams(double grams) => new(grams);

    public static Mass Zero => default;

    public static Mass operator +(Mass a, Mass b) => new(a.Grams + b.Grams);

    public static Mass operator -(Mass a, Mass b) => new(a.Grams - b.Grams);

    public static Mass operator *(Mass a, double factor) => new(a.Grams * factor);

    public static Mass operator *(double factor, Mass a) => a * factor;

    public static Mass operator /(Mass a, double divisor) => new(a.Grams / divisor);

    public static double operator /(Mass a, Mass b) => a.Grams / b.Grams;

    public double Kilograms => Grams / 1000;

    public static Mass FromKilograms(double kilograms) => new(kilograms * 1000);

    public int CompareTo(Mass other) => Grams.CompareTo(other.Grams);

    public static bool operator <(Mass a, Mass b) => a.CompareTo(b) < 0;

    public static bool operator >(Mass a, Mass b) => a.CompareTo(b) > 0;

    public static bool operator <=(Mass a, Mass b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Mass a, Mass b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{Grams:R} g");
}
