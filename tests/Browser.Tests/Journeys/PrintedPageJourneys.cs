using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>
/// From a printed page to its rehearsal. The figures of the recipes are published by the United States government, in the public domain: the Armed Forces
/// Recipe Service, cards D-033 (hot rolls) and D-036 (sweet dough), and the Manual for Army Bakers of 1916, field bread (pages 82 and 83). Minutes of rise,
/// proof and bake of the two cards are from memory.
/// </summary>
public class PrintedPageJourneys(House house)
{
    /// <summary>So many interactions beyond the recipe's own signs an author may need at most.</summary>
    private const int Most = 120;

    private static readonly Printed HotRolls = new(
        "Hot rolls",
        "bread flour 12 lb",
        ["water 7 lb 4 oz", "sugar 1 lb 8 oz", "salt 4 oz", "nonfat dry milk 8 oz", "shortening 1 lb 10 oz", "active dry yeast 4 oz"],
        "200 rolls of 1.8 oz",
        [
            ("mix", ("hands", "11 min"), ("measured-temperature", "80 F")),
            ("bulk", ("ends", "at 2 times its volume"), ("measured-time", "90 min")),
            ("shape", ("hands", "40 min"), null),
            ("proof", ("measured-time", "60 min"), ("cue", "double in bulk")),
            ("bake", ("oven", "400 F static"), ("measured-time", "18 min")),
        ],
        // 7 lb 4 oz of water on 12 lb of flour.
        @"60\.4 %");

    private static readonly Printed SweetDough = new(
        "Sweet dough",
        "bread flour 10 lb",
        ["water 3 lb 12 oz", "sugar 1 lb 12 oz", "salt 3 oz", "egg 1 lb 12 oz", "nonfat dry milk 5 oz", "shortening 1 lb 10 oz", "active dry yeast 8 oz"],
        "200 rolls of 1.5 oz",
        [
            ("mix", ("hands", "11 min"), ("measured-temperature", "80 F")),
            ("bulk", ("ends", "at 2 times its volume"), ("measured-time", "90 min")),
            ("shape", ("hands", "40 min"), null),
            ("proof", ("measured-time", "60 min"), ("cue", "double in bulk")),
            ("bake", ("oven", "400 F static"), ("measured-time", "18 min")),
        ],
        // 3 lb 12 oz of water on 10 lb of flour.
        @"37\.5 %");

    private static readonly Printed FieldBread = new(
        "Field bread",
        "bread flour 105 lb",
        ["water 26 US quarts", "sugar 3 lb", "salt 2 lb", "cottonseed oil 8 oz", "fresh yeast 12 oz"],
        "36 loaves of 4 lb 8 oz",
        [
            ("mix", ("hands", "20 min"), ("measured-temperature", "80 F")),
            ("bulk", ("measured-time", "330 min"), ("cue", "ready to punch")),
            ("shape", ("hands", "30 min"), null),
            ("proof", ("measured-time", "15 min"), ("cue", "only a short proof")),
            ("bake", ("oven", "475 F deck"), ("measured-time", "90 min")),
        ],
        // 6.5 gallons of 8.345 lb (NIST Handbook 44, at 60 °F: 8.338) on 105 lb of flour.
        @"51\.[67] %");

    [Fact(Timeout = Visit.Patience)]
    public Task HotRolls_AreTypedInAndRehearsed_OnADesk() => Entered(HotRolls, new());

    [Fact(Timeout = Visit.Patience)]
    public Task SweetDough_IsTypedInAndRehearsed_OnAPhone() => Entered(SweetDough, new(390));

    [Fact(Timeout = Visit.Patience)]
    public async Task FieldBread_IsTypedInAndRehearsed_ByTheKeyboardAlone()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/", address: desk.Address);
        var hand = new Hand(visit);
        await hand.TabTo("a[href$='new']");
        await hand.Press("Enter");
        await visit.Page.WaitForURLAsync(new Regex("/new"));
        await hand.TabTo("#new-title");
        await hand.Write(FieldBread.Title, "Tab");
        await hand.Write(FieldBread.Flour, "Enter");
        await visit.Page.WaitForURLAsync(new Regex("/write"));
        await visit.Circuit();
        await hand.TabTo("#make-words");
        await hand.Write(FieldBread.Make, "Tab");
        await hand.TabTo("#add-dough");
        foreach (var line in FieldBread.Lines)
        {
            await hand.Write(line, "Enter");
            await Assertions.Expect(visit.Page.Locator("#add-dough")).ToHaveValueAsync("");
        }

