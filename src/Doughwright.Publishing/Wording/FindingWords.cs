using Doughwright.Engine.Recipes;

namespace Doughwright.Publishing.Wording;

/// <summary>A finding in words.</summary>
internal static class FindingWords
{
    public static string Message(Finding finding, Voice voice) => Fill(finding, "message", voice);

    public static string WayOut(Finding finding, Voice voice) => Fill(finding, "wayOut", voice);

    private static string Fill(Finding finding, string part, Voice voice) =>
        Sentence(voice.Fill(voice.Words[$"{finding.Kind}.{part}"], name => finding.Arguments.GetValueOrDefault(name)));

    /// <summary>A sentence may begin with a name, and authors write names small.</summary>
    private static string Sentence(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
