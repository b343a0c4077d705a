namespace Doughwright.Publishing.Pages;

/// <summary>Prose of the author as paragraphs of plain text. It has no markup: whatever looks like some is shown as it was typed.</summary>
internal static class Prose
{
    /// <summary>Paragraphs, parted by blank lines. Other line breaks are those of an editor.</summary>
    /// <param name="live">Puts live values where their names stand in brackets.</param>
    public static IReadOnlyList<string> Paragraphs(string? words, Func<string, string> live) => words is null
        ? []
        : [.. live(words)
            .ReplaceLineEndings("\n")
            .Split("\n\n", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(paragraph => paragraph.Replace('\n', ' '))];
}
