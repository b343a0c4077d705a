using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>The range of a curve: between the times at which one draw in ten, and all but one in ten, have reached a level.</summary>
internal static class RiseBand
{
    public static IReadOnlyList<(double X, double Y)> Of(RiseCurve own, RiseFrame frame)
    {
        var early = frame.Run(own.Reached.Select(level => (level.After.Low, level.Growth)));
        var late = frame.Run(own.Reached.TakeWhile(level => level.After.High is not null).Select(level => (level.After.High!.Value, level.Growth)));
        if (early.Count == 0)
        {
            return [];
        }

        // What is not reached in the picture, or never, stays open to the right.
        (double X, double Y)[] open = late.Count > 0 && late[^1].Y <= early[^1].Y + 1 ? [] :
        [
            (Math.Max(RiseFrame.Right, early[^1].X), early[^1].Y),
            (RiseFrame.Right, late.Count > 0 ? late[^1].Y : RiseFrame.Foot),
        ];
        return [.. early, .. open, .. late.Reverse()];
    }
}
