namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Breaks a text into lines at its spaces, never at a no-break space.</summary>
internal static class Wrapping
{
    /// <summary>Steps in which a cue gets shorter, and the least that is worth reading.</summary>
    private const double Step = 30;
    private const double Least = 40;

    /// <summary>Null when a word alone is too long.</summary>
    public static string[]? Of(string text, Type type, double room)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' '))
        {
            if (type.Width(word) > room)
            {
                return null;
            }

            var longer = line.Length == 0 ? word : line + " " + word;
            if (type.Width(longer) > room)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        return [.. lines, line];
    }

    /// <summary>In so many lines at most; where it takes more, or has a word that is too long, one line that is cut off, null when nothing is left of it.</summary>
    public static string[]? OrCut(string text, Type type, double room, int most) =>
        Of(text, type, room) is { } lines && lines.Length <= most ? lines : type.Fit(text, room) is { } cut ? [cut] : null;

    /// <summary>
    /// A cue in so many lines at most. Half a cue may say the opposite of the whole, so one that is too long for that is cut off at a comma, and only
    /// where it has none at a word; null when nothing is left of it.
    /// </summary>
    /// <param name="said">The cue with what is said beside it, which is never cut off.</param>
    public static string[]? Cue(string cue, Func<string, string> said, double room, int most) =>
        Wordings(cue, most * room).Select(shorter => Of(said(shorter), Type.Cue, room)).FirstOrDefault(lines => lines?.Length <= most);

    private static IEnumerable<string> Wordings(string cue, double longest)
    {
        yield return cue;
        for (var comma = cue.LastIndexOf(','); comma > 0; comma = cue.LastIndexOf(',', comma - 1))
        {
            yield return cue[..comma] + "…";
        }

        for (var width = longest; width > Least; width -= Step)
        {
            if (Type.Cue.Fit(cue, width) is { } cut)
            {
                yield return cut;
            }
        }
    }
}
