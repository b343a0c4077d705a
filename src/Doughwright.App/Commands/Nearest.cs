namespace Doughwright.App.Commands;

/// <summary>Which known word was probably meant. Offered to a person, never taken.</summary>
internal static class Nearest
{
    /// <summary>The known word with the fewest slips, if these are few for its length.</summary>
    public static string? Of(string given, IEnumerable<string> known)
    {
        string? best = null;
        var fewest = int.MaxValue;
        foreach (var word in known)
        {
            var slips = given.Length > 64 ? int.MaxValue : Slips(given.ToLowerInvariant(), word.ToLowerInvariant());
            if (slips < fewest)
            {
                (best, fewest) = (word, slips);
            }
        }

        return best is not null && fewest <= Math.Max(1, Math.Min(given.Length, best.Length) / 3) ? best : null;
    }

    /// <summary>Letters left out, added, changed or swapped with their neighbour.</summary>
    private static int Slips(string a, string b)
    {
        var cost = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    cost[i, j] = i + j;
                    continue;
                }

                var change = cost[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                cost[i, j] = Math.Min(change, 1 + Math.Min(cost[i - 1, j], cost[i, j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    cost[i, j] = Math.Min(cost[i, j], cost[i - 2, j - 2] + 1);
                }
            }
        }

        return cost[a.Length, b.Length];
    }
}
