using Doughwright.Engine.Baking.Sections;

namespace Doughwright.Engine.Rehearsals.Sections;

/// <summary>When a piece comes out: so many times as long as its core takes to such a temperature.</summary>
/// <param name="core">°C.</param>
/// <param name="longer">1 or more.</param>
internal sealed class SectionEnd(double core, double longer)
{
    private double comesOut = double.PositiveInfinity;

    /// <summary>Which share of the last step it takes until it comes out; null when it is not in the last step. Asked after every step.</summary>
    public double? Reached(IReadOnlyList<SectionMoment> course)
    {
        var now = course[^1];
        if (double.IsPositiveInfinity(comesOut) && now.Core >= core)
        {
            var share = course.Count < 2 ? 0 : (core - course[^2].Core) / (now.Core - course[^2].Core);
            comesOut = longer * (course.Count < 2 ? now.Seconds : course[^2].Seconds + (share * (now.Seconds - course[^2].Seconds)));
        }

        return now.Seconds < comesOut ? null : course.Count < 2 ? 0 : (comesOut - course[^2].Seconds) / (now.Seconds - course[^2].Seconds);
    }
}
