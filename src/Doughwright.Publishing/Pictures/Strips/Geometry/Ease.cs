namespace Doughwright.Publishing.Pictures.Strips.Geometry;

/// <summary>Soft ways from one height to another.</summary>
internal static class Ease
{
    /// <summary>From 0 to 1 while <paramref name="at"/> goes from 0 to 1, level at both ends and beyond.</summary>
    public static double Smooth(double at)
    {
        var held = Math.Clamp(at, 0, 1);
        return held * held * (3 - (2 * held));
    }

    /// <summary>From one value to another between two minutes; a change without length happens at once.</summary>
    public static double Between(double minute, double from, double to, double before, double after)
    {
        var share = to > from ? Smooth((minute - from) / (to - from)) : minute >= to ? 1 : 0;
        return before + ((after - before) * share);
    }
}
