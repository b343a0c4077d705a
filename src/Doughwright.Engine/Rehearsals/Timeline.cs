namespace Doughwright.Engine.Rehearsals;

/// <summary>One piece of work to lay on the time line.</summary>
/// <param name="Minutes">Length; finite.</param>
/// <param name="Before">Indices of what must have ended before it starts.</param>
/// <param name="Hands">When within it a person is busy: offset and length, in minutes.</param>
/// <param name="UsesOven">Whether it holds the one oven.</param>
internal sealed record Work(double Minutes, IReadOnlyList<int> Before, IReadOnlyList<(double Offset, double Minutes)> Hands, bool UsesOven);

/// <summary>
/// Lays work on one time line with one pair of hands and one oven. Everything that can run beside something else does. Parts are laid
/// backwards from where they are needed, so that a cooling, a preheating or a ripening ends when the next step wants it and nothing waits.
/// </summary>
internal static class Timeline
{
    /// <summary>Starts in minutes after the first piece of work begins, in the order of the work.</summary>
    public static double[] Lay(IReadOnlyList<Work> work)
    {
        var starts = new double[work.Count];
        var placed = new bool[work.Count];
        var heads = Heads(work);
        var hands = new List<(double From, double To)>();
        var oven = new List<(double From, double To)>();
        for (var round = 0; round < work.Count; round++)
        {
            var next = Next(work, starts, placed, heads);
            var start = LatestEnd(work, starts, next) - work[next].Minutes;
            starts[next] = Earlier(work[next], start, hands, oven);
            Reserve(work[next], starts[next], hands, oven);
            placed[next] = true;
        }

        var first = starts.Length == 0 ? 0 : starts.Min();
        return [.. starts.Select(start => start - first)];
    }

    /// <summary>The longest way to each piece of work from the very beginning, itself included.</summary>
    private static double[] Heads(IReadOnlyList<Work> work)
    {
        var heads = new double[work.Count];
        Array.Fill(heads, double.NaN);
        double Head(int index)
        {
            if (double.IsNaN(heads[index]))
            {
                heads[index] = work[index].Minutes + work[index].Before.Select(Head).DefaultIfEmpty(0).Max();
            }

            return heads[index];
        }

        for (var index = 0; index < work.Count; index++)
        {
            Head(index);
        }

        return heads;
    }

    /// <summary>Of the work whose followers are all laid, the one that ends last; of equals the one with the longest way before it.</summary>
    private static int Next(IReadOnlyList<Work> work, double[] starts, bool[] placed, double[] heads)
    {
        var best = -1;
        var bestEnd = double.NegativeInfinity;
        for (var index = 0; index < work.Count; index++)
        {
            if (placed[index] || Followers(work, index).Any(follower => !placed[follower]))
            {
                continue;
            }

            var end = LatestEnd(work, starts, index);
            if (best < 0 || end > bestEnd || (end == bestEnd && heads[index] > heads[best]))
            {
                (best, bestEnd) = (index, end);
            }
        }

        return best;
    }

    private static IEnumerable<int> Followers(IReadOnlyList<Work> work, int index) =>
        Enumerable.Range(0, work.Count).Where(other => work[other].Before.Contains(index));

    private static double LatestEnd(IReadOnlyList<Work> work, double[] starts, int index) =>
        Followers(work, index).Select(follower => starts[follower]).DefaultIfEmpty(0).Min();

    private static double Earlier(Work piece, double start, List<(double From, double To)> hands, List<(double From, double To)> oven)
    {
        while (true)
        {
            var moved = start;
            foreach (var (offset, minutes) in piece.Hands)
            {
                moved = Math.Min(moved, BeforeAny(hands, moved + offset, minutes) - offset);
            }

            if (piece.UsesOven)
            {
                moved = Math.Min(moved, BeforeAny(oven, moved, piece.Minutes));
            }

            if (moved >= start)
            {
                return start;
            }

            start = moved;
        }
    }

    /// <summary>The latest time not after <paramref name="from"/> at which a stretch of that length is free.</summary>
    private static double BeforeAny(List<(double From, double To)> taken, double from, double minutes)
    {
        foreach (var stretch in taken.OrderByDescending(stretch => stretch.From))
        {
            // A hair of tolerance: what ends where the next begins does not overlap, whatever the last digit says.
            if (from < stretch.To - 1e-9 && from + minutes > stretch.From + 1e-9)
            {
                from = stretch.From - minutes;
            }
        }

        return from;
    }

    private static void Reserve(Work piece, double start, List<(double From, double To)> hands, List<(double From, double To)> oven)
    {
        hands.AddRange(piece.Hands.Where(stretch => stretch.Minutes > 0).Select(stretch => (start + stretch.Offset, start + stretch.Offset + stretch.Minutes)));
        if (piece.UsesOven)
        {
            oven.Add((start, start + piece.Minutes));
        }
    }
}
