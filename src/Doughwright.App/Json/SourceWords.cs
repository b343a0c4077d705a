using Doughwright.Engine.Cases;

namespace Doughwright.App.Json;

/// <summary>A source in one line: "Zhang and others, 2005, Title, figure 3".</summary>
internal static class SourceWords
{
    public static string Of(CaseSource source) => string.Join(", ", ((string?[])[source.Author, source.Year, source.Title, source.Place]).OfType<string>());
}
