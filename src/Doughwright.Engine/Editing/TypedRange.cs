using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Editing;

/// <summary>Two numbers where one is wanted, as pages print them: "5 to 7 min", "60–65 °C", "2 or 3".</summary>
/// <param name="Words">As typed.</param>
/// <param name="Middle">What lies half-way, with the unit behind.</param>
internal sealed record TypedRange(string Words, string Middle)
{
    private const int Decimals = 2;

    /// <summary>What stands between the two.</summary>
    public static IReadOnlyList<string> Between { get; } = ["to", "or", "-", "\u2013", "\u2014"];

    /// <summary>The first range of the words; null where there is none.</summary>
    public static TypedRange? In(string words)
    {
        for (var at = 0; at < words.Length; at++)
        {
            if ((at == 0 || char.IsWhiteSpace(words[at - 1])) && MixedNumber.Lead(words[at..]) is var (low, length) && From(words[at..], low, length) is { } found)
            {
                return found;
            }
        }

        return null;
    }

    private static TypedRange? From(string words, double low, int length)
    {
        var rest = words[length..];
        // The unit may stand behind both: "5 min to 7 min".
        var unit = new string([.. rest.TrimStart().TakeWhile(c => char.IsLetter(c) || c == '°')]);
        if (!Between.Contains(unit) && Unit.Find(unit) is not null)
        {
            rest = rest.TrimStart()[unit.Length..];
        }

        rest = rest.TrimStart();
        if (Between.FirstOrDefault(word => rest.StartsWith(word, StringComparison.Ordinal)) is not { } between)
        {
            return null;
        }

        var behind = rest[between.Length..].TrimStart();
        if (MixedNumber.Lead(behind) is not var (high, end) || high <= low)
        {
            return null;
        }

        var own = behind[end..].TrimStart();
        var symbol = new string([.. own.TakeWhile(c => char.IsLetter(c) || c is '°' or '%')]);
        var all = words[..(words.Length - own.Length + symbol.Length)].Trim();
        return new(all, $"{NumberText.Exact(Math.Round((low + high) / 2, Decimals))} {symbol}".Trim());
    }
}
