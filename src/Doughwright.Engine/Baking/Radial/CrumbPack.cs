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
    private readonly T boilingHeat;
    private readonly T boilingContent;
    private readonly T latent;
    private readonly T boilQuadratic;
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
        boilingHeat = heat + (heatSlope * boil);
        boilingContent = (heat + (T.Of(0.5) * heatSlope * boil)) * boil;
        latent = VapourContent - (T.Of(CrumbLaws.WaterHeat) * boil);
        boilQuadratic = boilingHeat + (latent * T.Of(BoundSlope));
        boilConstant = (latent * T.Of(Bound)) + (boilQuadratic * T.Of(CurveShift));
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
        var one = T.Of(1);
        var own = content - (VapourContent * (notDried - held));
        var least = heat + (T.Of(CrumbLaws.WaterHeat) * held);
        var root = T.Sqrt(T.Max(one, (least * least) + (T.Of(2) * heatSlope * own)));
        var wet = T.Of(2) * own / (least + root);
        var wetSlope = one / root;
        var above = boil + ((own - boilingContent - (T.Of(CrumbLaws.WaterHeat) * held * boil)) / boilingHeat);
        wetSlope = T.WhereLess(boil, wet, one / boilingHeat, wetSlope);
        wet = T.WhereLess(boil, wet, above, wet);

        var linear = content - boilingContent - (VapourContent * notDried) + boilConstant;
        var spread = (linear + T.Sqrt((linear * linear) + boilProduct)) / (T.Of(2) * boilQuadratic);
        var theta = spread - T.Of(CurveShift);
        var perSpread = T.Of(Curve) / spread;
        var boils = boil + theta;
        var boilsSlope = one / (boilQuadratic + (latent * perSpread / spread));
        var left = perSpread + T.Of(Bound) - (T.Of(BoundSlope) * theta);
        return (
            T.WhereLess(boils, wet, boils, wet),
            T.WhereLess(boils, wet, boilsSlope, wetSlope),
            T.WhereLess(boils, wet, T.Max(T.Of(0), left), held));
    }

    /// <summary>Vapour pressure in crumb and how it rises, Pa and Pa/K. Where it boils it is that of the air.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (T Pascals, T PerKelvin) VapourAt(T celsius)
    {
        var inverse = T.Of(1) / (celsius + T.Of(SaturationShift));
        var saturated = pressure * Elementary.Exp(saturationAtBoil - (T.Of(SaturationSlope) * inverse));
        var here = activity + (activitySlope * celsius);
        var pascals = here * saturated;
        var slope = saturated * ((here * T.Of(SaturationSlope) * inverse * inverse) + activitySlope);
        return (T.Min(pascals, pressure), T.WhereLess(pascals, pressure, slope, T.Of(0)));
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
