using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Ingredients;

/// <summary>What cooking does to a composition when only water comes and goes.</summary>
internal static class SolidsBalance
{
    /// <summary>
    /// Composition after cooking, from the raw composition and two weighings.
    /// Solids stay: w_cooked = 100 - (100 - w_raw) · m_raw / m_cooked and s_cooked = s_raw · m_raw / m_cooked for every
    /// other constituent, in g per 100 g.
    /// Valid while the water that comes out lies in 0 to 100; null outside, and null when the raw water is unknown.
    /// Stated error: exact but for what dissolves into the cooking water, which two weighings cannot tell from lost water.
    /// Source: mass-balance.
    /// </summary>
    /// <param name="raw">Of the peeled raw food.</param>
    /// <param name="rawPeeled">Mass before cooking, above zero.</param>
    /// <param name="cooked">Mass after cooking, above zero.</param>
    public static Composition? Cooked(Composition raw, Mass rawPeeled, Mass cooked)
    {
        if (raw.Water is not { } water || rawPeeled <= Mass.Zero || cooked <= Mass.Zero)
        {
            return null;
        }

        var ratio = rawPeeled / cooked;
        var waterAfter = 100 - ((100 - water) * ratio);
        if (waterAfter is < 0 or > 100)
        {
            return null;
        }

        return new(
            waterAfter,
            raw.Protein * ratio,
            raw.Fat * ratio,
            raw.Carbohydrate * ratio,
            raw.Sugars * ratio,
            raw.Fibre * ratio,
            raw.Ash * ratio,
            raw.Salt * ratio,
            raw.Lactose * ratio,
            raw.Alcohol * ratio);
    }
}
