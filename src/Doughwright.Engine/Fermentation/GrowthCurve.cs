namespace Doughwright.Engine.Fermentation;

/// <summary>The constants of <see cref="SourdoughGrowth"/>.</summary>
/// <param name="A">1/h, per K to the power of <paramref name="B"/>.</param>
/// <param name="C">1/K.</param>
/// <param name="MaximumCelsius">From here on nothing grows.</param>
internal sealed record GrowthCurve(double A, double B, double C, double MaximumCelsius);
