namespace Doughwright.Engine.Quantities;

/// <summary>Heat that one gram takes up per kelvin, held in J/(g K), which is kJ/(kg K).</summary>
public readonly record struct SpecificHeat : IComparable<SpecificHeat>
{
    private SpecificHeat(double joulesPerGramKelvin) => JoulesPerGramKelvin = Require.Finite(joulesPerGramKelvin, "SpecificHeat");

    /// <summary>The value in J/(g K).</summary>
    public double JoulesPerGramKelvin { get; }

    public static SpecificHeat FromJoulesPerGramKelvin(double joulesPerGramKelvin) => new(joulesPerGramKelvin);

    /// <summary>Heat capacity of a mass, in J/K.</summary>
    public static double operator *(Mass mass, SpecificHeat specificHeat) => mass.Grams * specificHeat.JoulesPerGramKelvin;

    public int CompareTo(SpecificHeat other) => JoulesPerGramKelvin.CompareTo(other.JoulesPerGramKelvin);

    public static bool operator <(SpecificHeat a, SpecificHeat b) => a.CompareTo(b) < 0;

    public static bool operator >(SpecificHeat a, SpecificHeat b) => a.CompareTo(b) > 0;

    public static bool operator <=(SpecificHeat a, SpecificHeat b) => a.CompareTo(b) <= 0;

    public static bool operator >=(SpecificHeat a, SpecificHeat b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{JoulesPerGramKelvin:R} J/(g K)");
}
