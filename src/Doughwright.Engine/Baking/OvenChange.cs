using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking;

/// <summary>
/// An oven whose dial is set again. Downwards it loses heat to the room until it is as cool as its dial says, upwards it heats at its own
/// pace. Air and walls go together.
/// </summary>
/// <remarks>
/// Down: T = T_room + (T_first - T_room) exp(-(t - t_1)/τ), not below the new one; up: T = T_first + r (t - t_1), not above it. Of a domestic
/// oven τ is what its liner holds over what leaves it. Source: place-oven. Of a deck oven, which falls some 30 K in an hour: oven-deck.
/// </remarks>
/// <param name="AfterSeconds">t_1, after the piece went in.</param>
/// <param name="By">How far the new dial is above the first, K; below zero it is cooler.</param>
/// <param name="CoolsSeconds">τ.</param>
/// <param name="HeatsPerSecond">r, K/s.</param>
internal sealed record OvenChange(double AfterSeconds, double By, double CoolsSeconds, double HeatsPerSecond)
{
    /// <summary>Of the kitchen that the oven stands in, °C. A few kelvins more or less do not matter beside 200.</summary>
    public const double Room = 21;

    /// <summary>The share of what an oven is above the room that is left at a moment, if it loses heat and takes none.</summary>
    public double Left(double seconds) => seconds <= AfterSeconds ? 1 : Elementary.Exp(-(seconds - AfterSeconds) / CoolsSeconds);

    /// <summary>By how much it could have heated up by then, K.</summary>
    public double Gained(double seconds) => seconds <= AfterSeconds ? 0 : HeatsPerSecond * (seconds - AfterSeconds);

    /// <summary>Air and walls at a moment, °C.</summary>
    /// <param name="first">Before it was set again.</param>
    public double At(double first, double seconds) => seconds <= AfterSeconds ? first
        : By < 0 ? Math.Max(first + By, Room + ((first - Room) * Left(seconds)))
        : first + Math.Min(By, Gained(seconds));
}
