namespace Doughwright.Engine.Baking.Radial;

/// <summary>An oven as the surface of a piece feels it.</summary>
/// <param name="Celsius">Air and walls.</param>
/// <param name="Convective">What the air gives, W/(m² K).</param>
/// <param name="Radiative">What the walls give, as a share of what black walls all round would.</param>
internal sealed record RadialOven(double Celsius, double Convective, double Radiative)
{
    /// <summary>How much cooler the air is when the door has just been shut, K.</summary>
    public double DoorDrop { get; init; }

    /// <summary>In so many seconds the air makes good all but 1/e of that. Source: oven-door.</summary>
    public double DoorSeconds { get; init; } = 60;

    /// <summary>Vapour in the air while it is steamed, Pa.</summary>
    public double Steam { get; init; } = 1000;

    /// <summary>How long, s.</summary>
    public double SteamSeconds { get; init; }

    /// <summary>Another dial during the bake; null when it stays.</summary>
    public OvenChange? Change { get; init; }

    /// <summary>A stone, a steel or a sole that the piece stands on; null where it stands on nothing hotter than a tray.</summary>
    public OvenHearth? Hearth { get; init; }

    /// <summary>Until when a lid is on, s. Under it the air is still and nothing evaporates below boiling.</summary>
    public double LidSeconds { get; init; }
}
