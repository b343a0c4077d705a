using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Sections;

/// <summary>When the core of a piece gets to a temperature, and how much heat an oven must give for it to get there in a given time.</summary>
internal static class SectionTime
{
    /// <summary>How the time to a core falls with the heat of the oven, for the first guess: t ~ s^-0.5, between a piece whose surface holds it up and one whose inside does.</summary>
    private const double FirstExponent = -0.5;

    /// <summary>An oven that would have to give more or less than this many times the heat is none.</summary>
    private const double MostTimes = 8;

    private const int MostBakes = 8;

    /// <summary>Seconds until the core is at a temperature; infinite when it is not after <paramref name="most"/> seconds.</summary>
    public static double To(BakingPiece piece, double core, double most, CancellationToken stop = default) =>
        To(piece, SectionBake.WorkingGrid(piece), core, most, stop);

    /// <summary>The factor on the heat of the oven at which the core is at a temperature after so many seconds; null when no oven does that.</summary>
    public static double? HeatFor(BakingPiece piece, double core, double seconds, CancellationToken stop = default)
    {
        // The coarse grid is off by a few seconds, and so is only asked which way to go.
        var rough = Solve(piece, Coarse(piece), core, seconds, start: (1, FirstExponent), tolerance: 0.02, stop);
        return rough is { } near ? Solve(piece, SectionBake.WorkingGrid(piece), core, seconds, near, tolerance: 1e-3, stop)?.Factor : null;
    }

    private static CylinderGrid Coarse(BakingPiece piece) => new(piece.Radius.Metres, piece.Height.Metres, 10, 16, SectionBake.WayToCore(piece) / 14);

    private static (double Factor, double Exponent)? Solve(
        BakingPiece piece, CylinderGrid grid, double core, double seconds, (double Factor, double Exponent) start, double tolerance, CancellationToken stop)
    {
        var (factor, exponent) = start;
        (double Factor, double Time)? last = null;
        for (var bake = 0; bake < MostBakes; bake++)
        {
            var time = To(piece.Scaled(factor), grid, core, 4 * seconds, stop);
            if (double.IsInfinity(time))
            {
                // Too little heat to get there at all within four times the minutes.
                (last, factor) = (null, factor * 1.6);
                if (factor > MostTimes)
                {
                    return null;
                }

                continue;
            }

            if (last is { } other && Math.Abs(factor / other.Factor - 1) > 1e-6)
            {
                exponent = Math.Clamp(Elementary.Log(time / other.Time) / Elementary.Log(factor / other.Factor), -3, -0.1);
            }

            if (Math.Abs((time / seconds) - 1) < tolerance)
            {
                // The little that is left lies on the line through the last two.
                return (factor * Elementary.Pow(seconds / time, 1 / exponent), exponent);
            }

            last = (factor, time);
            factor *= Elementary.Pow(seconds / time, 1 / exponent);
            if (!(factor is > 1 / MostTimes and < MostTimes))
            {
                return null;
            }
        }

        return null;
    }

    private static double To(BakingPiece piece, CylinderGrid grid, double core, double most, CancellationToken stop)
    {
        SectionMoment? before = null;
        foreach (var moment in SectionBake.Run(new(piece, grid), most, SectionBake.WorkingStep(piece), stop))
        {
            if (moment.Core >= core)
            {
                return before is { } last ? last.Seconds + ((moment.Seconds - last.Seconds) * (core - last.Core) / (moment.Core - last.Core)) : 0;
            }

            before = moment;
        }

        return double.PositiveInfinity;
    }
}
