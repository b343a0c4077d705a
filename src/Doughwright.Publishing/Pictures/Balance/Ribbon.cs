using System.Text;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Balance;

/// <summary>
/// One share on its way: it lies twisted with the others of its line, unlays itself, and runs in a curve to its sort. Its thickness is the same all
/// along.
/// </summary>
internal static class Ribbon
{
    private const double Turns = 1.15;
    private const int Steps = 22;

    /// <param name="Strand">Top and bottom of the whole line.</param>
    /// <param name="Top">Upper edge of the ribbon at the end of the twist.</param>
    /// <param name="End">Upper edge at the right.</param>
    /// <param name="Thickness">In units of the picture.</param>
    /// <param name="Phase">Where in the twist it starts, in turns.</param>
    public readonly record struct Way(Box Strand, double Top, double End, double Thickness, double Phase);

    public static string Path(Way way, double left, double unlaid, double right)
    {
        var half = way.Thickness / 2;
        var middle = (way.Strand.Top + way.Strand.Bottom) / 2;
        var swing = Math.Max(0, (way.Strand.Bottom - way.Strand.Top - way.Thickness) / 2);
        var centres = Enumerable.Range(0, Steps + 1).Select(step =>
        {
            var share = (double)step / Steps;
            var twisted = middle - (swing * Math.Cos(2 * Math.PI * ((Turns * share) + way.Phase)));

            // The last part of the way the twist lets go.
            var loose = Smooth((share - 0.45) / 0.55);
            return (X: left + (share * (unlaid - left)), Y: (twisted * (1 - loose)) + ((way.Top + half) * loose));
        }).ToList();
        var bend = (unlaid + right) / 2;
        var path = new StringBuilder("M");
        path.AppendJoin('L', centres.Select(centre => $"{Svg.Number(centre.X)} {Svg.Number(centre.Y - half)}"));
        path.Append(Curve(bend, way.Top, way.End, right));
        path.Append($"L{Svg.Number(right)} {Svg.Number(way.End + way.Thickness)}");
        path.Append(Curve(bend, way.End + way.Thickness, way.Top + way.Thickness, unlaid));
        path.Append('L').AppendJoin('L', Enumerable.Reverse(centres).Select(centre => $"{Svg.Number(centre.X)} {Svg.Number(centre.Y + half)}"));
        return path.Append('Z').ToString();
    }

    private static string Curve(double bend, double from, double to, double x) =>
        $"C{Svg.Number(bend)} {Svg.Number(from)} {Svg.Number(bend)} {Svg.Number(to)} {Svg.Number(x)} {Svg.Number(to)}";

    private static double Smooth(double share)
    {
        var u = Math.Clamp(share, 0, 1);
        return u * u * (3 - (2 * u));
    }
}
