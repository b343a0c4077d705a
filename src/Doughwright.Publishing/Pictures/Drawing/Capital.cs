namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>Authors write names small; a label begins with a capital.</summary>
internal static class Capital
{
    public static string Of(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
