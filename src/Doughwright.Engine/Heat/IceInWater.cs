using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>How much of the water to give as ice, so that the two together are as cold as wanted.</summary>
internal static class IceInWater
{
    /// <summary>Melting heat of ice, J/g. Source: ice-melting.</summary>
    public const double MeltingJoulesPerGram = 333.55;

    /// <summary>Ice by the heat balance, all of it melting: m = W (t_tap - t_want) c / (L + c t_tap).</summary>
    /// <remarks>Nought when the tap is cold enough. Valid for ice at 0 °C. Source: ice-melting.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The wanted temperature is below 0 °C: no mixture of ice and water is.</exception>
    public static Mass ByBalance(Mass water, Temperature tap, Temperature wanted, SpecificHeat waterHeat) =>
        Share(water, tap, wanted, MeltingJoulesPerGram / waterHeat.JoulesPerGramKelvin);

    /// <summary>Ice by the trade's rule: m = W (t_tap - t_want) / (t_tap + 80), in °C. Source: ice-melting.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The wanted temperature is below 0 °C.</exception>
    public static Mass ByTradeRule(Mass water, Temperature tap, Temperature wanted) => Share(water, tap, wanted, 80);

    private static Mass Share(Mass water, Temperature tap, Temperature wanted, double meltingKelvins)
    {
        if (wanted.Celsius < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(wanted), wanted, "Water with ice is never below 0 °C.");
        }

        return wanted >= tap ? Mass.Zero : water * ((tap - wanted).Kelvins / (tap.Celsius + meltingKelvins));
    }
}
