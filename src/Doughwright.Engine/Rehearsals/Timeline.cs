namespace Doughwright.Engine.Rehearsals;

/// <summary>
/// Lays work on one time line with one pair of hands and one oven. Everything that can run beside something else does. Parts are laid
/// backwards from where they are needed, so that a cooling, a preheating or a ripening ends when the next step wants it and nothing waits.
/// </summary>
internal sealed class Timeline
{
    private readonly Work[] work;
    private readonly double[] heads;
    private readonly double[] starts;
    private readonly bool[] placed;

    // Of each piece: its followers that are not laid yet, and the earliest start of those that are.
    private readonly int[] waiting;
    private readonly double[] wanted;
    private readonly Busy hands = new();
    private readonly Busy oven = new();

    private Timeline(Work[] work)
    {
        this.work = work;
        (starts, placed, wanted) = (new double[work.Length], new bool[work.Length], new double[work.Length]);
        (heads, waiting) = (new double[work.Length], new int[work.Length]);
        Array.Fill(heads, double.NaN);
        for (var index = 0; index < work.Length; index++)
        {
            Head(index);
            foreach (var before in work[index].Before)
            {
                waiting[before]++;
                wanted[before] = double.PositiveInfinity;
            }
        }
    }

    /// <summary>Starts in minutes after the first piece of work begins, in the order of the work.</summary>
    public static double[] Lay(Work[] work)
    {
        var line = new Timeline(work);
        for (var round = 0; round < work.Length; round++)
        {
            line.Place(line.Next());
        }

        return line.FromFirst();
    }

    /// <summary>The longest way to each piece of work from the very beginning, itself included.</summary>
    private double Head(int index)
    {
        if (double.IsNaN(heads[index]))
        {
            var longest = 0.0;
            foreach (var before in work[index].Before)
            {
                longest = Math.Max(longest, Head(before));
            }

            heads[index] = work[index].Minutes + longest;
        }

        return heads[index];
    }

    /// <summary>Of the work whose followers are all laid, the one that ends last; of equals the one with the longest way before it.</summary>
    private int Next()
    {
        var best = -1;
        for (var index = 0; index < work.Length; index++)
        {
            if (placed[index] || waiting[index] > 0)
            {
                continue;
            }

            if (best < 0 || wanted[index] > wanted[best] || (wanted[index] == wanted[best] && (heads[index] > heads[best] || (heads[index] == heads[best] && Weight(index).CompareTo(Weight(best)) > 0))))
            {
                best = index;
            }
        }

        return best;
    }

    /// <summary>Of work that is alike in all else, what is hardest to find a place for goes first, so that its place in the list says nothing.</summary>
    private (bool Oven, double Hands, double Latest, double Minutes) Weight(int index) => (
        work[index].UsesOven,
        work[index].Hands.Sum(hands => hands.Minutes),
        work[index].Hands.Select(hands => hands.Offset + hands.Minutes).DefaultIfEmpty(0).Max(),
        work[index].Minutes);

    private void Place(int index)
    {
        var piece = work[index];
        var start = Earlier(piece, wanted[index] - piece.Minutes);
        foreach (var (offset, minutes) in piece.Hands)
        {
            if (minutes > 0)
            {
                hands.Add(start + offset, start + offset + minutes);
            }
        }

        if (piece.UsesOven)
        {
            oven.Add(start, start + piece.Minutes);
        }

        starts[index] = start;
        placed[index] = true;
        foreach (var before in piece.Before)
        {
            waiting[before]--;
            wanted[before] = Math.Min(wanted[before], start);
        }
    }

    /// <summary>The latest start at which hands and oven are free, not after the one given.</summary>
    private double Earlier(Work piece, double start)
    {
        while (true)
        {
            var moved = start;
            foreach (var (offset, minutes) in piece.Hands)
            {
                moved = Math.Min(moved, hands.FreeBefore(moved + offset, minutes) - offset);
            }

            if (piece.UsesOven)
            {
                moved = Math.Min(moved, oven.FreeBefore(moved, piece.Minutes));
            }

            if (!(moved < start))
            {
                return start;
            }

            start = moved;
        }
    }

    private double[] FromFirst()
    {
        var first = starts.DefaultIfEmpty(0).Min();
        return Array.ConvertAll(starts, start => start - first);
    }
}
