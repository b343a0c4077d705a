using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes.Live;

namespace Doughwright.Engine.Recipes.Checks;

/// <summary>The name of a value that words in brackets may have meant. Word by word, because "oven temperature" is no slip for "mix temperature".</summary>
internal static class LiveNameNear
{
    private const int MostSlipsOfAll = 2;

    /// <summary>Words that say what of something; "oven temperature" means the oven.</summary>
    private static readonly string[] WhatOf = [LiveNames.Time, LiveNames.Temperature, LiveNames.Weight];

    /// <param name="known">Names there are, the likelier first.</param>
    public static string? Of(string name, IReadOnlyList<string> known)
    {
        var words = Words(name);
        return words.Length == 0 ? null
            : WordByWord(words, known)
            ?? known.FirstOrDefault(one => Words(one) is var longer && longer.Length > words.Length && (longer.AsSpan().EndsWith(words) || IsPlaced(words, longer)))
            ?? known.FirstOrDefault(one => words.Length > 1 && WhatOf.Any(what => IsNear(words[^1], what)) && Words(one).AsSpan().SequenceEqual(words.AsSpan(0, words.Length - 1)))
            // A space too many or too few.
            ?? known.Select(one => (Name: one, Slips: Nearest.Distance(name, one)))
                .Where(one => one.Slips <= MostSlipsOfAll && one.Slips * 3 <= name.Length)
                .OrderBy(one => one.Slips).Select(one => one.Name).FirstOrDefault();
    }

    /// <summary>Each word has few slips for its length; the fewest of all together.</summary>
    private static string? WordByWord(string[] words, IReadOnlyList<string> known)
    {
        var (best, fewest) = ((string?)null, int.MaxValue);
        foreach (var one in known)
        {
            var meant = Words(one);
            if (meant.Length != words.Length)
            {
                continue;
            }

            var slips = meant.Zip(words, (right, written) => (Slips: Nearest.Distance(written, right), Most: Most(written, right))).ToArray();
            if (slips.All(word => word.Slips <= word.Most) && slips.Sum(word => word.Slips) is var all && all < fewest)
            {
                (best, fewest) = (one, all);
            }
        }

        return best;
    }

    /// <summary>"strong white flour" where two parts have it: it has to be said in which.</summary>
    private static bool IsPlaced(string[] words, string[] longer) => longer.AsSpan().StartsWith(words) && longer[words.Length] == LiveNames.In;

    private static bool IsNear(string written, string right) => Nearest.Distance(written, right) <= Most(written, right);

    private static int Most(string written, string right) => Math.Max(1, Math.Min(written.Length, right.Length) / 3);

    private static string[] Words(string name) => Slug.Of(name).Split('-', StringSplitOptions.RemoveEmptyEntries);
}
