using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What the author's own cooling says about the author's bowl.</summary>
internal static class CoolFindings
{
    public static Finding Impossible(StepInput input, Temperature target, double minutes) => StepFindings.About(
        input.Step,
        "cooling-time-impossible",
        Grade.Warning,
        false,
        ("target", target),
        ("measured", Duration.FromMinutes(minutes)),
        ("air", input.Air.At(Duration.Zero)));

    public static IReadOnlyList<Finding> Unusual(
        StepInput input, PerLane start, Cooling cooling, CoolingLanes expected, double coefficient, double minutes)
    {
        var air = input.Air.At(Duration.Zero).Celsius;
        var exchange = Bodies.ExchangeOf(input.Step, start.Central, cooling.Target.Temperature.Celsius, air, cooling.Body.Faces);
        if (Math.Abs(exchange.StandardDeviationsOff(coefficient)) <= StepFindings.FarFromPrior)
        {
            return [];
        }

        var usual = cooling.TimeToReach(expected).Minutes[0];
        return double.IsFinite(usual)
            ? [StepFindings.About(
                input.Step,
                coefficient > exchange.WattsPerSquareMetreKelvin ? "cooling-faster-than-usual" : "cooling-slower-than-usual",
                Grade.Warning,
                false,
                ("measured", Duration.FromMinutes(minutes)),
                ("expected", Duration.FromMinutes(usual)))]
            : [];
    }
}
