using System.Runtime.CompilerServices;
using Doughwright.Engine.Baking.Sections;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>
/// How crumb holds heat and water, for a pack of lanes. Heat content is the state that is kept: temperature and water follow from it in
/// closed form, whether the crumb is wet, boils or is dry.
/// </summary>
/// <remarks>
/// e = h_s(T) + c_w W min(T, T_b) + h_v (what boiled off), in J per kg of dry matter. h_s = c₀T + c₁T²/2 up to boiling and its tangent above.
/// Boiling crumb holds W = A/(θ + θ₀) + B - B'θ at θ = T - T_b; that follows Oswin's isotherm under the pressure of the air within 0.04 kg/kg
/// and turns e(T) into a quadratic. Below, W is what is left. Vapour leaves with h_v of boiling water. Sources: house-bake-lanes, oswin-bread.
/// </remarks>
internal readonly struct CrumbPack<T> where T : struct, ILane<T>
{
    private const double VapourOfWater = 2.501e6;
    private const double FreeDiffusion = 2.6e-5;
    private const double DiffusionKelvins = 300;
    private const double Curve = 0.765;
    private const double CurveShift = 1.06;
    private const double Bound = 0.05;
    private const double BoundSlope = 0.0002;

    /// <summary>Below so much water per dry matter, or so much of what there was, crumb no longer counts as wet.</summary>
    private const double DryBelow = 0.4;

    private const double DryShare = 0.75;

    // Vapour pressure of water over temperature, ln p = const - SaturationSlope/(t + SaturationShift), made to pass through the boiling point.
    private const double SaturationSlope = 1730.63 * 2.302585092994046;
    private const double SaturationShift = 233.426;

    private readonly T water;
    private readonly T heat;
    private readonly T heatSlope;
    private readonly T boil;
    private readonly T pressure;
    private readonly T perBoilingHeat;
    private readonly T boilingContent;
    private readonly T latent;
    private readonly T boilQuadratic;
    private readonly T perBoilQuadratic;
    private readonly T boilConstant;
    private readonly T boilProduct;
    private readonly T activity;
    private readonly T activitySlope;
    private readonly T saturationAtBoil;
    private readonly T permeance;
    private readonly T perWet;

    public CrumbPack(RadialLanes lanes, int lane)
    {
        water = T.Load(lanes.Water, lane);
        heat = T.Load(lanes.Heat, lane);
        heatSlope = T.Load(lanes.HeatSlope, lane);
        boil = T.Load(lanes.Boil, lane);
        pressure = T.Load(lanes.Pressure, lane);
        Conductivity = T.Load(lanes.Conductivity, lane);
        VapourContent = T.Of(VapourOfWater) + (T.Of(CrumbLaws.VapourHeat) * boil);
        var boilingHeat = heat + (heatSlope * boil);
        perBoilingHeat = T.Of(1) / boilingHeat;
        boilingContent = (heat + (T.Of(0.5) * heatSlope * boil)) * boil;
        latent = VapourContent - (T.Of(CrumbLaws.WaterHeat) * boil);
        boilQuadratic = boilingHeat + (latent * T.Of(BoundSlope));
        boilConstant = (latent * T.Of(Bound)) + (boilQuadratic * T.Of(CurveShift));
        perBoilQuadratic = T.Of(0.5) / boilQuadratic;
        boilProduct = T.Of(4 * Curve) * boilQuadratic * latent;
        saturationAtBoil = T.Of(SaturationSlope) / (boil + T.Of(SaturationShift));
        var (cold, hot) = (Oswin(T.Of(25)), Oswin(T.Of(100)));
        activitySlope = (hot - cold) / T.Of(75);
        activity = cold - (T.Of(25) * activitySlope);
        perWet = T.Of(1) / T.Min(T.Of(DryBelow), T.Of(DryShare) * water);
        permeance = T.Load(lanes.Effectiveness, lane) * T.Load(lanes.Gas, lane)
            * T.Of(FreeDiffusion * CrumbLaws.VapourKilogramsPerMole / (CrumbLaws.GasConstant * DiffusionKelvins));
    }

    public T Conductivity { get; }

    /// <summary>Of the air, Pa.</summary>
    public T Pressure => pressure;

    /// <summary>Heat that vapour takes along, against water at 0 °C, J/kg.</summary>
    public T VapourContent { get; }

    /// <summary>Of crumb as it goes in.</summary>
    public T ContentAt(T celsius) => ((heat + (T.Of(CrumbLaws.WaterHeat) * water) + (T.Of(0.5) * heatSlope * celsius)) * celsius);

    /// <summary>Heat of a kilogram of water in crumb at a temperature, J/kg.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T WaterContentAt(T celsius) => T.Of(CrumbLaws.WaterHeat) * T.Min(celsius, boil);

    /// <summary>Temperature, how it follows the heat content, and the water that is left.</summary>
    /// <param name="content">e.</param>
    /// <param name="held">Water at the most: what never boiled off or dried before.</param>
    /// <param name="notDried">What there would be if none had boiled off.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (T Celsius, T PerContent, T Water) StateAt(T content, T held, T notDried)
    {
        var (wet, root, spread, perSpread) = Branches(content, held, notDried);
        var wetSlope = T.WhereLess(boil, wet, perBoilingHeat, T.Of(1) / root);
        var boils = boil + spread - T.Of(CurveShift);
        var boilsSlope = T.Of(1) / (boilQuadratic + (latent * perSpread / spread));
        return (T.WhereLess(boils, wet, boils, wet), T.WhereLess(boils, wet, boilsSlope, wetSlope), Left(wet, boils, spread, perSpread, held));
    }

    /// <summary>The same without how the temperature follows.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (T Celsius, T Water) RestAt(T content, T held, T notDried)
    {
        var (wet, _, spread, perSpread) = Branches(content, held, notDried);
        var boils = boil + spread - T.Of(CurveShift);
        return (T.Min(boils, wet), Left(wet, boils, spread, perSpread, held));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T Left(T wet, T boils, T spread, T perSpread, T held) =>
        T.WhereLess(boils, wet, T.Max(T.Of(0), perSpread + T.Of(Bound + (BoundSlope * CurveShift)) - (T.Of(BoundSlope) * spread)), held);

    /// <summary>Temperature if nothing boils, the root it rests on, and θ + θ₀ if it does.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (T Wet, T Root, T Spread, T PerSpread) Branches(T content, T held, T notDried)
    {
        var own = content - (VapourContent * (notDried - held));
        var least = heat + (T.Of(CrumbLaws.WaterHeat) * held);
        var root = T.Sqrt(T.Max(T.Of(1), (least * least) + (T.Of(2) * heatSlope * own)));
        var wet = T.Of(2) * own / (least + root);
        var above = boil + ((own - boilingContent - (T.Of(CrumbLaws.WaterHeat) * held * boil)) * perBoilingHeat);
        wet = T.WhereLess(boil, wet, above, wet);
        var linear = content - boilingContent - (VapourContent * notDried) + boilConstant;
        var spread = (linear + T.Sqrt((linear * linear) + boilProduct)) * perBoilQuadratic;
        return (wet, root, spread, T.Of(Curve) / spread);
    }

    /// <summary>Vapour pressure in crumb and how it rises, Pa and Pa/K. Where it boils it is that of the air.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (T Pascals, T PerKelvin) VapourAt(T celsius)
    {
        var inverse = T.Of(1) / T.Max(T.Of(40), celsius + T.Of(SaturationShift));
        var saturated = pressure * Short(saturationAtBoil - (T.Of(SaturationSlope) * inverse));
        var here = activity + (activitySlope * celsius);
        var pascals = here * saturated;
        var slope = saturated * ((here * T.Of(SaturationSlope) * inverse * inverse) + activitySlope);
        return (T.Min(pascals, pressure), T.WhereLess(pascals, pressure, slope, T.Of(0)));
    }

    /// <summary>Where crumb comes to such a vapour pressure, °C; above 0 and below that of the air.</summary>
    public T DewPoint(T pascals)
    {
        var celsius = boil;
        for (var round = 0; round < 4; round++)
        {
            var share = pascals / (pressure * (activity + (activitySlope * celsius)));
            celsius = (T.Of(SaturationSlope) / (saturationAtBoil - Elementary.Log(share))) - T.Of(SaturationShift);
        }

        return celsius;
    }

    /// <summary>e^x to ten digits for -700 to 700: a vapour pressure is not known better, and it is asked for in every shell at every step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Short(T x)
    {
        var k = T.Round(x * T.Of(1.4426950408889634));
        var r = x - (k * T.Of(0.6931471805599453));
        var r2 = r * r;
        var low = T.Of(1) + r + (r2 * (T.Of(1.0 / 2) + (r * T.Of(1.0 / 6))));
        var high = T.Of(1.0 / 24) + (r * T.Of(1.0 / 120)) + (r2 * (T.Of(1.0 / 720) + (r * T.Of(1.0 / 5040)) + (r2 * T.Of(1.0 / 40320))));
        return (low + (r2 * r2 * high)) * T.ScaleOfTwo(k);
    }

    /// <summary>1 where crumb is wet, 0 where it is dry, smooth between.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Wetness(T left)
    {
        var share = T.Min(T.Of(1), T.Max(T.Of(0), left * perWet));
        return share * share * (T.Of(3) - (T.Of(2) * share));
    }

    /// <summary>How well vapour moves, kg/(m s Pa): f φ D M/(R T), with D = 2.6e-5 (T/300 K)^1.8 m²/s. The power 0.8 that is left is a quadratic here.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T PermeanceAt(T celsius)
    {
        var over = (celsius + T.Of(273.15 - DiffusionKelvins)) * T.Of(1 / DiffusionKelvins);
        return permeance * (T.Of(1) + (over * (T.Of(0.8) - (T.Of(0.08) * over))));
    }

    /// <summary>Heat that a kilogram of vapour brings when its water goes back as liquid, J/kg.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Carried(T celsius) => T.Of(VapourOfWater) - (T.Of(CrumbLaws.WaterHeat - CrumbLaws.VapourHeat) * celsius);

    /// <summary>a = 1/(1 + (100 W/exp(4.5 - 0.0056 T))^(-1/0.38)), T in K.</summary>
    private T Oswin(T celsius)
    {
        var full = T.Of(100) * water / Elementary.Exp(T.Of(4.5 - (0.0056 * 273.15)) - (T.Of(0.0056) * celsius));
        return T.Of(1) / (T.Of(1) + Elementary.Pow(full, T.Of(-1 / 0.38)));
    }
}
