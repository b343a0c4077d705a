using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

internal enum CoolingDirection
{
    Cool,
    Warm,
}

/// <summary>
/// A temperature to cool or to warm to. One that lies within half a kelvin of the air, which nothing would ever quite reach, counts as
/// reached when the body is within half a kelvin of the air.
/// </summary>
internal sealed record CoolingTarget(CoolingDirection Direction, Temperature Temperature)
{
    /// <summary>What counts as the air's own temperature, in K.</summary>
    public const double Nearness = 0.5;

    private double Sign => Direction == CoolingDirection.Cool ? 1 : -1;

    /// <summary>The temperature to wait for in an air, in °C; null when it can never be reached there.</summary>
    public double? In(double airCelsius)
    {
        var above = Sign * (Temperature.Celsius - airCelsius);
        return above switch
        {
            >= Nearness => Temperature.Celsius,
            >= -Nearness => airCelsius + (Sign * Nearness),
            _ => null,
        };
    }

    public bool IsReached(double celsius, double waitedForCelsius) => Sign * (celsius - waitedForCelsius) <= 0;
}
