using Doughwright.Engine.Heat;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Why a cooling takes as long as it does, and why a scald starts where it does.</summary>
internal static class CoolReasons
{
    public static Reason Of(StepInput input, Cooling cooling, double start, double target, double minutes, double coefficient, bool isSolved) => Reason.From(
        "cooling-minutes",
        minutes,
        "min",
        [
            Reason.Leaf("starts-at", start, "°C"),
            Reason.Leaf("ends-at", target, "°C"),
            Reason.Leaf("air", input.Air.Knots[0].Air.Celsius, "°C"),
            Reason.Leaf("outer-coefficient", coefficient, "W/(m² K)", source: isSolved ? null : "exchange-defaults"),
            HowFollowed(cooling, coefficient),
        ]);

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
