namespace Doughwright.Engine.Heat;

/// <summary>What differs from lane to lane while a body cools or warms. All arrays have one entry per lane.</summary>
/// <param name="StartCelsius">Body and vessel at the start, in °C.</param>
/// <param name="WattsPerSquareMetreKelvin">h over the outer area; above nought.</param>
internal sealed record CoolingLanes(double[] StartCelsius, double[] WattsPerSquareMetreKelvin)
{
    /// <summary>Factor on the body's conductivity; null for one.</summary>
    public double[]? ConductivityScale { get; init; }

    /// <summary>Factor on the body's heat capacity; null for one.</summary>
    public double[]? HeatCapacityScale { get; init; }

    /// <summary>Factor on the body's melting heat; null for one.</summary>
    public double[]? MeltingScale { get; init; }

    public int Count => StartCelsius.Length;

    /// <summary>Whether the lanes differ in their coefficients at most.</summary>
    public bool IsOneBody =>
        IsSame(StartCelsius) && IsSame(ConductivityScale) && IsSame(HeatCapacityScale) && IsSame(MeltingScale);

    /// <summary>The central lane alone.</summary>
    public CoolingLanes Central => new([StartCelsius[0]], [WattsPerSquareMetreKelvin[0]])
    {
        ConductivityScale = ConductivityScale?[..1],
        HeatCapacityScale = HeatCapacityScale?[..1],
        MeltingScale = MeltingScale?[..1],
    };

    public double HeatCapacityScaleOf(int lane) => HeatCapacityScale is null ? 1 : HeatCapacityScale[lane];

    /// <summary>The lanes of a conduction run in a body.</summary>
    public ConductionLanes In(Body body) => new()
    {
        Conductivity = Scaled(body.Properties.Conductivity.WattsPerMetreKelvin, ConductivityScale),
        HeatCapacity = Scaled(body.Properties.JoulesPerCubicMetreKelvin, HeatCapacityScale),
        Coefficient = WattsPerSquareMetreKelvin,
        StartCelsius = StartCelsius,
        MeltingHeat = body.MeltingJoulesPerCubicMetre > 0 ? Scaled(body.MeltingJoulesPerCubicMetre, MeltingScale) : null,
        MeltsFromCelsius = (body.Melting ?? FatMelting.Butter).From.Celsius,
        MeltsToCelsius = (body.Melting ?? FatMelting.Butter).To.Celsius,
        Faces = body.Faces,
        WallCapacity = body.WallJoulesPerKelvin > 0 ? Scaled(body.WallJoulesPerSquareMetreKelvin, null) : null,
    };

    private static bool IsSame(double[]? values) => values is null || !values.AsSpan().ContainsAnyExcept(values[0]);

    private double[] Scaled(double value, double[]? scale)
    {
        var scaled = new double[Count];
        for (var lane = 0; lane < scaled.Length; lane++)
        {
            scaled[lane] = value * (scale is null ? 1 : scale[lane]);
        }

        return scaled;
    }
}
