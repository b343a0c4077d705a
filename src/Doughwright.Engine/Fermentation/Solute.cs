namespace Doughwright.Engine.Fermentation;

/// <summary>
/// Something dissolved in water that is no salt, with its constant in Norrish's equation. Source: norrish-baeza-2010, alditol-k.
/// </summary>
/// <param name="NorrishK">Without unit.</param>
internal sealed record Solute(double GramsPerMole, double NorrishK)
{
    public static Solute Sucrose { get; } = new(342.30, 6.47);

    public static Solute Glucose { get; } = new(180.16, 2.25);

    public static Solute Glycerol { get; } = new(92.09, 1.16);
}
