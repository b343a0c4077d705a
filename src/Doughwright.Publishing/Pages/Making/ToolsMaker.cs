using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Pages.Measures;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pages.Making;

/// <summary>Tools, each with what to do without it, and what to do without anything else.</summary>
internal static class ToolsMaker
{
    public static (IReadOnlyList<PageTool> Tools, IReadOnlyList<PageTool> Others) Of(Recipe recipe, Func<string, string> live, Both both)
    {
        var listed = recipe.Tools ?? [.. recipe.Steps.SelectMany(step => step.Tools).Concat(Vessels(recipe, both)).Distinct(StringComparer.OrdinalIgnoreCase)];
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

    /// <summary>A recipe without a list of tools still says what it is baked in: a tin of another size is another loaf.</summary>
    private static IEnumerable<string> Vessels(Recipe recipe, Both both) =>
        from step in recipe.Steps
        let vessel = step.Vessel!
        where vessel is { Shape: VesselShape.Tin or VesselShape.Tray, Size: not null }
        let sized = both.Say(vessel.Shape == VesselShape.Tin ? "page.tin" : "page.tray", ("size", VesselSizeText.Write(vessel.Size!).Replace(" x ", " × ", StringComparison.Ordinal)))
        select vessel.Material is { } material ? both.Say("page.vessel-of", ("material", both.Voice.Member(material)), ("vessel", sized)) : sized;

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
