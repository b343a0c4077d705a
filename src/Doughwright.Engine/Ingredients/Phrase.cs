using System.Text;

namespace Doughwright.Engine.Ingredients;

/// <summary>Names as people write them, brought to one form: lower case, no punctuation, no accents, every word in the singular.</summary>
internal static class Phrase
{
    /// <summary>The words of a name: "Eggs, free-range" gives "egg", "free", "range".</summary>
    public static string[] Words(string phrase)
    {
        var text = new StringBuilder(phrase.Length);
        foreach (var character in phrase)
        {
            if (char.IsLetterOrDigit(character))
            {
                var letter = char.ToLowerInvariant(character);
                _ = letter < '\u0080' ? text.Append(letter) : text.Append(Plain(letter));
            }
            else if (character is not ('\'' or '’' or (>= '\u0300' and <= '\u036f')))
            {
                text.Append(' ');
            }
        }

        return [.. text.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Singular)];
    }

    public static string Normal(string phrase) => string.Join(' ', Words(phrase));

    /// <summary>Whether the words of <paramref name="part"/> stand in <paramref name="whole"/> side by side. Both in normal form.</summary>
    public static bool Holds(string whole, string part) => $" {whole} ".Contains($" {part} ", StringComparison.Ordinal);

    /// <summary>Whether a text as written says a word of plain letters. Most do not, and then nothing is made of them.</summary>
    public static bool Says(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase) && Holds(Normal(text), Normal(word));

    /// <summary>How many letters must be changed, put in or left out to get from one text to the other.</summary>
    public static int Distance(string a, string b)
    {
        var row = new int[b.Length + 1];
        for (var j = 0; j < row.Length; j++)
        {
            row[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(change, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }

    // By hand, so that the answer does not depend on the tables of the system. Accents that stand as marks of their own are dropped above.
    private static string Plain(char letter) => letter switch
    {
        'à' or 'á' or 'â' or 'ã' or 'ä' or 'å' => "a",
        'ç' => "c",
        'è' or 'é' or 'ê' or 'ë' => "e",
        'ì' or 'í' or 'î' or 'ï' => "i",
        'ñ' => "n",
        'ò' or 'ó' or 'ô' or 'õ' or 'ö' or 'ø' => "o",
        'ù' or 'ú' or 'û' or 'ü' => "u",
        'ý' or 'ÿ' => "y",
        'ß' => "ss",
        'œ' => "oe",
        'æ' => "ae",
        _ => letter.ToString(),
    };

    // Both the names of the larder and what is looked up go through this, so a wrong singular does no harm as long as it is the same one.
    private static string Singular(string word) => word switch
    {
        { Length: > 4 } when word.EndsWith("ches", StringComparison.Ordinal) || word.EndsWith("shes", StringComparison.Ordinal) => word[..^2],
        { Length: > 4 } when word.EndsWith("xes", StringComparison.Ordinal) || word.EndsWith("sses", StringComparison.Ordinal) => word[..^2],
        { Length: > 4 } when word.EndsWith("oes", StringComparison.Ordinal) => word[..^2],
        { Length: > 4 } when word.EndsWith("ies", StringComparison.Ordinal) => $"{word[..^3]}y",
        { Length: > 3 } when word[^1] == 's' && word[^2] != 's' => word[..^1],
        _ => word,
    };
}
