using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Sections;

/// <summary>When the core of a piece gets to a temperature, and how much heat an oven must give for it to get there in a given time.</summary>
internal static class SectionTime
{
    /// <summary>How the time to a core falls with the heat of the oven, for the first guess: t ~ s^-0.5, between a piece whose surface holds it up and one whose inside does.</summary>
    private const double FirstExponent = -0.5;

    /// <summary>An oven that would have to give more or less than this many times the heat is none.</summary>
    private const double MostTimes = 8;

    private const int MostBakes = 14;

    private const double Tolerance = 0.02;

    /// <summary>A bake is followed for so many times the minutes asked for.</summary>
    private const double LongestOfAsked = 2.5;

    /// <summary>More heat never makes a bake longer.</summary>
    private const double SteepestLeast = -0.05;

    /// <summary>In ln, where a bake never ends.</summary>
    private const double FirstLeap = 0.4;

    /// <summary>Seconds until the core is at a temperature; infinite when it is not after <paramref name="most"/> seconds.</summary>
    public static double To(BakingPiece piece, double core, double most, CancellationToken stop = default) =>
        To(piece, SectionBake.WorkingGrid(piece), core, most, stop);

    /// <summary>
    /// The factor on the heat of the oven at which the core is at a temperature after so many seconds; null when no oven does that. On a coarse grid:
    /// within some hundredths of those seconds on the working one.
    /// </summary>
    public static double? HeatFor(BakingPiece piece, double core, double seconds, CancellationToken stop = default)
    {
        var grid = new CylinderGrid(piece.Radius.Metres, piece.Height.Metres, 10, 16, SectionBake.WayToCore(piece) / 14);
        return Solve(piece, grid, core, seconds, stop);
    }

    /// <summary>
    /// Secants in the logarithms, held between a heat that was too little and one that was too much: near boiling the time hangs steeply on the heat,
    /// and a core that never gets there counts as too little.
    /// </summary>
    private static double? Solve(BakingPiece piece, CylinderGrid grid, double core, double seconds, CancellationToken stop)
    {
        var (at, slope) = (0.0, FirstExponent);
        var (least, most) = (-Elementary.Log(MostTimes), Elementary.Log(MostTimes));
        var (low, high, isTried) = (least, most, false);
        (double At, double Off)? last = null;
        for (var bake = 0; bake < MostBakes; bake++)
        {
            var time = To(piece.Scaled(Elementary.Exp(at)), grid, core, LongestOfAsked * seconds, stop);
            var off = double.IsFinite(time) ? Elementary.Log(time / seconds) : double.PositiveInfinity;
            if (last is { } other && double.IsFinite(off) && double.IsFinite(other.Off) && at != other.At)
            {
                slope = Math.Min((off - other.Off) / (at - other.At), SteepestLeast);
            }

            if (Math.Abs(off) < Tolerance)
            {
                // The little that is left lies on the line through the last two.
                return Elementary.Exp(at - (off / slope));
            }

            (low, high) = off > 0 ? (at, high) : (low, at);
            last = (at, off);
            var next = double.IsFinite(off) ? at - (off / slope) : at + FirstLeap;
            var isBeyond = !isTried && (next >= most || next <= least);
            // What seems to ask for more than any oven gives, or for less, is tried there once: if that is not enough, no oven does it.
            at = isBeyond ? Math.Clamp(next, least, most) : next > low && next < high ? next : (low + high) / 2;
            isTried |= isBeyond;
            if (high - low < 1e-6 || low >= most || high <= least)
            {
                return null;
            }
        }

        return null;
    }

    private static double To(BakingPiece piece, CylinderGrid grid, double core, double most, CancellationToken stop)
    {
        SectionMoment? before = null;
        foreach (var moment in SectionBake.Run(new(piece, grid), most, SectionBake.WorkingStep(piece, most / LongestOfAsked), stop))
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
