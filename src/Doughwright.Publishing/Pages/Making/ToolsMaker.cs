using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>Tools, each with what to do without it, and what to do without anything else.</summary>
internal static class ToolsMaker
{
    public static (IReadOnlyList<PageTool> Tools, IReadOnlyList<PageTool> Others) Of(Recipe recipe, Func<string, string> live)
    {
        var listed = recipe.Tools ?? [.. recipe.Steps.SelectMany(step => step.Tools).Distinct(StringComparer.OrdinalIgnoreCase)];
        var left = recipe.Without.ToList();
        var tools = new List<PageTool>();
        foreach (var tool in listed)
        {
            var mine = left.FindAll(without => IsAbout(without.What, tool));
            left.RemoveAll(mine.Contains);
            tools.Add(new(Capital.Of(tool), mine.Count == 0 ? null : string.Join(' ', mine.Select(without => Words(without, live)))));
        }

        return (tools, [.. left.Select(without => new PageTool(Capital.Of(without.What), Words(without, live)))]);
    }

    private static string Words(Without without, Func<string, string> live) => string.Join(' ', Prose.Paragraphs(without.Words, live));

    /// <summary>"thermometer" is about "thermometer", and about "probe thermometer": whole words only.</summary>
    private static bool IsAbout(string what, string tool)
    {
        var (words, of) = (Split(what), Split(tool));
        return words.Length > 0 && Enumerable.Range(0, Math.Max(0, of.Length - words.Length + 1))
            .Any(at => words.Zip(of.Skip(at)).All(pair => string.Equals(pair.First, pair.Second, StringComparison.OrdinalIgnoreCase)));
    }

    private static string[] Split(string text)
    {
        string[] articles = ["a", "an", "the"];
        return [.. text.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries).Where(word => !articles.Contains(word, StringComparer.OrdinalIgnoreCase))];
    }
}
