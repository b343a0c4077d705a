using Doughwright.Publishing.Pictures.Strips.Geometry;

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>Sizes of the wide strip.</summary>
internal static class WideLayout
{
    public const double Left = 6;

    /// <summary>At the right, for what comes out and for the names of the rails.</summary>
    public const double RightMargin = 104;

    /// <summary>The dough is drawn on for so many minutes after the last step, and as many as this stay free in all.</summary>
    public const double Tail = 11;

    /// <summary>Between the bench and the lower edge: cues, hands, hob and oven.</summary>
    public const double UnderBench = 104;

    /// <summary>A strip that breaks off early is drawn as part of a day of so many minutes, not blown up.</summary>
    private const double Shortest = 180;

    private const double Width = 1216;
    private const double Bench = 268;

    /// <summary>Height of the dough without gas: doubled it stands twice as high.</summary>
    private const double Core = 56;

    /// <summary>The dough never stands higher, so that it stays under the heads.</summary>
    private const double Highest = 166;

    /// <summary>Over the highest lane before the dough is there: its name, and the hours.</summary>
    private const double OverLane = 72;

    /// <summary>Over a lane beside the dough: its name, and the heads of the steps.</summary>
    private const double OverLateLane = 130;

    private static readonly LaneRoom Room = new(78, 56, 30, 170);

    public static double Right => Width - RightMargin + Left;

    public static Layout Of(Plan plan, double? span)
    {
        var time = TimeOf(plan, span);
        var perGram = PerGram(plan, Core, Highest);
        var lanes = Lanes.Of(plan, time, perGram, Room);
        var bench = lanes.Select(lane => lane.Top + (IsLate(plan, lane) ? OverLateLane : OverLane)).Append(Bench).Max();
        return new(plan, new(Direction.Wide, time, bench, perGram, Width, bench + UnderBench), lanes);
    }

    /// <param name="over">More room over everything, for heads that stand over others.</param>
    /// <param name="under">More room under the bench.</param>
    public static Layout Roomier(Layout layout, double over, double under) =>
        layout with { Frame = layout.Frame with { Bench = layout.Frame.Bench + over, Breadth = layout.Frame.Breadth + over + under } };

    public static TimeScale TimeOf(Plan plan, double? span)
    {
        var folds = LongWaits.Of(plan);
        var own = DrawnMinutes(plan, folds);
        if (span < own - 1e-6)
        {
            throw new ArgumentOutOfRangeException(nameof(span), span, "The strip is longer than the span it should be drawn in.");
        }

        return new(Left, (Width - Left - RightMargin - (FoldedWait.Drawn * folds.Count)) / ((span ?? own) + Tail), folds);
    }

    public static double DrawnMinutes(Plan plan, IReadOnlyList<FoldedWait> folds) => Math.Max(Shortest, plan.End - folds.Sum(fold => fold.Minutes));

    /// <summary>Height of a gram, so that the dough is as high as it should be and, risen, no higher than it may.</summary>
    public static double PerGram(Plan plan, double core, double highest)
    {
        var tallest = plan.Body is { } body
            ? body.Heaviest + (plan.DoughGrams * (body.MostSwelling(body.Start, body.End) - 1))
            : plan.DoughGrams;
        return Math.Min(core / plan.DoughGrams, highest / tallest);
    }

    private static bool IsLate(Plan plan, Lane lane) => plan.Body is { } body && lane.Strand.JoinStart > body.Start;
}
