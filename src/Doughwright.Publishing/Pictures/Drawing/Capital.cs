namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>Authors write names small; a label begins with a capital.</summary>
internal static class Capital
{
    public static string Of(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>A name inside a sentence; one in capitals stays as it is.</summary>
    public static string Not(string name) =>
        name.Length > 1 && char.IsUpper(name[0]) && !char.IsUpper(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;
}
