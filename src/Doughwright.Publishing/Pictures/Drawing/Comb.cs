namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>An end by its cue: teeth, longest where the end is most likely.</summary>
internal static class Comb
{
    private const int Teeth = 13;
    private const double Shortest = 3;
    private const double Longest = 16;

    /// <summary>Between the 10th and the 90th in a hundred lie so many standard deviations.</summary>
    private const double DeviationsBetween = 2.56;

    /// <summary>Draws a comb whose bar lies along one axis and whose teeth hang from it.</summary>
    /// <param name="at">Maps a place along the bar and a depth below it to the picture.</param>
    /// <param name="likely">Place of the likely end, like the two others in the units of the picture.</param>
    public static void Draw(Svg svg, double low, double likely, double high, Func<double, double, (double X, double Y)> at)
    {
        var deviation = (high - low) / DeviationsBetween;
        for (var tooth = 0; tooth < Teeth; tooth++)
        {
            var place = low + ((high - low) * tooth / (Teeth - 1));
            var away = deviation > 0 ? (place - likely) / deviation : 0;
            var depth = Shortest + ((Longest - Shortest) * Math.Exp(-0.5 * away * away));
            var (x1, y1) = at(place, 0);
            var (x2, y2) = at(place, depth);
            svg.Line("comb", x1, y1, x2, y2);
        }

        var (left, top) = at(low, 0);
        var (right, bottom) = at(high, 0);
        svg.Line("combbar", left, top, right, bottom);
    }
}
