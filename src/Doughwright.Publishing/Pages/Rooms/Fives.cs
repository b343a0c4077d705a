using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pages.Rooms;

/// <summary>Minutes in fives, as a reader goes by them. Ends of a range go outwards, so that the range stays true.</summary>
internal static class Fives
{
    public static Duration Near(Duration time) => Duration.FromMinutes(Math.Round(time.Minutes / 5, MidpointRounding.AwayFromZero) * 5);

    public static Duration Below(Duration time) => Duration.FromMinutes(Math.Floor(Whole(time) / 5) * 5);

    public static Duration Above(Duration time) => Duration.FromMinutes(Math.Ceiling(Whole(time) / 5) * 5);

    /// <summary>As it would be printed: half a minute is no reason for five.</summary>
    private static double Whole(Duration time) => Math.Round(time.Minutes, MidpointRounding.AwayFromZero);
}
