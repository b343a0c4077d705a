namespace Doughwright.Engine.Recipes;

/// <summary>The known word that a person may have meant. Offered, never taken.</summary>
public static class Nearest
{
    /// <summary>The known word with the fewest letters changed, added, lost or swapped; the first of equals.</summary>
    internal static string Of(string written, IEnumerable<string> known) => known.MinBy(word => Distance(written, word)) ?? "";

    /// <summary>The nearest known word, if its slips are few for its length.</summary>
    public static string? Within(string written, IEnumerable<string> known) =>
        Of(written, known) is { Length: > 0 } near && Distance(written, near) <= Math.Max(1, Math.Min(written.Length, near.Length) / 3) ? near : null;

    /// <summary>
    /// Letters changed, added, lost, or swapped with their neighbour. Long words are cut: no known word has more than 40 letters.
    /// </summary>
    internal static int Distance(string a, string b)
    {
        a = a[..Math.Min(a.Length, 40)].ToLowerInvariant();
        b = b[..Math.Min(b.Length, 40)].ToLowerInvariant();
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                rows[i, j] = i == 0 || j == 0 ? i + j : Math.Min(
                    Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1,
                    rows[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 1);
                }
            }
        }

        return rows[a.Length, b.Length];
    }
}
