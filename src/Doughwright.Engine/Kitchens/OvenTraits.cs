using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Kitchens;

/// <summary>What an oven is like beside its kind. Immutable value.</summary>
public sealed record OvenTraits
{
    /// <summary>An oven of which nothing is said.</summary>
    public static OvenTraits Usual { get; } = new();

    /// <summary>A stone or a steel in it that pieces can stand on; null for none. A deck oven has its sole whatever stands here.</summary>
    public Hearth? Hearth { get; init; }

    /// <summary>
    /// How far it is off its dial, as somebody measured it: above zero it is hotter inside than the dial says. Valid -60 to 60 K; null where nobody did,
    /// which goes by the dial.
    /// </summary>
    public TemperatureDelta? OffDial { get; init; }

    /// <summary>What is known of that, or taken for it.</summary>
    internal TemperatureDelta OffDialTaken => OffDial ?? TemperatureDelta.Zero;

    /// <summary>How long it takes from a room to 200 °C. Valid 2 min to 4 h; null for what is usual of its kind.</summary>
    public Duration? HeatsIn { get; init; }

    /// <summary>How long until its air is as hot as before after its door was open. Valid 0.2 to 30 min; null for what is usual.</summary>
    public Duration? RecoversIn { get; init; }

    public OvenSteam Steam { get; init; } = OvenSteam.Pan;
}

/// <summary>What a stone or a steel in an oven is.</summary>
/// <param name="Thick">Valid 2 to 100 mm; null for what is usual of it.</param>
public sealed record Hearth(HearthMaterial Material, Length? Thick);

/// <summary>What a hearth is made of.</summary>
public enum HearthMaterial
{
    Stone,
    Steel,
}

/// <summary>How an oven can be steamed.</summary>
public enum OvenSteam
{
    /// <summary>No way: a vented gas oven, one that must not get wet.</summary>
    None,

    /// <summary>A pan of boiling water, or water sprayed in.</summary>
    Pan,

    /// <summary>A boiler of its own.</summary>
    BuiltIn,
}
