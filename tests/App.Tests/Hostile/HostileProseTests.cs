using System.Text.Json;
using System.Xml.Linq;
using AngleSharp.Html.Parser;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Pictures.Balance;
using Doughwright.Publishing.Pictures.Heat;
using Doughwright.Publishing.Pictures.Rise;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Hostile;

/// <summary>What an author or a stranger wrote into a recipe stays words: in JSON, in pictures, on the readers' page.</summary>
public class HostileProseTests
{
    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    public static TheoryData<string> Prose =>
    [
        "<script>alert(1)</script>",
        "<img src=x onerror=alert(1)>",
        "</text></svg><script>alert(1)</script>",
        "</title><style>*{display:none}</style>",
        "\" onmouseover=\"alert(1)",
        "javascript:alert(1) &lt;b&gt; &amp; ]]>",
        "{{title}} {step} {0} [bulk time]",
        "a\u200bb\u200dc\u00add",
        "e\u0301\u0301\u0301\u0301 \u0645\u0631\u062d\u0628\u0627 \U0001f956\U0001f468\u200d\U0001f373",
        new string('x', 3000),
    ];

    [Theory]
    [MemberData(nameof(Prose))]
    public void HostileWords_StayWordsInJson(string prose)
    {
        var text = HostileRecipe.With(prose);
        foreach (var command in new[] { "findings", "formula", "rehearse" })
        {
            var run = Tests.Run.WithInput(text, command, "-", "--json");
            Assert.NotEqual(70, run.ExitCode);
            using var json = JsonDocument.Parse(run.Output);
            Assert.Equal(prose, json.RootElement.GetProperty("title").GetString());
        }
    }

    [Theory]
    [MemberData(nameof(Prose))]
    public void HostileWords_StayWordsInPictures(string prose)
    {
        var run = Rehearser.Rehearse(RecipeText.Read(HostileRecipe.With(prose)).Recipe!, Larder.Shipped);
        var pictures = run.Steps.Select(step => run.HeatOf(step.Id)).OfType<Engine.Rehearsals.Courses.HeatBalance>().Select(heat => HeatPicture.Draw(heat, run, Voice, "h"))
            .Concat(run.Course().Rises.Select(rise => RisePicture.Draw(rise, run.FindStep(rise.Step)!, [], Voice, "r")))
            .Append(BalancePicture.Draw(run.Formula.Makeup()!, run.Formula, Voice, "b"));
        foreach (var element in pictures.SelectMany(picture => XElement.Parse(picture).DescendantsAndSelf()))
        {
            Assert.DoesNotContain(element.Name.LocalName, new[] { "script", "style", "foreignObject", "image", "a" });
            Assert.DoesNotContain(element.Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
        }
    }

    [Theory]
    [MemberData(nameof(Prose))]
    public void HostileWords_StayWordsOnTheReadersPage(string prose)
    {
        var folder = Directory.CreateTempSubdirectory("doughwright-page").FullName;
        try
        {
            var run = Tests.Run.WithInput(HostileRecipe.With(prose), "page", "-", "--out", folder);
            Assert.True(run.ExitCode is 0 or 1, run.Messages);
            var page = File.ReadAllText(Assert.Single(Directory.GetFiles(folder, "*.html", SearchOption.AllDirectories)));
            var parsed = new HtmlParser().ParseDocument(page);
            Assert.All(parsed.QuerySelectorAll("script"), script => Assert.Equal("application/ld+json", script.GetAttribute("type")));
            Assert.DoesNotContain(parsed.All, element => element.Attributes.Any(attribute => attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase)));
            Assert.Empty(parsed.QuerySelectorAll("img[src='x'], iframe, object, embed, base, link[rel=stylesheet][href^='http']"));
            Assert.Contains(prose.Length > 100 ? prose[..100] : prose, parsed.Body!.TextContent.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.Single(parsed.QuerySelectorAll("h1"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>A hidden mark that turns the direction of writing never gets as far as a page: the line is not understood, and the mark is not repeated.</summary>
    [Theory]
    [InlineData('\u202e')]
    [InlineData('\u2066')]
    [InlineData('\u0007')]
    [InlineData('\u001b')]
    public void HiddenMarks_AreRefused_AndNotRepeated(char mark)
    {
        var run = Tests.Run.WithInput(HostileRecipe.With($"a{mark}b"), "findings", "-", "--json");
        Assert.Equal(3, run.ExitCode);
        using var json = JsonDocument.Parse(run.Output);
        Assert.All(Strings(json.RootElement), words => Assert.DoesNotContain(mark, words));
        Assert.DoesNotContain(mark, Tests.Run.WithInput(HostileRecipe.With($"a{mark}b"), "findings", "-").Output);
    }

    private static IEnumerable<string> Strings(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.String => [json.GetString()!],
        JsonValueKind.Array => json.EnumerateArray().SelectMany(Strings),
        JsonValueKind.Object => json.EnumerateObject().SelectMany(entry => Strings(entry.Value).Prepend(entry.Name)),
        _ => [],
    };
}
