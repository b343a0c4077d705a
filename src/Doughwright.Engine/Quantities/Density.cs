namespace Doughwright.Engine.Quantities;

/// <summary>A density, held in kg/m³.</summary>
public readonly record struct Density : IComparable<Density>
{
    private Density(double kilogramsPerCubicMetre) => KilogramsPerCubicMetre = Require.Finite(kilogramsPerCubicMetre, "Density");

    /// <summary>The value in kg/m³.</summary>
    public double KilogramsPerCubicMetre { get; }

    public static Density FromKilogramsPerCubicMetre(double kilogramsPerCubicMetre) => new(kilogramsPerCubicMetre);

    public int CompareTo(Density other) => KilogramsPerCubicMetre.CompareTo(other.KilogramsPerCubicMetre);

    public static bool operator <(Density a, Density b) => a.CompareTo(b) < 0;

    public static bool operator >(Density a, Density b) => a.CompareTo(b) > 0;

    public static bool operator <=(Density a, Density b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Density a, Density b) => a.CompareTo(b) >= 0;

    public override string ToString() => FormattableString.Invariant($"{KilogramsPerCubicMetre:R} kg/m³");
}
