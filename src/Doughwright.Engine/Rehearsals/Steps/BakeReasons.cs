namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Why a bake lasts as long as it does.</summary>
internal static class BakeReasons
{
    public static Reason Of(StepInput input, double startCelsius, double coreCelsius, double share, double minutes) => Reason.From(
        "bake-minutes",
        minutes,
        "min",
        [
            Reason.Leaf("dough-enters", startCelsius, "°C"),
            Reason.Leaf("water-boils", input.Stage.Boils.Celsius, "°C", source: "iapws-if97"),
            Reason.Leaf("core-share", 100 * share, "%", source: "house-bake"),
            Reason.Leaf("core-reaches", coreCelsius, "°C", source: "core-bands"),
            .. AuthorsOven.IsOffByNobodyKnows(input.Stage) ? [Reason.Leaf("oven-off-dial", BakeLaws.OvenBias.Spread, "K", source: BakeLaws.OvenBias.Source)] : Array.Empty<Reason>(),
        ]);
}