        // An empty line leads on to the method, and Enter in a step to the step after it.
        await hand.Press("Enter");
        foreach (var (kind, first, second) in FieldBread.Steps)
        {
            await Assertions.Expect(visit.Page.Locator("[id^=step-after-][id$=-kind]:focus")).ToHaveCountAsync(1);
            // In a list the keys pick by the words that are read there.
            await hand.Write(kind == "proof" ? "final" : kind, "Enter");
            await Assertions.Expect(visit.Page.Locator($"#step-{kind}-hands")).ToBeFocusedAsync();
            var said = new[] { first, second }.OfType<(string Key, string Said)>().ToArray();
            foreach (var (key, words) in said)
            {
                await hand.TabTo($"#step-{kind}-{key}");
                await hand.Write(words, key != said[^1].Key ? "Tab" : key == "cue" ? "ControlOrMeta+Enter" : "Enter");
            }
        }

        await hand.TabTo("[aria-labelledby=write-method] > .btns a");
        await hand.Press("Enter");
        await visit.Page.WaitForURLAsync(new Regex("/recipes/[a-z-]+$"));
        await Rehearsed(visit, FieldBread);
        // Every step of the Tab key counts here too.
        Counted(FieldBread, hand);
    }

    private async Task Entered(Printed printed, View view)
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/", view, desk.Address);
        var (hand, page) = (new Hand(visit), visit.Page);
        await hand.Click("a[href$='new']");
        await hand.Type("#new-title", printed.Title);
        await hand.Type("#new-line", printed.Flour, "Enter");
        await page.WaitForURLAsync(new Regex("/write"));
        await visit.Circuit();
        await hand.Type("#make-words", printed.Make);
        foreach (var line in printed.Lines)
        {
            await hand.Type("#add-dough", line, "Enter");
            await Assertions.Expect(page.Locator("#add-dough")).ToHaveValueAsync("");
        }

        string? last = null;
        foreach (var (kind, first, second) in printed.Steps)
        {
            await hand.Choose($"#step-after-{last}-kind", kind);
            await hand.Click($"form:has(#step-after-{last}-kind) button");
            foreach (var (key, said) in new[] { first, second }.OfType<(string, string)>())
            {
                await hand.Type($"#step-{kind}-{key}", said);
            }

            last = kind;
        }

        await hand.Click(".head .btns a");
        await Rehearsed(visit, printed);
        Counted(printed, hand);
    }

    private static void Counted(Printed printed, Hand hand)
    {
        TestContext.Current.TestOutputHelper?.WriteLine($"{printed.Title}: {hand.Interactions} interactions");
        Assert.InRange(hand.Interactions, 1, Most);
    }

    /// <summary>The recipe is on its page with the water that is printed, and rehearsed in another kitchen.</summary>
    private static async Task Rehearsed(Visit visit, Printed printed)
    {
        var page = visit.Page;
        await visit.Circuit();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync(new Regex(printed.Water.Replace(" ", @"\s")));
        await page.GotoAsync(page.Url.Split('?')[0] + "?kitchen=mountain");
        await visit.Settled();
        await Assertions.Expect(page.Locator(".answer").First).ToContainTextAsync(new Regex(@"\d+\s(h|min)"));
        await Assertions.Expect(page.Locator("svg.strip").First).ToBeAttachedAsync();
        Assert.Empty(visit.Troubles);
    }

    /// <summary>A recipe as it is printed.</summary>
    /// <param name="Make">How many of what, and of which weight each, in words.</param>
    /// <param name="Steps">The kind of each, and what is said of it.</param>
    /// <param name="Water">Water on the flour, as the page must give it.</param>
    private sealed record Printed(
        string Title,
        string Flour,
        IReadOnlyList<string> Lines,
        string Make,
        IReadOnlyList<(string Kind, (string Key, string Said)? First, (string Key, string Said)? Second)> Steps,
        string Water);
}
