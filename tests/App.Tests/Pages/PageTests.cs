using System.IO.Compression;
using System.Text;
using AngleSharp.Dom;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Pages;

/// <summary>What a page is: one file, complete, light, and true to the rehearsal.</summary>
public class PageTests
{
    public static TheoryData<string> Pages => [.. MadePages.Names];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Page_AsksNobodyForAnything(string name)
    {
        var page = MadePages.Named(name).Document;
        Assert.Empty(page.QuerySelectorAll("script:not([type='application/ld+json']), link, img, iframe, object, embed, form, [style], base"));
        Assert.All(page.QuerySelectorAll("[href]"), link => Assert.StartsWith("#", link.GetAttribute("href"), StringComparison.Ordinal));
        Assert.All(page.All.SelectMany(part => part.Attributes), attribute => Assert.False(attribute.Name.StartsWith("on", StringComparison.Ordinal), attribute.Name));
        Assert.DoesNotContain("url(\"fonts", MadePages.Named(name).Html, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Page_IsLight(string name)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            gzip.Write(Encoding.UTF8.GetBytes(MadePages.Named(name).Html));
        }

        // Faces, style and both pictures in it.
        Assert.InRange(packed.Length, 60_000, 100_000);
    }

    /// <summary>A sauce that is stirred is no dough, and who has another tin bakes another loaf.</summary>
    [Fact]
    public void PartsAreNamedByTheirNames_AndTheTinIsATool()
    {
        var page = MadePages.Of("""
            doughwright: 1
            title: Tin bread
            make: 1 loaf of 860 g
            home:
              air: 22 C
            parts:
              dough:
                strong white flour: 500 g
                water: 340 g, from the tap
                salt: 10 g
                instant yeast: 5 g
              brine:
                name: salt brine
                kind: topping
                water: 60 g, at 35 C
                salt: 4 g
            steps:
              mix:
                of: dough
                hands: 8 min
                way: by hand
                measured: 24 C
              whisk:
                kind: mix
                of: brine
                hands: 1 min
                way: by hand
              proof:
                of: dough
                vessel: steel tin, 500 g, 25 x 11 x 7 cm
                measured: 60 min
              bake:
                of: dough
                oven: 220 C fan
                vessel: steel tin, 500 g, 25 x 11 x 7 cm
                measured: 35 min and 96 C
            """).Document;
        var text = page.Body!.TextContent;
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(text, "The dough comes to"));
        Assert.Contains("Salt brine comes to", text, StringComparison.Ordinal);
        Assert.Contains("Steel tin, 25 × 11 × 7 cm", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Page_IsTheSameEveryTime(string name) => Assert.Equal(MadePages.Named(name).Html, MadePages.Of(MadePages.TextOf(name)).Html);

    [Theory]
    [MemberData(nameof(Pages))]
    public void EveryStepAndLine_StandsOnThePage(string name)
    {
        var (run, _, _) = MadePages.Named(name);
        var page = MadePages.Named(name).Document;
        Assert.Equal(run.Here.Steps.Count, page.QuerySelectorAll(".steps > li").Length);
        Assert.Equal(run.Here.Formula.Components.Sum(part => part.Lines.Count), page.QuerySelectorAll(".ing tbody tr").Length);
        Assert.All(run.Here.Steps.Where(step => step.Cue is not null), step => Assert.Contains(page.QuerySelectorAll(".steps .cue bdi"), cue => cue.TextContent == step.Cue));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Ids_AreUnique_AndLabelsLeadSomewhere(string name)
    {
        var page = MadePages.Named(name).Document;
        var ids = page.QuerySelectorAll("[id]").Select(part => part.Id!).ToArray();
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.All(page.QuerySelectorAll("[aria-labelledby]").SelectMany(part => part.GetAttribute("aria-labelledby")!.Split(' ')), id => Assert.Contains(id, ids));
        Assert.All(page.QuerySelectorAll("[href^='#']"), link => Assert.Contains(link.GetAttribute("href")![1..], ids));
    }

    /// <summary>Printed as they were by default, the ring of seventeen steps needed a third sheet and the rolls did not.</summary>
    [Fact]
    public void OnlyALongPage_IsSetCloserOnPaper()
    {
        Assert.Equal("reader", MadePages.Named("potato-rolls").Document.Body!.ClassName);
        Assert.Equal("reader long method-long", MadePages.Of(MadePages.TextOf("pilot-ring")).Document.Body!.ClassName);
        Assert.Contains(".reader.long", MadePages.Of(MadePages.TextOf("pilot-ring")).Html, StringComparison.Ordinal);
    }

    /// <summary>
    /// As a browser printed them on US Letter: which of these went onto two sheets as set by default, which only closer, and which on none of the ways. The rye in the
    /// mountain kitchen goes onto two either way; since cues stand whole on its strip it is counted as longer than that, and is set closer.
    /// </summary>
    [Theory]
    [InlineData("tin-loaf", "home", "reader")]
    [InlineData("tin-loaf", "summer", "reader long")]
    [InlineData("quayside-pan-bread", "mountain", "reader")]
    [InlineData("hearth-loaf", "winter-cottage", "reader")]
    [InlineData("night-boat-rye", "mountain", "reader long")]
    [InlineData("night-boat-rye", "winter-cottage", "reader long")]
    [InlineData("pilot-ring", "mountain", "reader long method-long")]
    [InlineData("pilot-ring", "summer", "reader")]
    public void Page_IsSetAsItsLengthOnPaperAsks(string name, string kitchen, string @class) => Assert.Equal(
        @class, MadePages.Of(MadePages.TextOf(name), kitchen == "home" ? null : Commands.KitchenNamed(kitchen)).Document.Body!.ClassName);

    [Fact]
    public void Oven_IsToldAsPeopleDialIt()
    {
        var bake = Step(MadePages.Named("potato-rolls").Document, "Bake");
        Assert.Contains("170\u00a0°C with a fan (340\u00a0°F), or 190\u00a0°C without (375\u00a0°F)", bake.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Weights_StandInBothSystems_TheReadersFirst()
    {
        var text = MadePages.TextOf("potato-rolls");
        Assert.Equal(["80\u00a0g", "2¾\u00a0oz"], Cells(MadePages.Of(text).Document));
        Assert.Equal(["2¾\u00a0oz", "80\u00a0g"], Cells(MadePages.Of(text, measures: MeasureSystem.Us).Document));

        static string[] Cells(IParentNode page) => [.. page.QuerySelector(".ing tbody tr")!.QuerySelectorAll("td").Select(cell => cell.TextContent)];
    }

    [Fact]
    public void AcceptedFinding_IsNotShown_SafetyAlways()
    {
        const string kind = "dose-below-scale";
        var text = MadePages.TextOf("hearth-loaf");
        var shown = MadePages.Of(text);
        Assert.Single(shown.Document.QuerySelectorAll(".unsettled li"));
        var accepted = MadePages.Of(text, change: recipe =>
            shown.Findings.Where(finding => Acceptances.Refusal(finding) is null).Aggregate(recipe, (kept, finding) => Acceptances.Accept(kept, finding, "as it is")));
        Assert.Empty(accepted.Document.QuerySelectorAll(".unsettled"));
        Assert.Equal(Cautions(shown.Document), Cautions(accepted.Document));
        Assert.True(Cautions(shown.Document).Length >= 3);
        Assert.Contains(shown.Findings, finding => finding.Kind == kind || !finding.Safety);

        static string[] Cautions(IParentNode page) => [.. page.QuerySelectorAll(".cautions li").Select(item => item.TextContent)];
    }

    [Fact]
    public void Allergens_AreNamed_WithWhomToAsk()
    {
        var page = MadePages.Named("potato-rolls").Document;
        Assert.Contains("wheat (gluten), egg, milk", page.QuerySelector(".keyfacts")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("supplier", page.QuerySelector(".cautions li:last-child")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("local rules", page.QuerySelector(".cautions li:last-child")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>A swap that can hurt somebody says so to who reads it, and one that cannot be worked out says why, once.</summary>
    [Fact]
    public void AllowedSwaps_SayWhomTheyHurt_AndOnceWhyTheyCannotBeWorkedOut()
    {
        var whole = MadePages.TextOf("tin-loaf");
        var text = whole[..whole.IndexOf("swaps:\n", StringComparison.Ordinal)] + "swaps:\n  - sugar by honey, not tried\n  - milk by oat drink, not tried\n";
        var swaps = MadePages.Of(text).Document.QuerySelectorAll(".swaps li").Select(item => item.TextContent).ToArray();
        Assert.Contains("under one year", swaps[0], StringComparison.Ordinal);
        Assert.Equal(2, swaps[1].Split("The composition of oat drink").Length);
    }

    [Fact]
    public void WhatTheRecipeAdvises_StandsOnThePage()
    {
        var page = MadePages.Named(MadePages.Hostile).Document;
        Assert.Contains(page.QuerySelectorAll(".tools li"), item => item.TextContent == "Thermometer. Without: Scald and potato should feel just cool on the wrist.");
        Assert.Contains(page.QuerySelectorAll(".without li"), item => item.TextContent.StartsWith("Milk: Brush with water.", StringComparison.Ordinal));
        var swaps = page.QuerySelectorAll(".swaps li").Select(item => item.TextContent).ToArray();
        Assert.Equal(2, swaps.Length);
        Assert.Contains("Olive oil for butter in the dough. a little less tender", swaps[0], StringComparison.OrdinalIgnoreCase);
        Assert.Contains("of olive oil for 50\u00a0g", swaps[0], StringComparison.Ordinal);
        Assert.Contains("Baked so on 3 May", swaps[0], StringComparison.Ordinal);
        Assert.Contains("has not baked it so", swaps[1], StringComparison.Ordinal);
        Assert.Equal("In a box at room temperature: 2\u00a0days.", page.QuerySelector(".keeping li")!.TextContent);
        Assert.Contains("machine", Step(page, "Mix by hand").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Sections_ThatTheRecipeDoesNotFill_AreNotThere() =>
        Assert.Empty(MadePages.Named("potato-rolls").Document.QuerySelectorAll(".swaps, .keeping, .without, .unsettled"));

    [Fact]
    public void OtherKitchen_KeepsTheDough_AndSaysHow()
    {
        var page = MadePages.Of(MadePages.TextOf("potato-rolls"), Commands.KitchenNamed("winter-cottage")).Document;
        Assert.Contains("Kestrel cottage", page.QuerySelector(".keyfacts")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Ropewalk", page.QuerySelector(".keyfacts")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("The dough comes to 26\u00a0°C", Step(page, "Mix by hand").TextContent, StringComparison.Ordinal);
        Assert.Matches("Scald, at 3[0-9]\u00a0°C", page.QuerySelector(".ing")!.TextContent);
    }

    [Fact]
    public void Words_AreAllFromResources()
    {
        var bracketed = new Words(Words.Shipped.Entries.ToDictionary(entry => entry.Key, _ => "⟦⟧"));
        var page = MadePages.Of(MadePages.TextOf("potato-rolls"), words: bracketed).Document;
        // Only what an author wrote is left: names, prose and cues.
        var recipe = MadePages.Named("potato-rolls").Run.Here.Recipe;
        var known = recipe.Steps.SelectMany(step => new[] { step.Name, step.Words ?? "", step.Cue ?? "" })
            .Concat(recipe.Components.SelectMany(part => part.Lines.Select(line => line.Name).Append(part.Name)))
            .Concat(recipe.Tools!)
            .Append(recipe.Title)
            // The larder's names of allergens.
            .Append("wheat (gluten), egg, milk")
            .SelectMany(Letters)
            .Concat(["g", "oz", "lb", "h", "min", "C", "F", "m", "ft", "cm"])
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        var said = page.QuerySelectorAll("main h1, main h2, main h3, main p, main th, main td, main li, main dt, main dd, main figcaption, a")
            .SelectMany(part => part.ChildNodes.OfType<IText>())
            .SelectMany(text => Letters(text.Data))
            .Where(word => !known.Contains(word))
            .Distinct();
        Assert.Empty(said);

        static IEnumerable<string> Letters(string text) => System.Text.RegularExpressions.Regex.Matches(text, @"\p{L}+").Select(match => match.Value);
    }

    private static IElement Step(IParentNode page, string name) => page.QuerySelectorAll(".steps > li").First(step => step.QuerySelector("h3")!.TextContent == name);
}
