namespace Doughwright.Engine.Heat;

/// <summary>What differs from lane to lane in a conduction run. All arrays have one entry per lane.</summary>
internal sealed record ConductionLanes
{
    /// <summary>k, in W/(m K); above nought.</summary>
    public required double[] Conductivity { get; init; }

    /// <summary>ρ c without melting heat, in J/(m³ K); above nought.</summary>
    public required double[] HeatCapacity { get; init; }

    /// <summary>h from the surface, or from the wall, to the air, in W/(m² K); nought for an insulated body.</summary>
    public required double[] Coefficient { get; init; }

    /// <summary>Start of the whole body, in °C.</summary>
    public required double[] StartCelsius { get; init; }

    /// <summary>
    /// Heat taken up between <see cref="MeltsFromCelsius"/> and <see cref="MeltsToCelsius"/>, in J/m³; null when nothing melts.
    /// </summary>
    public double[]? MeltingHeat { get; init; }

    public double MeltsFromCelsius { get; init; } = FatMelting.Butter.From.Celsius;

    public double MeltsToCelsius { get; init; } = FatMelting.Butter.To.Celsius;

    /// <summary>Heat capacity of a bowl or tray over the outer area, in J/(m² K); null when there is none.</summary>
    public double[]? WallCapacity { get; init; }

    /// <summary>Start of the wall, in °C; null when it is as warm as the body.</summary>
    public double[]? WallStartCelsius { get; init; }

    /// <summary>Where its outside is wet, or differs below; null for one that is dry and the same all round.</summary>
    public OpenFaces? Faces { get; init; }

    public int Count => StartCelsius.Length;

    /// <summary>A fault in the arrays, in words; null when there is none.</summary>
    public string? Fault()
    {
        double[]?[] all = [Conductivity, HeatCapacity, Coefficient, StartCelsius, MeltingHeat, WallCapacity, WallStartCelsius];
        if (Count == 0 || all.Any(values => values is not null && values.Length != Count))
        {
            return "Every array needs one entry per lane, and there must be a lane.";
        }

        if (all.Any(values => values is not null && !values.All(double.IsFinite)))
        {
            return "Every entry must be a finite number.";
        }

        if (Conductivity.Any(value => value <= 0) || HeatCapacity.Any(value => value <= 0))
        {
            return "Conductivity and heat capacity must be above nought.";
        }

        double[]?[] notNegative = [Coefficient, MeltingHeat, WallCapacity];
        return notNegative.Any(values => values is not null && values.Any(value => value < 0)) || !(MeltsToCelsius > MeltsFromCelsius)
            ? "Coefficients, melting heats and wall capacities must not be below nought, and melting must end above where it begins."
            : null;
    }
}
