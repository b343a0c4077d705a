namespace Doughwright.Engine.TextForm;

/// <summary>A piece of a text under a name.</summary>
/// <param name="Above">Comments and blank lines above it.</param>
/// <param name="Own">Its own lines.</param>
internal sealed record Slot(string Name, IReadOnlyList<string> Above, IReadOnlyList<string> Own);

/// <summary>Pieces of a text in another order, some changed, some gone, some new; those that stay keep their lines and their place.</summary>
internal static class SlotMerge
{
    /// <param name="slots">As they stand in the text.</param>
    /// <param name="before">All names before the change, also of what the text leaves unsaid.</param>
    /// <param name="after">All names after it.</param>
    /// <param name="changed">The new lines of a slot; null when it stays as it is.</param>
    /// <param name="same">Whether what two names stand for is equal.</param>
    /// <param name="fresh">Lines of what is new.</param>
    public static IEnumerable<string> Of(
        IReadOnlyList<Slot> slots,
        IReadOnlyList<string> before,
        IReadOnlyList<string> after,
        Func<string, string, IEnumerable<string>?> changed,
        Func<string, string, bool> same,
        Func<string, IEnumerable<string>> fresh)
    {
        var earlier = Earlier(before, after);
        var there = slots.ToDictionary(slot => slot.Name);
        var stays = InTheirPlace(before, [.. after.Where(name => earlier.TryGetValue(name, out var was) && there.ContainsKey(was)).Select(name => earlier[name])]);
        var merged = Left(slots, stays, before.ToHashSet(), earlier.Values.ToHashSet());
        var place = 0;
        foreach (var name in after)
        {
            var was = earlier.GetValueOrDefault(name);
            if (was is not null && there.TryGetValue(was, out var slot))
            {
                var now = changed(was, name) is { } lines ? slot with { Own = [.. lines] } : slot;
                if (!stays.Contains(was))
                {
                    merged.Insert(place, now);
                }
                else
                {
                    place = place < merged.Count && merged[place].Name == was ? place : merged.FindIndex(one => one.Name == was);
                    merged[place] = merged[place] with { Own = now.Own };
                }

                place++;
            }
            else if (was is null || !same(was, name))
            {
                merged.Insert(place, new(name, Blank(merged, place), [.. fresh(name)]));
                place++;
            }
        }

        return merged.SelectMany(slot => slot.Above.Concat(slot.Own));
    }

    /// <summary>What each name was called before. A name that took the place of another is the same thing renamed.</summary>
    private static Dictionary<string, string> Earlier(IReadOnlyList<string> before, IReadOnlyList<string> after)
    {
        var (old, now) = (before.ToHashSet(), after.ToHashSet());
        var earlier = after.Where(old.Contains).ToDictionary(name => name);
        if (before.Count == after.Count)
        {
            foreach (var (was, name) in before.Zip(after).Where(pair => !now.Contains(pair.First) && !old.Contains(pair.Second)))
            {
                earlier[name] = was;
            }
        }

        return earlier;
    }

    /// <summary>The most names that need not be moved: a longest rising run of their places before.</summary>
    private static HashSet<string> InTheirPlace(IReadOnlyList<string> before, IReadOnlyList<string> wanted)
    {
        var places = before.Select((name, index) => (name, index)).ToDictionary(one => one.name, one => one.index);
        var tails = new List<int>();
        var previous = new int[wanted.Count];
        for (var i = 0; i < wanted.Count; i++)
        {
            var (low, high) = (0, tails.Count);
            while (low < high)
            {
                var middle = (low + high) / 2;
                (low, high) = places[wanted[tails[middle]]] < places[wanted[i]] ? (middle + 1, high) : (low, middle);
            }

            previous[i] = low > 0 ? tails[low - 1] : -1;
            if (low == tails.Count)
            {
                tails.Add(i);
            }
            else
            {
                tails[low] = i;
            }
        }

        var stays = new HashSet<string>();
        for (var i = tails.Count > 0 ? tails[^1] : -1; i >= 0; i = previous[i])
        {
            stays.Add(wanted[i]);
        }

        return stays;
    }

    /// <summary>What stays where it is. The words above what goes stay too; the blank lines above it go with it.</summary>
    private static List<Slot> Left(IReadOnlyList<Slot> slots, HashSet<string> stays, HashSet<string> before, HashSet<string> still)
    {
        var above = new List<string>();
        var left = new List<Slot>();
        foreach (var slot in slots)
        {
            if (stays.Contains(slot.Name) || !before.Contains(slot.Name))
            {
                left.Add(above.Count == 0 ? slot : slot with { Above = [.. above, .. slot.Above] });
                above.Clear();
            }
            else if (!still.Contains(slot.Name) && slot.Above.Any(line => line.Trim().Length > 0))
            {
                above.AddRange(slot.Above);
            }
        }

        return above.Count == 0 ? left : [.. left, new("", above, [])];
    }

    /// <summary>Where the neighbours stand apart, so does what comes between them.</summary>
    private static IReadOnlyList<string> Blank(List<Slot> merged, int at)
    {
        var neighbours = merged.Skip(Math.Max(at - 1, 1)).Take(2);
        return neighbours.SelectMany(slot => slot.Above).FirstOrDefault(line => line.Trim().Length == 0) is { } blank ? [blank] : [];
    }
}
