using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>How much longer one choice takes than another, lane by lane, so that what both share drops out of the range.</summary>
internal static class Slips
{
    /// <summary>Null when the likely time of either is not known or never ends.</summary>
    public static Slip? Of(PerLane? other, PerLane target)
    {
        if (other is not { } there || !double.IsFinite(there.Central) || !(target.Central > 0))
        {
            return null;
        }

        var longer = there.With(target, (slow, quick) => double.IsFinite(quick) ? slow - quick : double.PositiveInfinity);
        var share = there.With(target, (slow, quick) => double.IsFinite(quick) && quick > 0 ? 100 * ((slow / quick) - 1) : double.PositiveInfinity);
        var spread = Spread.OfLanes(share.Values);
        return new(Report.TimeOf(longer)!.Value, new(Percent.FromValue(spread.Central), Percent.FromValue(spread.Low), spread.IsOpenHigh ? null : Percent.FromValue(spread.High)));
    }
}
