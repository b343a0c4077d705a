namespace Doughwright.Engine.Baking.Radial;

/// <summary>What each lane brings to the oven and meets there; all arrays of the same length, a multiple of the widest pack.</summary>
internal sealed record RadialLanes
{
    /// <summary>Dough on entering, °C.</summary>
    public required double[] Start { get; init; }

    /// <summary>Dry matter, kg per m³ as risen.</summary>
    public required double[] Solids { get; init; }

    /// <summary>From core to surface, m.</summary>
    public required double[] Reach { get; init; }

    /// <summary>Water, kg per kg of dry matter.</summary>
    public required double[] Water { get; init; }

    /// <summary>Heat capacity of dry matter at 0 °C, J/(kg K).</summary>
    public required double[] Heat { get; init; }

    /// <summary>How that grows, J/(kg K²).</summary>
    public required double[] HeatSlope { get; init; }

    /// <summary>Of crumb without what its vapour carries, W/(m K).</summary>
    public required double[] Conductivity { get; init; }

    /// <summary>Share of gas in the volume.</summary>
    public required double[] Gas { get; init; }

    /// <summary>Boiling point of water, °C.</summary>
    public required double[] Boil { get; init; }

    /// <summary>Of the air, Pa.</summary>
    public required double[] Pressure { get; init; }

    /// <summary>Share of free diffusion that vapour finds in the gas cells.</summary>
    public required double[] Effectiveness { get; init; }

    /// <summary>How hard the skin holds vapour back, s/m.</summary>
    public required double[] Skin { get; init; }

    /// <summary>Share of the surface from which vapour gets away.</summary>
    public required double[] Open { get; init; }

    /// <summary>Of the oven: what the air gives, W/(m² K).</summary>
    public required double[] Convective { get; init; }

    /// <summary>What the walls give, as a share of what black walls all round would.</summary>
    public required double[] Radiative { get; init; }

    /// <summary>Air and walls, °C.</summary>
    public required double[] Oven { get; init; }

    /// <summary>How much cooler the air is when the door has just been shut, K.</summary>
    public required double[] DoorDrop { get; init; }

    /// <summary>Vapour in the oven's air while it is steamed, Pa; where it is not, <see cref="Vapour"/>.</summary>
    public required double[] Steam { get; init; }

    /// <summary>Vapour in the air that nobody steams, Pa; null for that of a kitchen, of which an oven has no more.</summary>
    public double[]? Vapour { get; init; }

    /// <summary>A factor on all that the oven gives.</summary>
    public required double[] Transfer { get; init; }

    /// <summary>How long steam stays, s; the same in every lane, as all that follows.</summary>
    public double SteamSeconds { get; init; }

    /// <summary>In so many seconds the air makes good all but 1/e of what the door cost.</summary>
    public double DoorSeconds { get; init; } = 60;

    /// <summary>Another dial; null when it stays.</summary>
    public OvenChange? Change { get; init; }

    /// <summary>What the piece stands on; null for nothing hotter than a tray.</summary>
    public OvenHearth? Hearth { get; init; }

    /// <summary>Until when a lid is on, s.</summary>
    public double LidSeconds { get; init; }

    public int Count => Start.Length;

    /// <summary>Some of them, filled up with the last one to whole packs.</summary>
    public RadialLanes Only(int[] lanes)
    {
        var count = Numerics.Lanes.Padded(lanes.Length);
        double[] Of(double[] all)
        {
            var some = new double[count];
            for (var at = 0; at < count; at++)
            {
                some[at] = all[lanes[Math.Min(at, lanes.Length - 1)]];
            }

            return some;
        }

        return this with
        {
            Start = Of(Start),
            Solids = Of(Solids),
            Reach = Of(Reach),
            Water = Of(Water),
            Heat = Of(Heat),
            HeatSlope = Of(HeatSlope),
            Conductivity = Of(Conductivity),
            Gas = Of(Gas),
            Boil = Of(Boil),
            Pressure = Of(Pressure),
            Effectiveness = Of(Effectiveness),
            Skin = Of(Skin),
            Open = Of(Open),
            Convective = Of(Convective),
            Radiative = Of(Radiative),
            Oven = Of(Oven),
            DoorDrop = Of(DoorDrop),
            Steam = Of(Steam),
            Vapour = Vapour is null ? null : Of(Vapour),
            Transfer = Of(Transfer),
        };
    }
}
