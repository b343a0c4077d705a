namespace Doughwright.Engine.Heat.Warming;

/// <summary>
/// A warm place as three lumps in a room - the water, the inside (air with the skin of the walls), the dough with its vessel - and what heat
/// passes between each two for a degree of difference, in W/K. Nought where two do not touch.
/// </summary>
internal sealed record PlaceBodies
{
    /// <summary>Heat capacities in J/K, above nought.</summary>
    public required double WaterJoulesPerKelvin { get; init; }

    public required double InsideJoulesPerKelvin { get; init; }

    public required double DoughJoulesPerKelvin { get; init; }

    public double WaterToInside { get; init; }

    public double InsideToDough { get; init; }

    public double WaterToDough { get; init; }

    public double WaterToRoom { get; init; }

    public double InsideToRoom { get; init; }

    public double DoughToRoom { get; init; }

    /// <summary>Part of the inside's heat capacity that is air and goes out of the door when it is opened, J/K.</summary>
    public double AirJoulesPerKelvin { get; init; }

    /// <summary>A lamp inside, W.</summary>
    public double LampWatts { get; init; }

    /// <summary>Water that lies open, m²; nought under a lid.</summary>
    public double OpenSquareMetres { get; init; }

    /// <summary>The quickest of the three, 1/s: what a step in time must not outrun.</summary>
    public double QuickestPerSecond => Math.Max(
        (WaterToInside + WaterToDough + WaterToRoom) / WaterJoulesPerKelvin,
        Math.Max(
            (WaterToInside + InsideToDough + InsideToRoom) / InsideJoulesPerKelvin,
            (InsideToDough + WaterToDough + DoughToRoom) / DoughJoulesPerKelvin));
}
