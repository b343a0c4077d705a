using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Heat;

/// <summary>Constants of one pack of lanes, scaled by its heat capacity so that enthalpies are counted in kelvins.</summary>
internal sealed class ConductionPack<T> where T : struct, ILane<T>
{
    private readonly T meltsFrom;
    private readonly T meltsTo;
    private readonly T meltedAt;
    private readonly T slope;
    private readonly T inverseSlope;

    /// <param name="first">The pack's first lane; lanes past the last one repeat it, so that every pack is full.</param>
    public ConductionPack(ConductionLanes lanes, int first, double stepSeconds)
    {
        HeatCapacity = Pack(lanes.HeatCapacity, first);
        Diffusion = Pack(lanes.Conductivity, first) / HeatCapacity * T.Of(stepSeconds);
        Exchange = Pack(lanes.Coefficient, first) / HeatCapacity * T.Of(stepSeconds);
        Wall = Pack(lanes.WallCapacity, first) / HeatCapacity;
        Start = Pack(lanes.StartCelsius, first);
        WallStart = lanes.WallStartCelsius is null ? Start : Pack(lanes.WallStartCelsius, first);
        var melting = Pack(lanes.MeltingHeat, first) / HeatCapacity;
        meltsFrom = T.Of(lanes.MeltsFromCelsius);
        meltsTo = T.Of(lanes.MeltsToCelsius);
        meltedAt = meltsTo + melting;
        slope = T.Of(1) + (melting / (meltsTo - meltsFrom));
        inverseSlope = T.Of(1) / slope;
    }

    /// <summary>ρ c, in J/(m³ K).</summary>
    public T HeatCapacity { get; }

    /// <summary>k Δt/(ρ c), in m².</summary>
    public T Diffusion { get; }

    /// <summary>h Δt/(ρ c), in m.</summary>
    public T Exchange { get; }

    /// <summary>Wall capacity over ρ c, in m: the thickness of body that takes as much heat.</summary>
    public T Wall { get; }

    public T Start { get; }

    public T WallStart { get; }

    /// <summary>Temperature in °C of an enthalpy counted in kelvins.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Celsius(T enthalpy)
    {
        var within = T.Min(T.Max(enthalpy - meltsFrom, T.Of(0)), meltedAt - meltsFrom);
        return T.Min(enthalpy, meltsFrom) + (within * inverseSlope) + T.Max(enthalpy - meltedAt, T.Of(0));
    }

    /// <summary>The inverse of <see cref="Celsius"/>.</summary>
    public T Enthalpy(T celsius)
    {
        var within = T.Min(T.Max(celsius - meltsFrom, T.Of(0)), meltsTo - meltsFrom);
        return T.Min(celsius, meltsFrom) + (within * slope) + T.Max(celsius - meltsTo, T.Of(0));
    }

    /// <summary>∂E/∂T at an enthalpy.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T SlopeAt(T enthalpy) => T.WhereLess(enthalpy, meltsFrom, T.Of(1), T.WhereLess(enthalpy, meltedAt, slope, T.Of(1)));

    private static T Pack(double[]? values, int first)
    {
        var pack = new double[T.Width];
        for (var lane = 0; lane < T.Width; lane++)
        {
            pack[lane] = values is null ? 0 : values[Math.Min(first + lane, values.Length - 1)];
        }

        return T.Load(pack, 0);
    }
}
