using System.Globalization;
using System.Text;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Editing;

/// <summary>
/// Amounts as pages print them, in the words of a text: "2 1/2 oz" is 2.5 oz, "1½ h" 1.5 h, "5 minutes" 5 min. What has no short decimal, such as a
/// third, stays as it is, and is refused with its reason.
/// </summary>
internal static class PrintedAmounts
{
    /// <summary>A sixteenth has as many.</summary>
    private const int MostDecimals = 4;

    /// <summary>A gram to some and a grain to others.</summary>
    private const string GramOrGrain = "gr";

    /// <summary>The words with every amount of these kinds as a text has it; all else stays.</summary>
    public static string Of(string typed, params QuantityKind[] kinds)
    {
        var written = new StringBuilder(typed.Length);
        for (var at = 0; at < typed.Length;)
        {
            if ((at == 0 || char.IsWhiteSpace(typed[at - 1]) || typed[at - 1] == '(') && Amount(typed[at..], kinds) is var (words, length))
            {
                written.Append(words);
                at += length;
            }
            else
            {
                written.Append(typed[at++]);
            }
        }

        return written.ToString();
    }

    /// <summary>A bare number with its fraction in decimals: "1 1/2" is 1.5; null for anything else.</summary>
    public static string? Bare(string typed) =>
        MixedNumber.Lead(typed) is var (value, length) && length == typed.Length && HasFraction(typed) ? Decimals(value) : null;

    /// <summary>Whether a number has a fraction that is no decimal.</summary>
    public static bool HasFraction(string number) =>
        number.Any(c => c is '/' or '\u2044' || CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.OtherNumber);

    private static (string Words, int Length)? Amount(string typed, QuantityKind[] kinds)
    {
        if (MixedNumber.Lead(typed) is not var (value, length))
        {
            return null;
        }

        var number = typed[..length];
        var start = length + typed[length..].TakeWhile(c => c is ' ' or '\u00a0' or '\u202f').Count();
        var word = new string([.. typed[start..].TakeWhile(c => char.IsLetter(c) || c is '°' or '%')]);
        if (word.Length == 0 || word == GramOrGrain || SymbolOf(word, kinds) is not { } symbol)
        {
            return null;
        }

        var plain = HasFraction(number) ? Decimals(value) : number;
        return plain is null || (plain == number && symbol == word) ? null : ($"{plain} {symbol}", start + word.Length);
    }

    private static string? SymbolOf(string word, QuantityKind[] kinds) => Unit.Find(word) is { } unit
        ? (kinds.Contains(unit.Kind) ? word : null)
        : kinds.Select(kind => Unit.Offer(word, kind)).FirstOrDefault(offer => offer is not null);

    private static string? Decimals(double value) => Math.Round(value, MostDecimals) == value ? NumberText.Exact(value) : null;
}
