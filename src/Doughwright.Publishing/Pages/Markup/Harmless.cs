using System.Text;

namespace Doughwright.Publishing.Pages.Markup;

/// <summary>
/// Text of any origin without the characters that nobody sees and that change what others see: controls, marks that turn the direction of
/// what stands beside them, halves of characters. Letters of every script, marks of a single letter's direction included, are kept.
/// </summary>
internal static class Harmless
{
    /// <summary>The text with unseen troublemakers left out; line breaks stay.</summary>
    public static string Clean(string text)
    {
        if (!text.AsSpan().ContainsAnyExceptInRange(' ', '~'))
        {
            return text;
        }

        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            // What is no character at all comes out of the enumeration as the replacement character.
            if (!IsTrouble(rune.Value))
            {
                clean.Append(rune);
            }
        }

        return clean.ToString();
    }

    private static bool IsTrouble(int character) => character switch
    {
        '\n' or '\t' => false,
        < 0x20 or (>= 0x7F and < 0xA0) => true,
        // Embeddings and overrides, isolates, line and paragraph separators, the byte order mark, tags.
        (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x206F) or 0x2028 or 0x2029 or 0xFEFF or (>= 0xFFF9 and <= 0xFFFB) => true,
        >= 0xE0000 and <= 0xE007F => true,
        _ => (character & 0xFFFE) == 0xFFFE,
    };
}
