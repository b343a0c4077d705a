using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>What butter is good for at a temperature.</summary>
internal enum ButterState
{
    /// <summary>Below 15 °C: rolls out and rubs in, does not cream.</summary>
    Firm,

    /// <summary>15 to 18 °C: gives to a finger.</summary>
    Softening,

    /// <summary>18 to 21 °C: takes up air when beaten with sugar.</summary>
    Creams,

    /// <summary>21 to 32 °C: too soft to hold air; oils out near 30.</summary>
    TooSoft,

    /// <summary>From 32 °C: largely liquid.</summary>
    Liquid,
}

/// <summary>The trade's steps between hard and liquid butter. There is no melting point. Source: butter-states.</summary>
internal static class ButterStates
{
    public static Temperature Softens { get; } = Temperature.FromCelsius(15);

    public static Temperature CreamsFrom { get; } = Temperature.FromCelsius(18);

    public static Temperature CreamsTo { get; } = Temperature.FromCelsius(21);

    public static Temperature LargelyLiquid { get; } = Temperature.FromCelsius(32);

    /// <summary>The warmest a laminated dough may be before its butter runs into the layers.</summary>
    public static Temperature LaminatesTo { get; } = Temperature.FromCelsius(26);

    public static ButterState At(Temperature temperature) => temperature switch
    {
        _ when temperature < Softens => ButterState.Firm,
        _ when temperature < CreamsFrom => ButterState.Softening,
        _ when temperature <= CreamsTo => ButterState.Creams,
        _ when temperature < LargelyLiquid => ButterState.TooSoft,
        _ => ButterState.Liquid,
    };
}
