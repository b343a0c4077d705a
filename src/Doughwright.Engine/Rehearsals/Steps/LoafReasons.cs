namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Why a loaf cools as long as it does.</summary>
internal static class LoafReasons
{
    public static Reason Of(Rack rack, double start, double end, double minutes, CooledTo until) => Reason.From(
        "loaf-cooling-minutes",
        minutes,
        "min",
        [
            Reason.Leaf("core-starts-at", start, "°C"),
            Reason.Leaf("core-ends-at", end, "°C", source: "house-bake-lanes"),
            Reason.Leaf("air", rack.Celsius, "°C"),
            Reason.Leaf(rack.InTin ? "stays-in-tin" : "turned-out", null, "", source: "hot-surfaces"),
            Reason.Leaf(KindOf(until), null, ""),
        ]);

    private static string KindOf(CooledTo until) => until switch
    {
        CooledTo.Minutes => "cooled-for-minutes",
        CooledTo.AsWritten => "cooled-as-written",
        CooledTo.SameCore => "cooled-to-same-core",
        CooledTo.NearRoom => "cooled-as-near-the-room",
        _ => "cooled-out-in-warm-room",
    };
}
