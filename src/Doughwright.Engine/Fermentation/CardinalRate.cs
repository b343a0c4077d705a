using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// The cardinal temperature model with inflection: how fast a microbe works at a temperature, against its best.
/// <para>
/// g(T) = (T - Tmax)(T - Tmin)² / {(Topt - Tmin) [(Topt - Tmin)(T - Topt) - (Topt - Tmax)(Topt + Tmin - 2T)]} between Tmin and Tmax,
/// exactly 0 outside. T in °C, g from 0 to 1.
/// </para>
/// Valid for Topt above the middle of Tmin and Tmax. Error: 0.1 in ln against one data set of growth from 5 to 39 °C (gause-1932).
/// It does not know that yeast dies: a dough that was at 55 °C and is cooled again is not what this says.
/// Source: rosso-1995, macrogrow-tlim.
/// </summary>
internal static class CardinalRate
{
    public static double At(Temperature temperature, CardinalTemperatures cardinal) => Relative(
        new Lane1(temperature.Celsius),
        new Lane1(cardinal.Minimum.Celsius),
        new Lane1(cardinal.Optimum.Celsius),
        new Lane1(cardinal.Maximum.Celsius)).Value;

    /// <summary>The same over lanes. The caller vouches for the order of the three.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Relative<T>(T celsius, T minimum, T optimum, T maximum) where T : struct, ILane<T>
    {
        var rise = optimum - minimum;
        var above = celsius - minimum;
        var numerator = (celsius - maximum) * above * above;
        var denominator = rise * (rise * (celsius - optimum) - (optimum - maximum) * (optimum + minimum - (celsius + celsius)));

        // The denominator has no zero between the two ends; what it does outside is not selected.
        var zero = T.Of(0);
        return T.WhereLess(minimum, celsius, T.WhereLess(celsius, maximum, numerator / denominator, zero), zero);
    }
}
