namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Why a rise takes as long as it does here: home, then what the dough's warmth and the thinner air change, so that the parts add up.</summary>
internal static class RiseReasons
{
    /// <param name="minutes">Here.</param>
    /// <param name="minutesInHomeAir">The same dough as warm as here, but at the pressure of home; null when the two are not told apart.</param>
    public static Reason Of(string kind, RisePhase phase, Anchor? anchor, double minutes, double? minutesInHomeAir = null)
    {
        var warmth = new List<Reason>
        {
            Reason.Leaf("dough-at-start", phase.Start.Central, "°C"),
            Reason.Leaf("air", phase.Input.Air.Knots[0].Air.Celsius, "°C"),
        };
        var pressure = Reason.Leaf("pressure", phase.Input.Stage.Pressure.Kilopascals, "kPa", source: "iso-2533");
        if (anchor?.HomeMinutes is not { } home || !double.IsFinite(minutes))
        {
            return Reason.From(kind, double.IsFinite(minutes) ? minutes : null, "min", [.. warmth, pressure], source: "rise-derivation");
        }

        var atHome = Reason.Leaf("at-home", home.Central, "min");
        if (minutesInHomeAir is not { } between || !double.IsFinite(between))
        {
            var both = Reason.From("change-of-kitchen", minutes - home.Central, "min", [.. warmth, pressure], source: "rise-derivation");
            return Reason.Sum(kind, minutes, "min", [atHome, both]);
        }

        return Reason.Sum(
            kind,
            minutes,
            "min",
            [
                atHome,
                Reason.From("change-by-warmth", between - home.Central, "min", warmth, source: "rosso-1995"),
                Reason.From("change-by-thin-air", minutes - between, "min", [pressure], source: "rise-derivation"),
            ]);
    }
}
