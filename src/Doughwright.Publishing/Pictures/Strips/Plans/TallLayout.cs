using Doughwright.Publishing.Pictures.Strips.Geometry;

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>Sizes of the tall strip.</summary>
internal static class TallLayout
{
    public const double Top = 34;
    public const double Tail = 7;

    public const double Width = 360;
    public const double Bench = 172;

    private const double PerMinute = 1.9;
    private const double Core = 45;
    private const double Highest = 118;

    /// <summary>Left of this lie the rails.</summary>
    private const double HighestLane = 130;

    private const double Shrink = 0.93;
    private const int Rounds = 40;

    private static readonly LaneRoom Room = new(63, 28.5, 9, 20);
    private static readonly LaneRoom Narrow = new(56, 5, 5, 6);

    /// <param name="written">Height of what is written beside the bench.</param>
    public static Layout Of(Plan plan, double written)
    {
        var folds = LongWaits.Of(plan);
        var drawn = WideLayout.DrawnMinutes(plan, folds) + Tail;
        var perMinute = Math.Max(PerMinute, (written - (folds.Count * FoldedWait.Drawn)) / drawn);
        var time = new TimeScale(Top, perMinute, folds);
        var perGram = WideLayout.PerGram(plan, Core, Highest);
        var (room, lanes) = (Narrow, Lanes.Of(plan, time, perGram, Room));
        for (var round = 0; round < Rounds && lanes.Any(lane => lane.Top > HighestLane); round++)
        {
            lanes = Lanes.Of(plan, time, perGram, room);
            (room, perGram) = lanes.Any(lane => lane.Top > HighestLane)
                ? (room with { First = room.First * Shrink, Gap = room.Gap * Shrink }, perGram * Shrink)
                : (room, perGram);
        }

        var length = Top + (drawn * perMinute) + (folds.Count * FoldedWait.Drawn) + Top;
        return new(plan, new(Direction.Tall, time, Bench, perGram, length, Width), lanes);
    }

    /// <param name="under">More room under the bench.</param>
    public static Layout Roomier(Layout layout, double under) => layout with { Frame = layout.Frame with { Length = layout.Frame.Length + under } };
}
