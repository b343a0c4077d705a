using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>
/// The trade's additive rule for the water temperature, as a second opinion beside the heat balance. It counts flour, room and preferment
/// with equal weight whatever their masses are, and puts the rest into one friction number.
/// </summary>
/// <remarks>
/// T_water = N T_dough - Σ T_others - FF, with N the number of temperatures counted, water included; FF = N T_dough - Σ T_all from a trial.
/// FF is about N times the real rise, so it must never enter a heat balance as a rise. Differences in °F become K by 5/9, and N stays.
/// Valid where the counted things share the heat about evenly. No error is stated. Source: additive-rule.
/// </remarks>
internal static class AdditiveRule
{
    /// <summary>Water temperature for a wanted dough temperature.</summary>
    /// <param name="others">Flour, room and, where there is one, preferment.</param>
    public static Temperature Water(Temperature wanted, ReadOnlySpan<Temperature> others, TemperatureDelta friction) =>
        Temperature.FromCelsius(((others.Length + 1) * wanted.Celsius) - Sum(others) - friction.Kelvins);

    /// <summary>The friction number that a trial shows.</summary>
    /// <param name="all">All counted temperatures, the water among them.</param>
    public static TemperatureDelta Friction(Temperature reached, ReadOnlySpan<Temperature> all) =>
        TemperatureDelta.FromKelvins((all.Length * reached.Celsius) - Sum(all));

    private static double Sum(ReadOnlySpan<Temperature> temperatures)
    {
        var sum = 0.0;
        foreach (var temperature in temperatures)
        {
            sum += temperature.Celsius;
        }

        return sum;
    }
}
