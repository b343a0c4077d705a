namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>Places that a household can make warm, or cool, for a dough.</summary>
public enum PlaceKind
{
    /// <summary>The oven, shut and off, with a jug of water.</summary>
    Oven,

    /// <summary>An insulated box with jars of water.</summary>
    CoolBox,

    /// <summary>A cupboard that shuts, with a jug of water.</summary>
    Cupboard,

    /// <summary>The bowl stands in a basin of water.</summary>
    WaterBath,
}

/// <summary>What a person must mind. Words lie in the resources.</summary>
public enum PlaceCaution
{
    /// <summary>Water of 50 °C and more scalds. Source: scald-limits.</summary>
    HotWater,

    /// <summary>An oven that is switched on burns cloth, bowl and dough.</summary>
    OvenOff,

    /// <summary>Yeast dies in what touches water this hot. Source: yeast-heat.</summary>
    YeastHeat,

    /// <summary>A basin must not slop into the dough.</summary>
    WaterOut,

    /// <summary>Walls and jugs differ: the thermometer has the last word.</summary>
    Thermometer,
}
