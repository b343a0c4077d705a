using System.Net;
using AngleSharp.Html.Dom;
using Doughwright.Book.Papers;

namespace Doughwright.App.Tests.Desk.States;

/// <summary>The states of a recipe on the desk: kept, brought back, taken off the shelf with the recipe and put back; and the family line.</summary>
public sealed class StatesPageTests : KeptRolls
{
    [Fact]
    public async Task KeptState_HasItsNameAndNote_AndIsListed()
    {
        Assert.Contains("None is kept yet.", (await Desk.Page(States)).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        var first = await KeepAndChange();
        var kept = Assert.Single(Scratch.Folder.Book.Kept.All(PaperSort.Recipe, "potato-rolls"));
        Assert.Equal((first, "first bake", "tight crumb"), (kept.State, kept.Name, kept.Note));
        var page = await Desk.Page(States);
        var row = page.QuerySelector("section[aria-labelledby=kept-states] li")!;
        Assert.Contains("first bake", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("tight crumb", row.TextContent, StringComparison.Ordinal);
        Assert.Equal($"{Sides}?left={first}", row.QuerySelector("a")!.GetAttribute("href"));
        Assert.Equal(2, page.QuerySelectorAll("section[aria-labelledby=written-states] li").Length);
    }

    [Fact]
    public async Task ManyBytesOfMarkup_AreText_AndWhatIsTooLongIsRefused()
    {
        var form = Form(await Desk.Page(States), "keep");
        var refused = await Desk.Send(form, ("name", new string('a', 61)), ("note", new string('b', 401)));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(2, refused.Page.QuerySelectorAll("[role=alert] li").Length);
        Assert.Empty(Scratch.Folder.Book.Kept.All(PaperSort.Recipe, "potato-rolls"));
        await Desk.Send(form, ("name", "<b>dark</b>"), ("note", "\"&<script>"));
        Assert.Contains("<b>dark</b>", (await Desk.Page(States)).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task StateBroughtBack_IsANewState_AndNothingIsLost()
    {
        var was = Scratch.Text("potato-rolls");
        var first = await KeepAndChange();
        var changed = Now;
        var answer = await Desk.Send(Form(await Desk.Page(States), "back"), ("state", Text(first)));
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        Assert.Equal(was, Scratch.Text("potato-rolls"));
        Assert.DoesNotContain(Now, new[] { first, changed });
        Assert.Contains("sweeter", Scratch.Folder.Book.Papers.TextOf(changed), StringComparison.Ordinal);
    }

    /// <summary>Everything of the recipe goes along, and the one it came from stays as it is.</summary>
    [Fact]
    public async Task Offshoot_IsARecipeOfItsOwn_AndKnowsWhatItCameFrom()
    {
        var was = Scratch.Text("potato-rolls");
        var answer = await Desk.Send(Form(await Desk.Page(States), "grow"), ("title", "Rye rolls"));
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        Assert.Equal(was.Replace("title: Potato rolls", "title: Rye rolls", StringComparison.Ordinal), Scratch.Text("rye-rolls"));
        Assert.Equal(was, Scratch.Text("potato-rolls"));
        var family = (await Desk.Page("/recipes/rye-rolls/states")).QuerySelector("section[aria-labelledby=family]")!;
        Assert.Contains("Potato rolls", family.TextContent, StringComparison.Ordinal);
        var refused = await Desk.Send(Form(await Desk.Page(States), "grow"), ("title", " "));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("no title", refused.Page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>Whoever writes on is told that readers have it.</summary>
    [Fact]
    public async Task GivenRecipe_SaysSoOnItsSheet()
    {
        const string Sheet = "/recipes/potato-rolls/write";
        Assert.DoesNotContain("Readers have this recipe", (await Desk.Page(Sheet)).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        await Desk.Send(Form(await Desk.Page(States), "keep"), ("name", "for readers"), ("note", ""), ("published", "yes"));
        var said = (await Desk.Page(Sheet)).QuerySelector("main a[href='/recipes/potato-rolls/states#corrections']")!.ParentElement!;
        Assert.Contains("Readers have this recipe as it was", said.TextContent, StringComparison.Ordinal);
    }

    /// <summary>What was changed in another window meanwhile is not written over.</summary>
    [Theory]
    [InlineData("back")]
    [InlineData("keep")]
    public async Task ChangedMeanwhile_WritesNothing(string which)
    {
        var first = await KeepAndChange();
        var form = Form(await Desk.Page(States), which);
        Scratch.Put("potato-rolls", Scratch.Text("potato-rolls") + "# meanwhile\n");
        var now = Now;
        var answer = await Desk.Send(form, ("state", Text(first)), ("name", "x"), ("note", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("meanwhile", answer.Page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(now, Now);
        Assert.Single(Scratch.Folder.Book.Kept.All(PaperSort.Recipe, "potato-rolls"));
    }

    /// <summary>The line is drawn where there is one: a bar for what was kept and for now, a yarn for what has grown.</summary>
    [Fact]
    public async Task FamilyLine_IsDrawnOnStatesAndOnSides()
    {
        Assert.Null((await Desk.Page(States)).QuerySelector(".family"));
        var first = await KeepAndChange();
        Scratch.Folder.RecipeTexts.Lay("seed-rolls", Scratch.Text("potato-rolls").Replace("Potato rolls", "Seed rolls", StringComparison.Ordinal).Replace("butter: 50 g", "butter: 40 g", StringComparison.Ordinal), "Grown", first);
        foreach (var (address, picked) in new[] { (States, 1), ($"{Sides}?left={first}", 2), (Sides + "?left=tin-loaf", 1) })
        {
            var wide = (await Desk.Page(address)).QuerySelector("svg.family-wide")!;
            Assert.Equal((2, picked), (wide.QuerySelectorAll(".knot").Length, wide.QuerySelectorAll(".pickd").Length));
            Assert.Contains("first bake", wide.TextContent, StringComparison.Ordinal);
            Assert.Contains("Seed rolls leaves at", wide.QuerySelector("desc")!.TextContent, StringComparison.Ordinal);
        }
    }

    /// <summary>One tick: the state is frozen, and the recipe is said to be published wherever that is shown.</summary>
    [Fact]
    public async Task PublishedState_IsSaidOfTheRecipeInTheSameGo()
    {
        var before = (await Desk.Page("/recipes/potato-rolls/standing")).QuerySelector("#standing option[selected]")!.GetAttribute("value");
        Assert.Equal("", before);
        await Desk.Send(Form(await Desk.Page(States), "keep"), ("name", "given out"), ("note", ""), ("published", "yes"));
        Assert.True(Assert.Single(Scratch.Folder.Book.Kept.All(PaperSort.Recipe, "potato-rolls")).Published);
        Assert.Equal("published", (await Desk.Page("/recipes/potato-rolls/standing")).QuerySelector("#standing option[selected]")!.GetAttribute("value"));
        // Kept without the tick, it stays what it was said to be.
        await Desk.Send(Form(await Desk.Page(States), "keep"), ("name", "for myself"), ("note", ""));
        Assert.Equal("published", Scratch.Folder.Book.Said.All(PaperSort.Recipe)["potato-rolls"][Saying.Standing]);
    }

    /// <summary>What readers have stays as it is; what is put right is noted with its place until it is made there.</summary>
    [Fact]
    public async Task CorrectionOfAPublishedState_WaitsUntilItIsMade()
    {
        Assert.Null((await Desk.Page(States)).QuerySelector("#corrections"));
        await Desk.Send(Form(await Desk.Page(States), "keep"), ("name", "given out"), ("note", ""), ("published", "yes"));
        var page = await Desk.Page(States);
        var kept = page.QuerySelector("#correction-of option")!.GetAttribute("value")!;
        var empty = await Desk.Send(Form(page, "correct"), ("kept", kept), ("text", "30 g of sugar, not 40"), ("place", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, empty.Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Desk.Send(Form(page, "correct"), ("kept", "77"), ("text", "a"), ("place", "b"))).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await Desk.Send(Form(page, "correct"), ("kept", kept), ("text", "30 g of sugar, not 40"), ("place", "the printed card"))).Status);
        page = await Desk.Page(States);
        Assert.Contains("the printed card", page.QuerySelector("section[aria-labelledby=corrections] li")!.TextContent, StringComparison.Ordinal);
        var made = page.QuerySelector("button[name=made]")!.GetAttribute("value")!;
        Assert.Equal(HttpStatusCode.SeeOther, (await Desk.Send(Form(page, "make"), ("made", made))).Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Desk.Send(Form(page, "make"), ("made", made))).Status);
        Assert.NotNull(Assert.Single(Scratch.Folder.Book.Corrections.All(PaperSort.Recipe, "potato-rolls")).Made);
    }

    /// <summary>An offshoot says what it came from and how it differs; the base lists it with what it has changed since.</summary>
    [Fact]
    public async Task Offshoot_IsAsTheBaseBut_AndWaitsForWhatTheBaseHasChanged()
    {
        Assert.Null((await Desk.Page(States)).QuerySelector("#family"));
        var text = Scratch.Text("potato-rolls");
        Scratch.Folder.RecipeTexts.Lay("sweet-rolls", text.Replace("Potato rolls", "Sweet rolls", StringComparison.Ordinal).Replace("sugar: 30 g", "sugar: 60 g", StringComparison.Ordinal), "Grown", Now);
        string Said(IHtmlDocument page) => page.QuerySelector("section[aria-labelledby=family] li")!.TextContent.Replace('\u00a0', ' ');
        var sweet = Said(await Desk.Page("/recipes/sweet-rolls/states"));
        Assert.Contains("As the base, but: Sugar (Dough) 15.0 %.", sweet, StringComparison.Ordinal);
        Assert.Contains("It has everything that the base has changed since.", sweet, StringComparison.Ordinal);
        Assert.Contains("Nobody has measured it since it grew", sweet, StringComparison.Ordinal);

        Scratch.Put("potato-rolls", text.Replace("golden all over", "dark all over", StringComparison.Ordinal));
        var page = await Desk.Page(States);
        Assert.Contains("does not have: 1 (Bake: cue dark all over)", Said(page), StringComparison.Ordinal);
        var beside = page.QuerySelectorAll("section[aria-labelledby=family] a").Select(link => link.GetAttribute("href")!).Single(address => address.Contains("/sides", StringComparison.Ordinal));
        var sides = await Desk.Page(beside);
        Assert.Equal("Two recipes", sides.QuerySelector("h1")!.TextContent);
        Assert.Equal(["Title", "Sugar (Dough)"], sides.QuerySelectorAll(".changes2 tbody th").Select(row => row.TextContent));

        Scratch.Put("sweet-rolls", Scratch.Text("sweet-rolls").Replace("measured: 105 min", "measured: 125 min", StringComparison.Ordinal));
        Assert.Contains("measured anew", Said(await Desk.Page(States)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task UnknownRecipe_IsNotThere()
    {
        foreach (var page in new[] { "states", "sides" })
        {
            using var answer = await Desk.Get($"/recipes/nothing/{page}");
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        }
    }

    [Fact]
    public async Task RecipeTakenOffTheShelf_IsListed_AndPutBackWithItsStates()
    {
        var first = await KeepAndChange();
        var (was, states) = (Scratch.Text("potato-rolls"), Scratch.Folder.Book.Papers.States(PaperSort.Recipe, "potato-rolls").Count);
        Assert.DoesNotContain("Taken off", (await Desk.Page("/")).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        var away = await Desk.Send(Form(await Desk.Page(States), "off"));
        Assert.Equal((HttpStatusCode.SeeOther, "/taken-off?taken=potato-rolls"), (away.Status, away.Location));
        Assert.DoesNotContain("potato-rolls", Scratch.Folder.Recipes);
        var link = (await Desk.Page("/")).QuerySelectorAll("main a").Single(one => one.TextContent == "Taken off the shelf: 1");
        Assert.Contains("Potato rolls", (await Desk.Page(link.GetAttribute("href")!)).QuerySelector("main li")!.TextContent, StringComparison.Ordinal);

        // Links and open windows still lead to it: they come to where it is put back.
        foreach (var page in new[] { "", "/write", "/sides" })
        {
            using var answer = await Desk.Get("/recipes/potato-rolls" + page);
            Assert.Equal((HttpStatusCode.Redirect, "/taken-off?taken=potato-rolls"), (answer.StatusCode, answer.Headers.Location?.OriginalString));
        }

        using (var nobody = await Desk.Get("/recipes/never-was"))
        {
            Assert.Equal(HttpStatusCode.NotFound, nobody.StatusCode);
        }

        var told = await Desk.Page(away.Location!);
        Assert.Contains("“Potato rolls” is taken off the shelf.", told.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);
        var button = (IHtmlButtonElement)told.QuerySelector(".opened button")!;
        var back = await Desk.Send(Form(told, "back"), (button.Name!, button.Value));
        Assert.Equal((HttpStatusCode.SeeOther, "/recipes/potato-rolls"), (back.Status, back.Location));
        Assert.Equal(was, Scratch.Text("potato-rolls"));
        Assert.Equal(states, Scratch.Folder.Book.Papers.States(PaperSort.Recipe, "potato-rolls").Count);
        Assert.Equal(first, Assert.Single(Scratch.Folder.Book.Kept.All(PaperSort.Recipe, "potato-rolls")).State);
        Assert.Contains("No recipe is taken off the shelf.", (await Desk.Page("/taken-off")).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        // Pressed twice, it is told.
        var twice = await Desk.Send(Form(told, "back"), (button.Name!, button.Value));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, twice.Status);
        Assert.Contains("not among the recipes that were taken off", twice.Page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>A tick and a typed correction are kept where they could not be taken.</summary>
    [Fact]
    public async Task WhatIsRefused_KeepsItsTick_AndItsCorrection()
    {
        var refused = await Desk.Send(Form(await Desk.Page(States), "keep"), ("name", new string('a', 61)), ("note", "two minutes too long"), ("published", "yes"));
        Assert.True(((IHtmlInputElement)refused.Page.QuerySelector("#keep-published")!).IsChecked);
        Assert.Equal("two minutes too long", ((IHtmlInputElement)refused.Page.QuerySelector("#keep-note")!).Value);
        Assert.False(((IHtmlInputElement)(await Desk.Page(States)).QuerySelector("#keep-published")!).IsChecked);

        await Desk.Send(Form(await Desk.Page(States), "keep"), ("name", "first"), ("note", ""), ("published", "yes"));
        var kept = Assert.Single(Scratch.Folder.Book.Kept.All(PaperSort.Recipe, "potato-rolls"));
        var nowhere = await Desk.Send(Form(await Desk.Page(States), "correct"), ("kept", Text(kept.Id)), ("text", "7 g of salt, not 17"), ("place", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, nowhere.Status);
        Assert.Equal("7 g of salt, not 17", ((IHtmlInputElement)nowhere.Page.QuerySelector("#correction-text")!).Value);
        Assert.Equal(Text(kept.Id), ((IHtmlSelectElement)nowhere.Page.QuerySelector("#correction-of")!).Value);
    }
}
