using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Tests.Desk.Shelf;

public class ShelfScaleTests
{
    private static readonly KeptRow Rolls = new() { Title = "Rolls", Total = 366, MostPixelsPerGram = 0.02 };
    private static readonly KeptRow Slip = Wrong(1e-8);
    private static readonly KeptRow Bare = new() { Title = "Bare", MostPixelsPerGram = 1e-9 };

    private static KeptRow Wrong(double most) => new() { Title = "Slip", Total = 9000, MostPixelsPerGram = most, Findings = [new(nameof(MarkShape.Wrong), 1)] };

    [Fact]
    public void WhatIsWrongOrHasNoSteps_DoesNotFlattenTheOthers()
    {
        var alone = ShelfScale.Of([Rolls]);
        Assert.Equal(alone, ShelfScale.Of([Rolls, Slip, Bare, null]));
        Assert.True(alone.Holds(Rolls));
        Assert.False(alone.Holds(Slip));
    }

    [Fact]
    public void WhatIsWrong_IsDrawnWhereItFits() => Assert.True(ShelfScale.Of([Rolls, Wrong(0.03)]).Holds(Wrong(0.03)));

    [Fact]
    public void WhereAllIsWrong_ItHasAScaleOfItsOwn() => Assert.True(ShelfScale.Of([Slip]).Holds(Slip));

    [Fact]
    public async Task SlipOfAWeight_LeavesTheShelfAsItWas_AndSaysWhyItIsNotDrawn()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = Strip(await desk.Page("/?day=2026-11-28&time=16:00"));
        var rolls = scratch.Text("potato-rolls");
        scratch.Put("slip", rolls.Replace("title: Potato rolls", "title: Slip", StringComparison.Ordinal).Replace("butter: 50 g", "butter: 9999 kg", StringComparison.Ordinal));
        var page = await desk.Page("/?day=2026-11-28&time=16:00");
        Assert.Equal(before, Strip(page));
        var slip = page.QuerySelectorAll("ol.rows .row").Single(row => row.QuerySelector("h2")!.TextContent == "Slip");
        Assert.Null(slip.QuerySelector(".pic svg.mini[role=img]"));
        Assert.Contains("too heavy", slip.QuerySelector(".pic")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RecipeWithoutSteps_SaysNoBeginning_AndNoTimeByHand()
    {
        using var scratch = Scratch.WithTheShipped();
        scratch.Put("bare", "doughwright: 1\ntitle: Bare\nhome:\n  air: 21 C\nparts:\n  dough:\n    strong white flour: 500 g\n");
        await using var desk = await LiveDesk.On(scratch.Data);
        var row = (await desk.Page("/")).QuerySelectorAll("ol.rows .row").Single(row => row.QuerySelector("h2")!.TextContent == "Bare");
        Assert.Null(row.QuerySelector(".when b"));
        Assert.DoesNotContain("by hand", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("not known", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("How long it takes is not known: it has no steps yet.", (await desk.Page("/recipes/bare")).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    private static string Strip(AngleSharp.Dom.IDocument page) =>
        page.QuerySelectorAll("ol.rows .row").Single(row => row.QuerySelector("h2")!.TextContent == "Potato rolls").QuerySelector(".pic svg.mini[role=img]")!.OuterHtml;
}
