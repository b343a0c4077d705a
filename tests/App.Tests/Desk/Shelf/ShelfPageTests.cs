using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Shelf;

/// <summary>The shelf as it arrives in a browser.</summary>
public partial class ShelfPageTests
{
    /// <summary>Words of the author and of the address that the shelf shows, and units.</summary>
    private static readonly string[] OwnWords = ["Potato", "potato", "rolls", "boiled", "scald", "butter", "faults", "recipes", "yaml", "x", "y", "z", "g", "min", "h", "C"];

    private const string Asked = "/?day=2026-11-28&time=16:00";

    [Fact]
    public async Task Rows_StandInTheOrderOfTheirBeginning_WithStripAndFigures()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Asked);
        var rows = Rows(page);
        Assert.Equal(scratch.Folder.Recipes.Count, rows.Length);
        Assert.Equal(["Night-boat rye", "Harbour hearth loaf"], rows[..2].Select(row => row.QuerySelector("h2 a")!.TextContent));
        var rolls = RowOf(page, "Potato rolls");
        Assert.Equal("Sat 9:54", rolls.QuerySelector(".when b")!.TextContent);
        Assert.Contains("48\u00a0min by hand", rolls.TextContent, StringComparison.Ordinal);
        Assert.Contains("10 rolls of 80\u00a0g; scald and boiled potato.", rolls.TextContent, StringComparison.Ordinal);
        Assert.All(rows, row => Assert.NotNull(row.QuerySelector(".pic svg.mini[role=img]")));
        Assert.NotNull(page.QuerySelector(".axis svg"));
        Assert.Contains(scratch.Data.Root, page.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        var ids = page.All.Select(element => element.Id).Where(id => !string.IsNullOrEmpty(id)).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
    }

    [Fact]
    public async Task Begin_IsTheReadyTimeLessTheCommandLinesTotal()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        foreach (var (query, arguments) in new (string, string[])[] { ("", []), ("&kitchen=mountain", ["--kitchen", "mountain"]), ("&kitchen=winter-cottage", ["--kitchen", "winter-cottage"]) })
        {
            var page = await desk.Page(Asked + query);
            foreach (var name in scratch.Folder.Recipes)
            {
                var json = System.Text.Json.JsonDocument.Parse(Run.Of(["rehearse", House.PathTo("demo", "recipes", name + ".yaml"), "--json", .. arguments]).Output);
                var total = json.RootElement.GetProperty("totalMinutes").GetDouble();
                var begin = ShelfClockTests.At("2026-11-28T16:00").AddMinutes(-total).AddSeconds(30);
                Assert.Equal(
                    $"{begin:ddd} {begin.Hour}:{begin:mm}",
                    page.QuerySelector($"h2 a[href^='recipes/{name}']")!.Closest("li")!.QuerySelector(".when b")!.TextContent);
            }
        }
    }

    [Fact]
    public async Task OtherTime_MovesTheBeginning_AndRehearsesNothing()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        await desk.Page(Asked);
        var kept = Kept(scratch);
        var page = await desk.Page("/?day=2026-11-28&time=17:30");
        Assert.Equal("Sat 11:24", RowOf(page, "Potato rolls").QuerySelector(".when b")!.TextContent);
        Assert.Equal(kept, Kept(scratch));
    }

    [Fact]
    public async Task ChangedText_NeverShowsItsOldRow()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        await desk.Page(Asked);
        scratch.Put("potato-rolls", scratch.Text("potato-rolls").Replace("after 20 min\n", "after 50 min\n", StringComparison.Ordinal));
        Assert.NotEqual("Sat 9:54", RowOf(await desk.Page(Asked), "Potato rolls").QuerySelector(".when b")!.TextContent);
    }

    [Fact]
    public async Task KitchenAndMeasures_GoOnToTheRecipe()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Asked + "&kitchen=mountain&measures=us");
        Assert.Equal("recipes/potato-rolls?kitchen=mountain&measures=us", RowOf(page, "Potato rolls").QuerySelector("h2 a")!.GetAttribute("href"));
        Assert.Contains("oz; scald", RowOf(page, "Potato rolls").TextContent, StringComparison.Ordinal);
        Assert.Equal("us", ((IHtmlInputElement)page.QuerySelector("form[data-live] input[type=hidden]")!).Value);
        Assert.Equal("Kestrel cottage, heated", page.QuerySelector("#ready-kitchen option[selected]")!.TextContent);
    }

    /// <summary>What is set stays in the address, whatever link or form leads on.</summary>
    [Fact]
    public async Task Measures_GoOnWithEveryLink()
    {
        using var scratch = Scratch.WithTheShipped().Put("faults", File.ReadAllText(House.Text("potato-rolls-twelve-faults.yaml")));
        scratch.PutKitchen("attic", "doughwright: 1\nkitchen: Attic\naer: 12 C\n");
        await using var desk = await LiveDesk.On(scratch.Data);
        foreach (var address in new[] { Asked + "&measures=us", "/open?measures=us", "/open?name=faults&measures=us", "/recipes/potato-rolls?measures=us" })
        {
            var page = await desk.Page(address);
            var links = page.QuerySelectorAll("a[href], form.openform").Select(link => link.GetAttribute("href") ?? link.GetAttribute("action")!).Where(to => !to.StartsWith('#'));
            Assert.Equal(["Metric"], page.QuerySelectorAll("a[href]").Where(link => !link.GetAttribute("href")!.Contains("measures=us", StringComparison.Ordinal) && !link.GetAttribute("href")!.StartsWith('#') && link.GetAttribute("href") != "").Select(link => link.TextContent.Trim()));
            Assert.NotEmpty(links);
        }

        var missing = await (await desk.Get("/nowhere?measures=us")).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("href=\"/?measures=us\"", missing, StringComparison.Ordinal);
        var form = await desk.Page("/open?measures=us");
        Assert.Equal("/recipes/potato-rolls?measures=us", (await desk.Send(File.ReadAllText(House.PotatoRolls), from: form)).Location);
        Assert.EndsWith("&measures=us", (await desk.Send("doughwright: 1\nkitchen: Loft\nair: 12 C\n", from: form)).Location, StringComparison.Ordinal);
    }

    [Fact]
    public async Task MeasuresThatAreNone_AreRefused_InTheWordsOfTheCommandLine()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var said = Run.Of("rehearse", House.PotatoRolls, "--measures", "imperial").Messages.Split('\n')[0];
        var page = await desk.Page("/?measures=imperial");
        Assert.Contains(page.QuerySelectorAll(".said"), note => said.Length > 20 && note.TextContent.Contains("imperial is not one of metric", StringComparison.Ordinal));
        Assert.Contains("imperial is not one of metric", said, StringComparison.Ordinal);
        Assert.DoesNotContain((await desk.Page("/?measures=metric")).QuerySelectorAll(".said"), note => note.TextContent.Contains("measures", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("MOUNTAIN")]
    [InlineData("Kestrel cottage, heated")]
    [InlineData("kestrel COTTAGE, heated")]
    public async Task Kitchen_IsFoundAsOnARecipesPage(string asked)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Asked + "&kitchen=" + Uri.EscapeDataString(asked));
        Assert.DoesNotContain(page.QuerySelectorAll(".said"), note => note.TextContent.Contains(asked, StringComparison.Ordinal));
        Assert.Equal("Kestrel cottage, heated", page.QuerySelector("#ready-kitchen option[selected]")!.TextContent);
        Assert.Equal("recipes/potato-rolls?kitchen=mountain", RowOf(page, "Potato rolls").QuerySelector("h2 a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task RefusedTime_StaysInItsField_WithTheReason()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var field = (IHtmlInputElement)(await desk.Page("/?time=25:00")).QuerySelector("#ready-time")!;
        Assert.Equal("25:00", field.Value);
        Assert.Equal("true", field.GetAttribute("aria-invalid"));
        Assert.Contains("25:00", field.Owner!.GetElementById(field.GetAttribute("aria-describedby")!)!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task WhatCannotBeRehearsed_SaysWhy()
    {
        using var scratch = Scratch.WithTheShipped()
            .Put("faults", File.ReadAllText(House.Text("potato-rolls-twelve-faults.yaml")))
            .Put("odd name ü%2e", File.ReadAllText(House.PotatoRolls).Replace("Potato rolls", "Never cold", StringComparison.Ordinal))
            .Put("none", "");
        await using var desk = await LiveDesk.On(scratch.Data);
        // In summer the room is warmer than what the parts are to be cooled to.
        var page = await desk.Page(Asked + "&kitchen=summer");
        Assert.Equal("open?name=faults", RowOf(page, "faults").QuerySelector("h2 a")!.GetAttribute("href"));
        Assert.Contains("lines were not understood", RowOf(page, "faults").TextContent, StringComparison.Ordinal);
        Assert.Contains("1 line was not understood", RowOf(page, "none").TextContent, StringComparison.Ordinal);
        var never = RowOf(page, "Never cold");
        Assert.Contains(Words.Shipped["shelf.length-unknown"], never.TextContent, StringComparison.Ordinal);
        Assert.Null(never.QuerySelector(".pic svg"));
        Assert.Equal("recipes/odd%20name%20%C3%BC%252e?kitchen=summer", never.QuerySelector("a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task HostileNames_AreHarmless()
    {
        const string Name = "<script>alert(1)</script> \\\" ' onload=x <svg/onload=alert(2)>";
        using var scratch = Scratch.WithTheShipped()
            .Put("hostile", File.ReadAllText(House.PotatoRolls).Replace("Potato rolls", $"\"{Name}\"", StringComparison.Ordinal).Replace("10 rolls of", "10 <img> of", StringComparison.Ordinal));
        await using var desk = await LiveDesk.On(scratch.Data);
        var text = await desk.Text(Asked);
        Assert.DoesNotContain("<script>alert", text, StringComparison.Ordinal);
        Assert.DoesNotContain("<svg/onload", text, StringComparison.Ordinal);
        Assert.DoesNotContain("<img>", text, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;alert(1)", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" style=", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task EmptyShelf_SaysWhatToDo()
    {
        using var scratch = new Scratch();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Contains(Words.Shipped["shelf.empty"], (await desk.Page("/")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task DamagedResults_AreMadeAgain()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = Rows(await desk.Page(Asked)).Select(row => row.OuterHtml).ToList();
        foreach (var file in Directory.GetFiles(scratch.Data.Kept))
        {
            File.WriteAllText(file, "<script>alert(1)</script>");
        }

        Assert.Equal(before, Rows(await desk.Page(Asked)).Select(row => row.OuterHtml));
    }

    [Fact]
    public async Task ResultsThatCannotBeWritten_StopNothing()
    {
        using var scratch = Scratch.WithTheShipped();
        File.WriteAllText(scratch.Data.Kept, "a file where the folder should be");
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.All(Rows(await desk.Page(Asked)), row => Assert.NotNull(row.QuerySelector(".pic svg.mini[role=img]")));
    }

    [Fact]
    public async Task KitchenThatIsNotUnderstood_IsSaid_AndLeadsToItsLines()
    {
        using var scratch = Scratch.WithTheShipped();
        scratch.PutKitchen("attic", "doughwright: 1\nkitchen: Attic\naer: 12 C\n");
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/?kitchen=attic");
        Assert.NotNull(page.QuerySelector("a[href='open?kitchen=attic']"));
        Assert.DoesNotContain(page.QuerySelectorAll("#ready-kitchen option"), option => option.GetAttribute("value") == "attic");
        Assert.Contains("aer", (await desk.Page("/open?kitchen=attic")).QuerySelector(".finds")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>Every entry of the words in brackets: what stands outside them on the page is the author's own, a figure, or written into the code. Findings have their own test.</summary>
    [Fact]
    public async Task EveryWord_ComesFromTheWords_OrFromTheAuthor()
    {
        var bracketed = new Words(Words.Shipped.Entries.ToDictionary(entry => entry.Key, entry => entry.Key is "language" ? entry.Value : $"⟦{entry.Value.Replace("{", "⟧{", StringComparison.Ordinal).Replace("}", "}⟦", StringComparison.Ordinal)}⟧"));
        using var scratch = new Scratch().Put("potato-rolls", File.ReadAllText(House.PotatoRolls)).Put("faults", File.ReadAllText(House.Text("potato-rolls-twelve-faults.yaml")));
        await using var desk = await LiveDesk.On(scratch.Data, bracketed);
        foreach (var address in new[] { "/?time=x&day=y&kitchen=z", "/open", "/open?name=faults" })
        {
            var page = await desk.Page(address);
            foreach (var silent in page.QuerySelectorAll("script, style, textarea, #ready-kitchen, .finds").ToList())
            {
                silent.Remove();
            }

            var outside = Bracketed().Replace(page.Body!.TextContent.Replace(scratch.Data.Book, "", StringComparison.Ordinal), " ");
            Assert.Empty(Word().Matches(outside).Select(match => match.Value).Except(OwnWords));
        }
    }

    private static IElement[] Rows(IHtmlDocument page) => [.. page.QuerySelectorAll("ol.rows > li.row")];

    private static IElement RowOf(IHtmlDocument page, string title) => Rows(page).Single(row => row.QuerySelector("h2")!.TextContent.Trim() == title);

    private static string Kept(Scratch scratch) => string.Join('\n', new DirectoryInfo(scratch.Data.Kept).GetFiles().OrderBy(file => file.Name, StringComparer.Ordinal).Select(file => $"{file.Name} {file.LastWriteTimeUtc:O}"));

    [GeneratedRegex("⟦[^⟦⟧]*⟧")]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"\p{L}+")]
    private static partial Regex Word();
}
