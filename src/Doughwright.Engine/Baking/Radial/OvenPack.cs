using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>What the surface of a piece meets in the oven, for a pack of lanes.</summary>
internal readonly struct OvenPack<T> where T : struct, ILane<T>
{
    private const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>What still air gives a piece at the most, W/(m² K): under a lid no fan reaches it. Source: oven-lid.</summary>
    private const double StillAir = 4.5;

    /// <summary>Vapour in the air of a kitchen and so in an oven's, Pa. Below 2 kPa it hardly matters beside the 80 kPa of hot crumb.</summary>
    private const double KitchenVapour = 1000;

    /// <summary>ρ c_p Le^(2/3) of air, J/(m³ K). Source: lewis-evaporation.</summary>
    private const double Lewis = 1070;

    /// <summary>Air that is left however much steam there is, Pa. A choice: it only keeps a quotient finite.</summary>
    private const double LeastAir = 1000;

    private const double GasPerKilogram = 8.314462618 / 0.018015268;

    private readonly T convective;
    private readonly T radiative;
    private readonly T sheltered;
    private readonly T first;
    private readonly T doorDrop;
    private readonly T skin;
    private readonly T steam;
    private readonly T open;
    private readonly T vapour;
    private readonly double steamSeconds;
    private readonly double doorSeconds;
    private readonly double lidSeconds;
    private readonly OvenChange? change;

    public OvenPack(RadialLanes lanes, int lane)
    {
        var transfer = T.Load(lanes.Transfer, lane);
        convective = transfer * T.Load(lanes.Convective, lane);
        radiative = transfer * T.Of(StefanBoltzmann) * T.Load(lanes.Radiative, lane);
        sheltered = transfer * T.Min(T.Load(lanes.Convective, lane), T.Of(StillAir));
        first = T.Load(lanes.Oven, lane);
        doorDrop = T.Load(lanes.DoorDrop, lane);
        skin = T.Load(lanes.Skin, lane);
        open = T.Load(lanes.Open, lane);
        steam = T.Load(lanes.Steam, lane);
        vapour = lanes.Vapour is null ? T.Of(KitchenVapour) : T.Load(lanes.Vapour, lane);
        (steamSeconds, doorSeconds, lidSeconds, change) = (lanes.SteamSeconds, lanes.DoorSeconds, lanes.LidSeconds, lanes.Change);
    }

    /// <summary>Share of the surface from which vapour gets away.</summary>
    public T OpenAt(double seconds) => seconds <= lidSeconds ? T.Of(0) : open;

    public bool SteamsAt(double seconds) => seconds <= steamSeconds && seconds > lidSeconds;

    /// <summary>Air and walls, °C, but for what the door cost the air.</summary>
    public T WallsAt(double seconds)
    {
        if (change is null || seconds <= change.AfterSeconds)
        {
            return first;
        }

        var room = T.Of(OvenChange.Room);
        return change.By < 0
            ? T.Max(first + T.Of(change.By), room + ((first - room) * T.Of(change.Left(seconds))))
            : first + T.Of(Math.Min(change.By, change.Gained(seconds)));
    }

    public T VapourAt(double seconds) => SteamsAt(seconds) ? steam : vapour;

    /// <summary>Heat that the surface takes per kelvin, and the one temperature it seems to meet.</summary>
    /// <param name="surface">°C, about.</param>
    public (T Coefficient, T Meets) HeatAt(double seconds, T surface)
    {
        var walls = WallsAt(seconds);
        var blows = seconds <= lidSeconds ? sheltered : convective;
        var (hot, cold) = (walls + T.Of(273.15), surface + T.Of(273.15));
        var shine = radiative * ((hot * hot) + (cold * cold)) * (hot + cold);
        var coefficient = blows + shine;
        var air = walls - (doorDrop * T.Of(Elementary.Exp(-seconds / doorSeconds)));
        return (coefficient, ((blows * air) + (shine * walls)) / T.Max(coefficient, T.Of(1e-12)));
    }

    /// <summary>What keeps vapour from leaving the surface, m² s Pa/kg.</summary>
    public T Hindrance(T celsius) => ((T.Of(Lewis) / convective) + skin) * T.Of(GasPerKilogram) * (celsius + T.Of(273.15));

    /// <summary>How much steam settles for each pascal, kg/(m² s Pa). No skin holds it back.</summary>
    /// <remarks>
    /// Where much of the air is vapour, what settles draws the rest along: flux = k P/(R T) ln((P - p_s)/(P - p)), Stefan's law. The mean of both
    /// shares of air that the logarithm asks for is taken as (2 √(a b) + (a + b)/2)/3, within 0.3 % up to a ratio of five. Source: stefan-flow.
    /// </remarks>
    /// <param name="over">Vapour pressure at the surface, Pa.</param>
    /// <param name="pressure">Of the air, Pa.</param>
    public T Settling(T celsius, T over, T pressure)
    {
        var (near, far) = (T.Max(T.Of(LeastAir), pressure - over), T.Max(T.Of(LeastAir), pressure - steam));
        var air = ((T.Of(2) * T.Sqrt(near * far)) + (T.Of(0.5) * (near + far))) * T.Of(1.0 / 3);
        return convective * pressure / (air * T.Of(Lewis * GasPerKilogram) * (celsius + T.Of(273.15)));
    }
}
