namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Why a rise takes as long as it does here: home, then what the dough's temperature and the thinner air change, so that the parts add up.</summary>
internal static class RiseReasons
{
    public static Reason OfBulk(RisePhase phase, Anchor? anchor, double minutes) => Of("bulk-minutes", phase, anchor, minutes);

    public static Reason OfProof(RisePhase phase, Anchor? anchor, double minutes) => Of("proof-minutes", phase, anchor, minutes);

    private static Reason Of(string kind, RisePhase phase, Anchor? anchor, double minutes)
    {
        var circumstances = new List<Reason>
        {
            Reason.Leaf("dough-at-start", phase.Start.Central, "°C"),
            Reason.Leaf("air", phase.Input.Air.Knots[0].Air.Celsius, "°C"),
            Reason.Leaf("pressure", phase.Input.Stage.Pressure.Kilopascals, "kPa", source: "us-standard-atmosphere-1976"),
        };
        if (anchor?.HomeMinutes is not { } home || !double.IsFinite(minutes))
        {
            return Reason.From(kind, double.IsFinite(minutes) ? minutes : null, "min", circumstances, source: "rise-model");
        }

        var change = Reason.From("change-of-kitchen", minutes - home.Central, "min", circumstances, source: "rise-model");
        return Reason.Sum(kind, minutes, "min", [Reason.Leaf("at-home", home.Central, "min"), change]);
    }
}
