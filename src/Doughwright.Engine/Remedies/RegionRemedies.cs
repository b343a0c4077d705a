using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Remedies;

/// <summary>
/// Words that mean one thing here and another there: one way out for each region in which they are clear. A change of the text, because every
/// cup and spoon of the text is read again by it.
/// </summary>
internal static class RegionRemedies
{
    public static IEnumerable<Remedy> Of(Finding finding) =>
        from code in (TextRemedies.Word(finding, "regions") ?? "").Split(", ", StringSplitOptions.RemoveEmptyEntries)
        select new Remedy
        {
            FindingId = finding.Id,
            Verb = Verbs.WriteRegion,
            Edit = text => Write(text, code),
            Arguments = new Dictionary<string, object> { ["region"] = code },
        };

    /// <summary>Under the title, where saving puts it; under the first line of a text without one.</summary>
    private static string Write(string text, string code)
    {
        var lines = text.Split('\n');
        var title = Array.FindIndex(lines, line => line.StartsWith(RecipeText.Title + ":", StringComparison.Ordinal));
        return TextLines.InsertAfter(text, Math.Max(title, 0) + 1, $"{RecipeText.Region}: {code}");
    }
}
