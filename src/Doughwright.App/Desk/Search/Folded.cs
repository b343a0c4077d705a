using System.Text;

namespace Doughwright.App.Desk.Search;

/// <summary>Words as they are compared: in small letters, without accents and without the sign of degrees.</summary>
/// <remarks>By a list of its own: the program knows no culture, and the runtime then leaves accents where they are.</remarks>
internal static class Folded
{
    private const char Degree = '°';

    private static readonly (string Letters, string Plain)[] Families =
    [
        ("àáâãäåāăą", "a"),
        ("æ", "ae"),
        ("çćĉċč", "c"),
        ("ďđð", "d"),
        ("èéêëēĕėęě", "e"),
        ("ĝğġģ", "g"),
        ("ĥħ", "h"),
        ("ìíîïĩīĭįı", "i"),
        ("ĵ", "j"),
        ("ķ", "k"),
        ("ĺļľŀł", "l"),
        ("ñńņň", "n"),
        ("òóôõöøōŏő", "o"),
        ("œ", "oe"),
        ("ŕŗř", "r"),
        ("śŝşšș", "s"),
        ("ß", "ss"),
        ("ţťŧț", "t"),
        ("þ", "th"),
        ("ùúûüũūŭůűų", "u"),
        ("ŵ", "w"),
        ("ýÿŷ", "y"),
        ("źżž", "z"),
    ];

    private static readonly Dictionary<char, string> ByLetter =
        Families.SelectMany(family => family.Letters.Select(letter => (letter, family.Plain))).ToDictionary(pair => pair.letter, pair => pair.Plain);

    /// <summary>Line ends and spaces stay where they are.</summary>
    public static string Of(string text)
    {
        if (Ascii.IsValid(text))
        {
            return text.ToLowerInvariant();
        }

        var folded = new StringBuilder(text.Length);
        foreach (var sign in text)
        {
            var small = char.ToLowerInvariant(sign);
            if (char.IsAscii(small))
            {
                folded.Append(small);
            }
            else if (ByLetter.TryGetValue(small, out var plain))
            {
                folded.Append(plain);
            }
            else if (small != Degree && !IsMark(small))
            {
                folded.Append(small);
            }
        }

        return folded.ToString();
    }

    /// <summary>An accent that is written behind its letter.</summary>
    private static bool IsMark(char sign) => sign is >= '\u0300' and <= '\u036f';
}
