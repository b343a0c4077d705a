using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>
/// What the author measured at a step in the old size, and what the same step comes to in the new one in the same kitchen, worked out from
/// that measurement. One of the two pairs is set.
/// </summary>
/// <param name="Step">Id of the step.</param>
/// <param name="Name">Its name.</param>
/// <param name="Stands">Whether the measurement is kept: the size shows less than a reading is uncertain.</param>
public sealed record ResizedMeasure(string Step, string Name, bool Stands)
{
    /// <summary>Id of the other way of the step in which it was measured; null for the step as written.</summary>
    public string? Variant { get; init; }

    /// <summary>Minutes in the old size.</summary>
    public Duration? Time { get; init; }

    /// <summary>Minutes in the new one; null when they cannot be worked out.</summary>
    public Duration? NewTime { get; init; }

    /// <summary>Low end of their range.</summary>
    public Duration? NewTimeLow { get; init; }

    /// <summary>High end of their range; null when it is open.</summary>
    public Duration? NewTimeHigh { get; init; }

    /// <summary>Temperature in the old size.</summary>
    public Temperature? Temperature { get; init; }

    /// <summary>Temperature in the new one; null when it cannot be worked out.</summary>
    public Temperature? NewTemperature { get; init; }

    /// <summary>Low end of its range.</summary>
    public Temperature? NewTemperatureLow { get; init; }

    /// <summary>High end of its range.</summary>
    public Temperature? NewTemperatureHigh { get; init; }
}
