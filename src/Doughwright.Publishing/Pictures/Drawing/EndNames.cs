namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>Names at the right ends of their lines, kept apart, each led to by a hair line where it had to move.</summary>
/// <param name="Right">Where the lines end.</param>
/// <param name="Head">The highest a name stands.</param>
/// <param name="Foot">The lowest.</param>
/// <param name="Width">Of the picture.</param>
internal sealed record EndNames(double Right, double Head, double Foot, double Width)
{
    private const double Between = 21;
    private const double Gap = 24;
    private const double Drop = 4;

    public void Draw(Svg svg, IEnumerable<(double Y, string Name)> lines)
    {
        var sorted = lines.OrderBy(line => line.Y).ToList();
        var places = new double[sorted.Count];
        for (var i = 0; i < places.Length; i++)
        {
            places[i] = Math.Max(sorted[i].Y, i == 0 ? Head : places[i - 1] + Between);
        }

        // What was pushed below the foot goes up again, all above it with it.
        for (var i = places.Length - 1; i >= 0; i--)
        {
            places[i] = Math.Min(places[i], i == places.Length - 1 ? Foot : places[i + 1] - Between);
        }

        for (var i = 0; i < places.Length; i++)
        {
            svg.Line("lead", Right + 3, sorted[i].Y, Right + Gap - 4, places[i]);
            svg.Text(Lettering.Value.Class, Right + Gap, places[i] + Drop, Lettering.Value.Fitted(sorted[i].Name, Width - Right - Gap));
        }
    }
}
