using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Unicode;
using Doughwright.Publishing.Pages.Markup;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pages.Structured;

/// <summary>The structured data of a page as JSON-LD that can stand within markup.</summary>
internal static class StructuredData
{
    private static readonly JsonSerializerOptions Style = new()
    {
        // Letters of every script stay readable; what could end the element that holds it is still written as an escape.
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    };

    /// <summary>The facts of a page for programs. Everything in it also stands on the page.</summary>
    public static RecipeData Of(PageContent page) => new()
    {
        Name = Harmless.Clean(page.Title),
        Description = page.Lead.Count == 0 ? null : Harmless.Clean(string.Join(' ', page.Lead)),
        Image = page.Strip is null ? null : new() { Url = "#" + PageContent.StripId, Caption = page.StripCaption },
        Yield = page.Yield is { } made ? Harmless.Clean(made) : null,
        TotalTime = page.Total is { } total ? IsoDuration.Of(total) : null,
        Ingredients = [.. page.Parts.SelectMany(part => part.Lines).Where(line => !line.IsPart).Select(line => Harmless.Clean($"{line.Weight} {Capital.Small(line.Name)}").Replace('\u00a0', ' '))],
        Tools = page.Tools.Count == 0 ? null : [.. page.Tools.Select(tool => new ToolData { Name = Harmless.Clean(tool.Name) })],
        Steps = [.. page.Steps.Select((step, index) => new StepData
        {
            Name = Harmless.Clean(step.Name),
            Text = Harmless.Clean(string.Join(' ', Words(step, page))).Replace('\u00a0', ' '),
            Url = "#" + PageContent.StepId(index),
        })],
    };

    public static string Json(RecipeData data) => JsonSerializer.Serialize(data, Style);

    /// <summary>What a reader sees of the step; its times where nothing else is said of it.</summary>
    private static IEnumerable<string> Words(Method.PageStep step, PageContent page)
    {
        foreach (var paragraph in step.Paragraphs)
        {
            yield return paragraph;
        }

        if (step.Cue is { } cue)
        {
            yield return $"{page.DoneWhen} {cue}";
        }
        else if (step.Paragraphs.Count == 0)
        {
            yield return step.Time;
        }
    }
}
