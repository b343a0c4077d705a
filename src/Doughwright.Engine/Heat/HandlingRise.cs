using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Heat;

/// <summary>
/// How much warmer mixing and handling make a dough: one number for friction, hands and wetting of the flour together. The heat of wetting
/// is part of it and never added on top. Learned from one measured mix.
/// </summary>
/// <param name="Mean">The central value.</param>
/// <param name="Sd">Standard deviation.</param>
internal sealed record HandlingRise(TemperatureDelta Mean, TemperatureDelta Sd)
{
    /// <summary>What to expect of a way of mixing before anything was measured. Source: handling-rise.</summary>
    public static HandlingRise Of(MixingWay way) => way switch
    {
        MixingWay.ByHand => Kelvins(1.5, 0.7),
        MixingWay.Machine => Kelvins(3, 0.7),
        MixingWay.FoodProcessor => Kelvins(6, 2),
        _ => throw new ArgumentOutOfRangeException(nameof(way), way, "No handling rise is known for this way of mixing."),
    };

    /// <summary>How many standard deviations a measured rise lies from the expected one, with its sign.</summary>
    public double StandardDeviationsOff(TemperatureDelta measured) => (measured - Mean) / Sd;

    private static HandlingRise Kelvins(double mean, double sd) =>
        new(TemperatureDelta.FromKelvins(mean), TemperatureDelta.FromKelvins(sd));
}
