using System.Globalization;
using System.Text;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>Colours of a ribbon of warmth along time. A stop stands wherever the colour changes, and one before a leap, so that a plateau stays one.</summary>
internal static class WarmthRibbon
{
    private const double Leap = 2;

    public static string Gradient(string id, IReadOnlyList<RisePoint> points)
    {
        var end = points[^1].After.Minutes;
        var defs = new StringBuilder($"<linearGradient id=\"{id}\">");
        string? last = null;
        RisePoint before = points[0];
        foreach (var point in points)
        {
            var @class = Warmth.Class(point.Temperature);
            if (last is not null && @class != last && Math.Abs((point.Temperature - before.Temperature).Kelvins) > Leap)
            {
                Stop(before, Warmth.Class(before.Temperature));
            }

            if (@class != last)
            {
                Stop(point, @class);
            }

            last = @class;
            before = point;
        }

        Stop(points[^1], Warmth.Class(points[^1].Temperature));
        return defs.Append("</linearGradient>").ToString();

        void Stop(RisePoint point, string @class) => defs.Append(
            CultureInfo.InvariantCulture,
            $"<stop offset=\"{(end > 0 ? Math.Max(0, point.After.Minutes / end) : 0).ToString("0.###", CultureInfo.InvariantCulture)}\" class=\"{@class}\"/>");
    }
}
