using Doughwright.Engine.Fermentation;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What a kitchen takes from a piece that came out of its oven.</summary>
internal static class RackLaws
{
    /// <summary>Against what still air and a room take from a dry crust.</summary>
    public static Prior Exchange { get; } = new("what a room takes from a piece out of the oven, against its default", "1", 1, 0.30, PriorLaw.LogNormal, "hot-surfaces");

    /// <summary>Natural convection about a warm piece, W/(m² K). Source: hot-surfaces.</summary>
    public const double StillAir = 5;

    /// <summary>Emissivity of a crust. Source: hot-surfaces.</summary>
    public const double Crust = 0.9;

    /// <summary>Emissivity of a tin, between bright metal at 0.1 and a dark coating at 0.9. A choice, from memory.</summary>
    public const double Tin = 0.4;

    /// <summary>Under a cloth or in a fridge without a fan it takes 8 where an open rack takes 11 W/(m² K). Source: exchange-defaults.</summary>
    public const double Sheltered = 8.0 / 11;

    /// <summary>A loaf that is warmer than the room by no more than this, K, has cooled out. A choice.</summary>
    public const double CooledOut = 5;

    /// <summary>Nothing tells a loaf that is so much warmer than the room, K, from one that is as cold as the room.</summary>
    public const double Nearest = 1;

    /// <summary>A middle that has fallen by less, K, has hardly cooled: such minutes are for other things than its warmth. A choice.</summary>
    public const double HardlyCooled = 5;
}
