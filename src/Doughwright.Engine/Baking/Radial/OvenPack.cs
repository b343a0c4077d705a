using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>What the surface of a piece meets in the oven, for a pack of lanes.</summary>
internal readonly struct OvenPack<T> where T : struct, ILane<T>
{
    private const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>How quickly the air comes back after the door was open, s. Source: oven-door.</summary>
    private const double DoorSeconds = 60;

    /// <summary>Vapour in the air of a kitchen, Pa. Below 2 kPa it hardly matters beside the 80 kPa of hot crumb.</summary>
    private const double KitchenVapour = 1000;

    /// <summary>ρ c_p Le^(2/3) of air, J/(m³ K). Source: lewis-evaporation.</summary>
    private const double Lewis = 1070;

    private const double GasPerKilogram = 8.314462618 / 0.018015268;

    private readonly T convective;
    private readonly T radiative;
    private readonly T walls;
    private readonly T doorDrop;
    private readonly T skin;
    private readonly T steam;
    private readonly double steamSeconds;

    public OvenPack(RadialLanes lanes, int lane)
    {
        var transfer = T.Load(lanes.Transfer, lane);
        convective = transfer * T.Load(lanes.Convective, lane);
        radiative = transfer * T.Of(StefanBoltzmann) * T.Load(lanes.Radiative, lane);
        walls = T.Load(lanes.Oven, lane);
        doorDrop = T.Load(lanes.DoorDrop, lane);
        skin = T.Load(lanes.Skin, lane);
        Open = T.Load(lanes.Open, lane);
        steam = T.Load(lanes.Steam, lane);
        steamSeconds = lanes.SteamSeconds;
    }

    public T Open { get; }

    public bool SteamsAt(double seconds) => seconds <= steamSeconds;

    public T VapourAt(double seconds) => SteamsAt(seconds) ? steam : T.Of(KitchenVapour);

    /// <summary>Heat that the surface takes per kelvin, and the one temperature it seems to meet.</summary>
    /// <param name="surface">°C, about.</param>
    public (T Coefficient, T Meets) HeatAt(double seconds, T surface)
    {
        var (hot, cold) = (walls + T.Of(273.15), surface + T.Of(273.15));
        var shine = radiative * ((hot * hot) + (cold * cold)) * (hot + cold);
        var coefficient = convective + shine;
        var air = walls - (doorDrop * T.Of(Elementary.Exp(-seconds / DoorSeconds)));
        return (coefficient, ((convective * air) + (shine * walls)) / T.Max(coefficient, T.Of(1e-12)));
    }

    /// <summary>What keeps vapour from leaving the surface, m² s Pa/kg.</summary>
    public T Hindrance(T celsius) => ((T.Of(Lewis) / convective) + skin) * T.Of(GasPerKilogram) * (celsius + T.Of(273.15));

    /// <summary>How much steam settles for each pascal, kg/(m² s Pa). No skin holds it back.</summary>
    public T Settling(T celsius) => convective / (T.Of(Lewis * GasPerKilogram) * (celsius + T.Of(273.15)));
}
