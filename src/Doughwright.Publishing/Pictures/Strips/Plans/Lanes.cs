using Doughwright.Publishing.Pictures.Strips.Geometry;

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>Gives every strand a height. What is taken up first lies lowest, so that nothing falls through a strand that goes on.</summary>
internal static class Lanes
{
    /// <summary>A strand is never thinner, so that a pinch is still seen.</summary>
    public const double Thinnest = 1.6;

    /// <summary>A wash is a thread of this thickness whatever it weighs.</summary>
    public const double Thread = 2;

    public static IReadOnlyList<Lane> Of(Plan plan, TimeScale time, double perGram, LaneRoom room)
    {
        var laid = new List<Lane>();
        foreach (var strand in plan.Strands.OrderBy(strand => strand.JoinStart).ThenByDescending(strand => strand.Start))
        {
            var thickness = Thickness(strand, perGram);
            var bottom = Math.Max(room.First, OverDough(plan, strand, perGram) + room.OverDough);
            foreach (var below in laid.Where(lane => Meet(lane.Strand, strand, time, room.Reach)).OrderBy(lane => lane.Bottom))
            {
                if (bottom + thickness > below.Bottom - room.Gap && bottom < below.Top + room.Gap)
                {
                    bottom = below.Top + room.Gap;
                }
            }

            laid.Add(new(strand, bottom + (thickness / 2), thickness));
        }

        return laid;
    }

    private static double Thickness(PlannedStrand strand, double perGram) =>
        strand.Manner == Manner.Thread ? Thread : Math.Max(Thinnest, strand.Track.Heaviest * perGram);

    /// <summary>How high the dough stands while the strand is there; below everything when it is not yet on the bench.</summary>
    private static double OverDough(Plan plan, PlannedStrand strand, double perGram) =>
        plan.Body is not { } body || strand.JoinStart <= body.Start
            ? double.NegativeInfinity
            : perGram * (body.Heaviest + (plan.DoughGrams * (body.MostSwelling(Math.Max(strand.Start, body.Start), strand.JoinEnd) - 1)));

    private static bool Meet(PlannedStrand one, PlannedStrand other, TimeScale time, double reach)
    {
        var (a, b) = (time.Place(one.Start), time.Place(other.Start));
        var (aEnd, bEnd) = (Math.Max(time.Place(one.JoinEnd), a + reach), Math.Max(time.Place(other.JoinEnd), b + reach));
        return a < bEnd && b < aEnd;
    }
}
