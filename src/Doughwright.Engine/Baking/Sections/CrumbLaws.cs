using Doughwright.Engine.Heat;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Sections;

/// <summary>How crumb holds water and lets heat and vapour through. One set of numbers serves whatever is baked.</summary>
/// <param name="Effectiveness">
/// Share of free diffusion that vapour finds in the gas cells, 0 to 1. Anything from 0.42 to 0.80 was found to serve one small loaf; loaves in
/// tins ask for the upper half.
/// </param>
/// <param name="SkinResistance">How hard a skin holds vapour back beside the air, in s/m. Fitted to the small loaf.</param>
/// <param name="BoilRate">How quickly water boils off where its vapour presses harder than the air, in kg/(m³ s Pa). Four times as much changes next to nothing.</param>
/// <param name="StayingShare">Share of the vapour's water that stays where it went, 0 to 1; the rest goes back as liquid. Where it is dry all of it stays.</param>
/// <param name="LiquidDiffusivity">Of liquid water, m²/s.</param>
/// <param name="LeastConductivity">What crumb and crust conduct at the least, in W/(m K): cell walls hang together, which the law for bubbles in dough does not know.</param>
/// <remarks>Sources: house-bake-section (the numbers), oswin-bread (water activity).</remarks>
internal sealed record CrumbLaws(
    double Effectiveness = 0.65,
    double SkinResistance = 1820,
    double BoilRate = 5e-4,
    double StayingShare = 0.38,
    double LiquidDiffusivity = 1e-10,
    double LeastConductivity = 0.21)
{
    public const double GasConstant = 8.314462618;
    public const double VapourKilogramsPerMole = 0.018015268;

    /// <summary>Of liquid water in dough, J/(kg K).</summary>
    public const double WaterHeat = 4190;

    /// <summary>Of vapour, J/(kg K).</summary>
    public const double VapourHeat = 1880;

    /// <summary>Below so much water per dry matter crumb no longer counts as wet.</summary>
    private const double DryBelow = 0.2;

    /// <summary>The one set.</summary>
    public static CrumbLaws Standard { get; } = new();

    /// <summary>Heat content of vapour against water at 0 °C, in J/kg.</summary>
    public static double VapourContent(double celsius) => 2.501e6 + (VapourHeat * celsius);

    /// <summary>1 where crumb is wet, 0 where it is dry, and smooth between.</summary>
    public static double Wetness(double water)
    {
        var share = Math.Clamp(water / DryBelow, 0, 1);
        return share * share * (3 - (2 * share));
    }

    /// <summary>
    /// Vapour pressure over crumb. Water activity after Oswin: a = 1/(1 + (100 W/exp(4.5 - 0.0056 T))^(-1/0.38)) with T in K. Most copies
    /// print 5.5 for the 4.5, which would give a fresh dough 0.71 instead of 0.97.
    /// </summary>
    /// <param name="celsius">0 to 373.</param>
    /// <param name="water">kg per kg of dry matter. Without any there is no vapour.</param>
    public static VapourState Vapour(double celsius, double water)
    {
        var (saturated, slope) = SaturatedWater.VapourPressureAndSlope(celsius);
        if (!(water > 0))
        {
            return default;
        }

        var scale = Elementary.Exp(4.5 - (0.0056 * (celsius + 273.15)));
        var full = 100 * water / scale;
        var lack = Elementary.Pow(full, -1 / 0.38);
        var activity = 1 / (1 + lack);
        var rise = activity * activity * lack / 0.38 / full;
        return new(activity * saturated, (activity * slope) + (saturated * rise * full * 0.0056), saturated * rise * 100 / scale);
    }

    /// <summary>How well vapour moves through crumb under a difference of its pressure, in kg/(m s Pa).</summary>
    /// <param name="gas">Share of the volume that is gas, 0 to 1.</param>
    /// <remarks>Free diffusion 2.6e-5 (T/300 K)^1.8 m²/s. Source: zhang-2005-loaf.</remarks>
    public double Permeance(double celsius, double gas)
    {
        var kelvins = celsius + 273.15;
        return Effectiveness * gas * 2.6e-5 * Elementary.Pow(kelvins / 300, 1.8) * VapourKilogramsPerMole / (GasConstant * kelvins);
    }
}
