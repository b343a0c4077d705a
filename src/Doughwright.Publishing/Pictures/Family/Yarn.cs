namespace Doughwright.Publishing.Pictures.Family;

/// <summary>
/// Two yarns laid around each other along a line. The wave is made of parabolas: it looks like a sine, and comes out the same to the last digit on every
/// system.
/// </summary>
internal static class Yarn
{
    private const double Stride = 6;

    /// <summary>One of the two.</summary>
    /// <param name="along">Where the line runs, by the way along it.</param>
    /// <param name="across">Which way is across, as a unit vector.</param>
    public static IEnumerable<(double X, double Y)> Strand(double length, Func<double, (double X, double Y)> along, (double X, double Y) across, double thickness, double turn, bool second)
    {
        var steps = Math.Max(1, (int)Math.Ceiling(length / Stride));
        for (var step = 0; step <= steps; step++)
        {
            var at = length * step / steps;
            var (x, y) = along(at);
            var off = thickness * Wave((at / turn) + (second ? 0.5 : 0));
            yield return (x + (across.X * off), y + (across.Y * off));
        }
    }

    /// <summary>From 0 to 1, back through 0 to -1, once for each whole number.</summary>
    internal static double Wave(double turns)
    {
        var part = turns - Math.Floor(turns);
        return part < 0.5 ? 16 * part * (0.5 - part) : -16 * (part - 0.5) * (1 - part);
    }
}
