namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>Authors write names small; a label begins with a capital.</summary>
internal static class Capital
{
    public static string Of(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>A name within a sentence. One that has a capital further on, or only capitals, is left as its author wrote it.</summary>
    public static string Small(string name) =>
        name.Length > 1 && char.IsUpper(name[0]) && !name[1..].Any(char.IsUpper) ? char.ToLowerInvariant(name[0]) + name[1..] : name;
}
