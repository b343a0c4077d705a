using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Why a cooling takes as long as it does, and why a scald starts where it does.</summary>
internal static class CoolReasons
{
    /// <summary>K that are told apart.</summary>
    private const double Told = 0.05;

    /// <param name="isNear">Whether what is waited for is itself no more than nearly the air.</param>
    public static Reason Of(
        StepInput input, Cooling cooling, double start, double target, double minutes, double coefficient, bool isSolved, bool isNear = false) => Reason.From(
        "cooling-minutes",
        minutes,
        "min",
        [
            Reason.Leaf("starts-at", start, "°C"),
            Reason.Leaf("ends-at", target, "°C"),
            Reason.Leaf("air", input.Air.Knots[0].Air.Celsius, "°C"),
            .. isNear || StopsShort(cooling.Target, target) ? [Reason.Leaf("nearly-the-air", null, "")] : Array.Empty<Reason>(),
            Reason.Leaf("outer-coefficient", coefficient, "W/(m² K)", source: isSolved ? null : "exchange-defaults"),
            .. Evaporates(input, cooling, start, coefficient),
            HowFollowed(cooling, coefficient),
        ]);

    /// <summary>Whether the air lets it come no further than near to what is wanted.</summary>
    private static bool StopsShort(CoolingTarget wanted, double ends) =>
        wanted.Direction == CoolingDirection.Cool ? ends > wanted.Temperature.Celsius + Told : ends < wanted.Temperature.Celsius - Told;

    /// <summary>What the wet part of it loses by evaporation while it is as hot as at first.</summary>
    private static IEnumerable<Reason> Evaporates(StepInput input, Cooling cooling, double start, double coefficient)
    {
        if (cooling.Body.Faces is { Wet: > 0 } faces)
        {
            var air = input.Air.At(Duration.Zero);
            var loses = Evaporation.HeatFlux(faces.Convective * coefficient, Temperature.FromCelsius(start), air, faces.Humidity, waterActivity: 1);
            yield return Reason.Leaf("evaporates-at-first", loses, "W/m²", source: "lewis-evaporation");
        }
    }

    /// <summary>Whether one temperature is enough for it, which its Biot number decided before anything was measured.</summary>
    private static Reason HowFollowed(Cooling cooling, double coefficient) => cooling.IsLumped
        ? Reason.Leaf("one-temperature", cooling.Body.Biot(coefficient), "", source: "biot-rule")
        : Reason.Leaf("inside-followed", cooling.Body.Biot(coefficient), "", source: "biot-rule");

    public static Reason OfScald(Bowl bowl, double celsius, StepOutcome cooled)
    {
        var poured = MixReasons.Of(bowl, celsius, 0) with { Kind = "scald-temperature" };
        return cooled.Why?.Invoke() is { } cooling ? cooling with { Parts = [poured, .. cooling.Parts] } : poured;
    }
}
