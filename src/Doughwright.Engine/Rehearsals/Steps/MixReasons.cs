namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Why a dough comes out as warm as it does: each part's pull away from the mean, the bowl's, the butter's, and the handling.</summary>
internal static class MixReasons
{
    /// <summary>
    /// T = Σ C t / C_total - melting / C_total + rise. Each part is shown as its share C t / C_total, so that the shares, the melting and the
    /// rise add up to the dough's temperature.
    /// </summary>
    public static Reason Of(Bowl bowl, double doughCelsius, double riseKelvins)
    {
        var celsius = bowl.Parts(0);
        var conditions = bowl.Conditions(0, riseKelvins);
        var total = bowl.Balance.JoulesPerKelvin;
        var reasons = new List<Reason>();
        var sum = 0.0;
        var capacities = 0.0;
        for (var index = 0; index < celsius.Length; index++)
        {
            var part = bowl.Balance.Parts[index];
            var capacity = part.Mass * part.SpecificHeat;
            var share = capacity * celsius[index] / total;
            reasons.Add(Reason.From(
                "heat-of-line",
                share,
                "°C",
                [Reason.Leaf("part-warmth", celsius[index], "°C"), Reason.Leaf("part-capacity-share", 100 * capacity / total, "%")],
                bowl.Lines[index].Name));
            (sum, capacities) = (sum + share, capacities + capacity);
        }

        var vessel = (total - capacities) * conditions.VesselCelsius / total;
        if (total > capacities)
        {
            reasons.Add(Reason.From("heat-of-bowl", vessel, "°C", [Reason.Leaf("part-warmth", conditions.VesselCelsius, "°C"), Reason.Leaf("part-capacity-share", 100 * (total - capacities) / total, "%")], source: "vessel-heats"));
            sum += vessel;
        }

        var melting = doughCelsius - riseKelvins - sum;
        if (Math.Abs(melting) > 1e-9)
        {
            reasons.Add(Reason.Leaf("butter-melts", melting, "K", source: "butter-melting"));
        }

        if (riseKelvins != 0)
        {
            reasons.Add(Reason.Leaf("handling-rise", riseKelvins, "K", source: "handling-rise"));
        }

        return Reason.Sum("dough-temperature", doughCelsius, "°C", reasons);
    }
}
