using System.Globalization;
using System.Net;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Desk.States;

/// <summary>The states of a recipe on the desk: kept, set side by side, brought back whole or one thing at a time.</summary>
public sealed class StatesPageTests
{
    private const string States = "/recipes/potato-rolls/states";
    private const string Sides = "/recipes/potato-rolls/sides";

    private static IHtmlFormElement Form(IHtmlDocument page, string name) =>
        (IHtmlFormElement)page.QuerySelector($"form:has(input[name=_handler][value={name}])")!;

    private static long Now(Scratch scratch) => scratch.Folder.RecipeTexts.Find("potato-rolls")!.State;

    /// <summary>The rolls laid, kept, and then made sweeter with another cue.</summary>
    private static async Task<long> KeepAndChange(Scratch scratch, LiveDesk desk)
    {
        var first = Now(scratch);
        var answer = await desk.Send(Form(await desk.Page(States), "keep"), ("name", "first bake"), ("note", "tight crumb"));
        Assert.Equal((HttpStatusCode.SeeOther, States), (answer.Status, answer.Location));
        scratch.Put("potato-rolls", scratch.Text("potato-rolls").Replace("sugar: 30 g", "sugar: 60 g  # sweeter", StringComparison.Ordinal).Replace("golden all over", "dark all over", StringComparison.Ordinal));
        return first;
    }

    [Fact]
    public async Task KeptState_HasItsNameAndNote_AndIsListed()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Contains("None is kept yet.", (await desk.Page(States)).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        var first = await KeepAndChange(scratch, desk);
        var kept = Assert.Single(scratch.Folder.Book.Kept.All(PaperSort.Recipe, "potato-rolls"));
        Assert.Equal((first, "first bake", "tight crumb"), (kept.State, kept.Name, kept.Note));
        var page = await desk.Page(States);
        var row = page.QuerySelector("section[aria-labelledby=kept-states] li")!;
        Assert.Contains("first bake", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("tight crumb", row.TextContent, StringComparison.Ordinal);
        Assert.Equal($"{Sides}?left={first}", row.QuerySelector("a")!.GetAttribute("href"));
        Assert.Equal(2, page.QuerySelectorAll("section[aria-labelledby=written-states] li").Length);
    }

    [Fact]
    public async Task ManyBytesOfMarkup_AreText_AndWhatIsTooLongIsRefused()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var form = Form(await desk.Page(States), "keep");
        var refused = await desk.Send(form, ("name", new string('a', 61)), ("note", new string('b', 401)));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(2, refused.Page.QuerySelectorAll("[role=alert] li").Length);
        Assert.Empty(scratch.Folder.Book.Kept.All(PaperSort.Recipe, "potato-rolls"));
        await desk.Send(form, ("name", "<b>dark</b>"), ("note", "\"&<script>"));
        Assert.Contains("<b>dark</b>", (await desk.Page(States)).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task StateBroughtBack_IsANewState_AndNothingIsLost()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var was = scratch.Text("potato-rolls");
        var first = await KeepAndChange(scratch, desk);
        var changed = Now(scratch);
        var answer = await desk.Send(Form(await desk.Page(States), "back"), ("state", Text(first)));
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        Assert.Equal(was, scratch.Text("potato-rolls"));
        Assert.DoesNotContain(Now(scratch), new[] { first, changed });
        Assert.Contains("sweeter", scratch.Folder.Book.Papers.TextOf(changed), StringComparison.Ordinal);
    }

    /// <summary>What was changed in another window meanwhile is not written over.</summary>
    [Theory]
    [InlineData("back")]
    [InlineData("keep")]
    public async Task ChangedMeanwhile_WritesNothing(string which)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var first = await KeepAndChange(scratch, desk);
        var form = Form(await desk.Page(States), which);
        scratch.Put("potato-rolls", scratch.Text("potato-rolls") + "# meanwhile\n");
        var now = Now(scratch);
        var answer = await desk.Send(form, ("state", Text(first)), ("name", "x"), ("note", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("meanwhile", answer.Page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(now, Now(scratch));
        Assert.Single(scratch.Folder.Book.Kept.All(PaperSort.Recipe, "potato-rolls"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("winter-cottage")]
    public async Task TwoStates_SayWhatTheCommandSays(string kitchen)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var first = await KeepAndChange(scratch, desk);
        var page = await desk.Page($"{Sides}?left={first}&kitchen={kitchen}");
        var file = scratch.Folder.RecipeTexts.FileOf("potato-rolls");
        var command = Run.Of(["compare", $"{file}@{first}", file, "--json", .. kitchen.Length > 0 ? ["--kitchen", kitchen] : Array.Empty<string>()]);
        Assert.Equal(0, command.ExitCode);
        using var json = JsonDocument.Parse(command.Output);
        var root = json.RootElement;
        Assert.Equal(
            root.GetProperty("differences").EnumerateArray().Select(difference => difference.GetProperty("what").GetString()),
            page.QuerySelectorAll(".changes2 tbody th").Select(row => row.TextContent));
        Assert.Equal(["Sugar (Dough)", "Bake: cue"], page.QuerySelectorAll(".changes2 tbody th").Select(row => row.TextContent));
        var rows = page.QuerySelectorAll(".comes tbody tr").ToArray();
        Assert.True(rows.Length > 10, $"{rows.Length} rows");
        Assert.All(rows, row =>
        {
            var of = row.GetAttribute("data-of")!.Split('.');
            var told = root.GetProperty(of[0]).EnumerateArray().Single(figure =>
                figure.GetProperty("figure").GetString() == of[1] && (of[0] == "formula" || figure.GetProperty("of").GetString() == string.Join('.', of.Skip(2))));
            Assert.Equal(Figures(told, "first", "second"), row.QuerySelectorAll("data").Select(data => double.Parse(data.GetAttribute("value")!, CultureInfo.InvariantCulture)));
        });
        Assert.Contains(kitchen, page.QuerySelector(".commandline code")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task OneChangeBroughtBack_LeavesTheOtherAndTheComments()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var first = await KeepAndChange(scratch, desk);
        var page = await desk.Page($"{Sides}?left={first}");
        var button = page.QuerySelectorAll(".bring button").Single(one => one.TextContent.Contains("cue", StringComparison.Ordinal));
        var answer = await desk.Send(Form(page, "take"), ("take", button.GetAttribute("value")!));
        Assert.Equal((HttpStatusCode.SeeOther, $"{Sides}?left={first}"), (answer.Status, answer.Location));
        Assert.Contains("golden all over", scratch.Text("potato-rolls"), StringComparison.Ordinal);
        Assert.Contains("sugar: 60 g  # sweeter", scratch.Text("potato-rolls"), StringComparison.Ordinal);
        Assert.Contains("golden all over", scratch.Folder.RecipeTexts.Find("potato-rolls")!.Did, StringComparison.Ordinal);
        Assert.Single((await desk.Page($"{Sides}?left={first}")).QuerySelectorAll(".changes2 tbody tr"));
    }

    [Fact]
    public async Task WholeStateBroughtBack_FromBesideTheOther()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var was = scratch.Text("potato-rolls");
        var first = await KeepAndChange(scratch, desk);
        var page = await desk.Page($"{Sides}?left={first}");
        Assert.Contains("Bring back", page.QuerySelector(".head button")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(Form(page, "back"))).Status);
        Assert.Equal(was, scratch.Text("potato-rolls"));
        // What is there already is not brought back, and neither is another recipe.
        Assert.Null((await desk.Page($"{Sides}?left=")).QuerySelector(".head button"));
        Assert.Null((await desk.Page($"{Sides}?left=tin-loaf")).QuerySelector(".head button"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await desk.Send(Form(page, "back"))).Status);
    }

    /// <summary>Every kind of difference that is shown can be brought back, or says that it hangs on another; what is brought back one after the other is the state it was.</summary>
    [Fact]
    public async Task EveryDifferenceShown_HasItsWayBack()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var first = Now(scratch);
        var was = scratch.Text("potato-rolls");
        scratch.Put("potato-rolls", was
            .Replace("title: Potato rolls", "title: Rolls", StringComparison.Ordinal).Replace("make: 10 rolls of 80 g", "make: 9 buns of 89 g", StringComparison.Ordinal)
            .Replace("air: 21 C", "air: 23 C", StringComparison.Ordinal).Replace("  - fork\n", "", StringComparison.Ordinal).Replace("sugar: 30 g", "sugar: 45 g, brown", StringComparison.Ordinal)
            .Replace("    salt: 7 g\n", "", StringComparison.Ordinal).Replace("fold: at 45 min, 2 min by hand", "fold: at 50 min, 2 min by hand", StringComparison.Ordinal)
            .Replace("salt, butter,", "butter,", StringComparison.Ordinal).Replace("    learn: scalding\n", "", StringComparison.Ordinal)
            .Replace("oven: 170 C fan", "oven: 180 C fan", StringComparison.Ordinal).Replace("cue: a knife slides in", "cue: soft", StringComparison.Ordinal)
            .Replace("  brush:\n    name: Brush with milk\n    kind: glaze\n    of: wash\n    hands: 2 min\n    tools: brush\n", "", StringComparison.Ordinal));
        var rows = 0;
        for (var left = 40; left > 0; left--)
        {
            var page = await desk.Page($"{Sides}?left={first}");
            var changed = page.QuerySelectorAll(".changes2 tbody tr").ToArray();
            rows = Math.Max(rows, changed.Length);
            Assert.All(changed, row => Assert.NotEmpty(row.QuerySelector(".bring")!.TextContent.Trim()));
            if (page.QuerySelector(".bring button") is not { } button)
            {
                Assert.Empty(changed.Select(row => row.TextContent));
                break;
            }

            Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(Form(page, "take"), ("take", button.GetAttribute("value")!))).Status);
        }

        Assert.True(rows >= 12, $"{rows} rows");
        Assert.Equal(StateId.Of(RecipeText.Read(was).Recipe!), StateId.Of(RecipeText.Read(scratch.Text("potato-rolls")).Recipe!));
    }

    /// <summary>What moved a figure stands beside it, and comes to it.</summary>
    [Fact]
    public async Task Consequences_SayWhichChangeMovedThem()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var first = Now(scratch);
        scratch.Put("potato-rolls", scratch.Text("potato-rolls").Replace("sugar: 30 g", "sugar: 60 g", StringComparison.Ordinal).Replace("instant yeast: 4 g", "instant yeast: 6 g", StringComparison.Ordinal));
        string Because(IHtmlDocument page, string of) => page.QuerySelector($".comes tr[data-of='{of}'] .because")!.TextContent.Replace('\u00a0', ' ');
        var page = await desk.Page($"{Sides}?left={first}");
        Assert.Equal("Sugar (Dough).", Because(page, "formula.trueSugar"));
        Assert.Equal("Sugar (Dough) +30 g, Instant yeast (Dough) +2 g.", Because(page, "formula.dough"));
        Assert.Matches(@"^Instant yeast \(Dough\) −\d+ min, Sugar \(Dough\) \+\d+ min, together [+−]\d+ min\.$", Because(page, "run.minutes.bulk"));
        Assert.Equal("", Because(page, "formula.flour"));
        // Two recipes differ in very much: that is worked out when it is asked for.
        var two = await desk.Page($"{Sides}?left=tin-loaf");
        Assert.Empty(two.QuerySelectorAll(".because"));
        var asked = await desk.Page(two.QuerySelector(".askbecause a")!.GetAttribute("href")!);
        Assert.Contains(asked.QuerySelectorAll(".comes td.because"), cell => cell.TextContent.Length > 0);
        Assert.Null(asked.QuerySelector(".askbecause"));
    }

    /// <summary>The line is drawn where there is one: a bar for what was kept and for now, a yarn for what has grown.</summary>
    [Fact]
    public async Task FamilyLine_IsDrawnOnStatesAndOnSides()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Null((await desk.Page(States)).QuerySelector(".family"));
        var first = await KeepAndChange(scratch, desk);
        scratch.Folder.RecipeTexts.Lay("seed-rolls", scratch.Text("potato-rolls").Replace("Potato rolls", "Seed rolls", StringComparison.Ordinal).Replace("butter: 50 g", "butter: 40 g", StringComparison.Ordinal), "Grown", first);
        foreach (var (address, picked) in new[] { (States, 1), ($"{Sides}?left={first}", 2), (Sides + "?left=tin-loaf", 1) })
        {
            var wide = (await desk.Page(address)).QuerySelector("svg.family-wide")!;
            Assert.Equal((2, picked), (wide.QuerySelectorAll(".knot").Length, wide.QuerySelectorAll(".pickd").Length));
            Assert.Contains("first bake", wide.TextContent, StringComparison.Ordinal);
            Assert.Contains("Seed rolls leaves at", wide.QuerySelector("desc")!.TextContent, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task TwoRecipes_StandSideBySide_AndNothingIsBroughtBackIntoAnOlderState()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var two = await desk.Page($"{Sides}?right=tin-loaf");
        Assert.Equal("Two recipes", two.QuerySelector("h1")!.TextContent);
        Assert.NotEmpty(two.QuerySelectorAll(".changes2 tbody tr"));
        Assert.Empty(two.QuerySelectorAll(".bring button"));
        Assert.Equal(2, two.QuerySelectorAll("svg.strip-wide").Length);
        var odd = await desk.Page($"{Sides}?left=99999&kitchen=nowhere");
        Assert.Equal(2, odd.QuerySelectorAll("[role=alert] li").Length);
    }

    /// <summary>One tick: the state is frozen, and the recipe is said to be published wherever that is shown.</summary>
    [Fact]
    public async Task PublishedState_IsSaidOfTheRecipeInTheSameGo()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = (await desk.Page("/recipes/potato-rolls/standing")).QuerySelector("#standing option[selected]")!.GetAttribute("value");
        Assert.Equal("", before);
        await desk.Send(Form(await desk.Page(States), "keep"), ("name", "given out"), ("note", ""), ("published", "yes"));
        Assert.True(Assert.Single(scratch.Folder.Book.Kept.All(PaperSort.Recipe, "potato-rolls")).Published);
        Assert.Equal("published", (await desk.Page("/recipes/potato-rolls/standing")).QuerySelector("#standing option[selected]")!.GetAttribute("value"));
        // Kept without the tick, it stays what it was said to be.
        await desk.Send(Form(await desk.Page(States), "keep"), ("name", "for myself"), ("note", ""));
        Assert.Equal("published", scratch.Folder.Book.Said.All(PaperSort.Recipe)["potato-rolls"][Saying.Standing]);
    }

    /// <summary>What readers have stays as it is; what is put right is noted with its place until it is made there.</summary>
    [Fact]
    public async Task CorrectionOfAPublishedState_WaitsUntilItIsMade()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Null((await desk.Page(States)).QuerySelector("#corrections"));
        await desk.Send(Form(await desk.Page(States), "keep"), ("name", "given out"), ("note", ""), ("published", "yes"));
        var page = await desk.Page(States);
        var kept = page.QuerySelector("#correction-of option")!.GetAttribute("value")!;
        var empty = await desk.Send(Form(page, "correct"), ("kept", kept), ("text", "30 g of sugar, not 40"), ("place", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, empty.Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await desk.Send(Form(page, "correct"), ("kept", "77"), ("text", "a"), ("place", "b"))).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(Form(page, "correct"), ("kept", kept), ("text", "30 g of sugar, not 40"), ("place", "the printed card"))).Status);
        page = await desk.Page(States);
        Assert.Contains("the printed card", page.QuerySelector("section[aria-labelledby=corrections] li")!.TextContent, StringComparison.Ordinal);
        var made = page.QuerySelector("button[name=made]")!.GetAttribute("value")!;
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(Form(page, "make"), ("made", made))).Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await desk.Send(Form(page, "make"), ("made", made))).Status);
        Assert.NotNull(Assert.Single(scratch.Folder.Book.Corrections.All(PaperSort.Recipe, "potato-rolls")).Made);
    }

    /// <summary>An offshoot says what it came from and how it differs; the base lists it with what it has changed since.</summary>
    [Fact]
    public async Task Offshoot_IsAsTheBaseBut_AndWaitsForWhatTheBaseHasChanged()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Null((await desk.Page(States)).QuerySelector("#family"));
        var text = scratch.Text("potato-rolls");
        scratch.Folder.RecipeTexts.Lay("sweet-rolls", text.Replace("Potato rolls", "Sweet rolls", StringComparison.Ordinal).Replace("sugar: 30 g", "sugar: 60 g", StringComparison.Ordinal), "Grown", Now(scratch));
        string Said(IHtmlDocument page) => page.QuerySelector("section[aria-labelledby=family] li")!.TextContent.Replace('\u00a0', ' ');
        var sweet = Said(await desk.Page("/recipes/sweet-rolls/states"));
        Assert.Contains("As the base, but: Sugar (Dough) 15.0 %.", sweet, StringComparison.Ordinal);
        Assert.Contains("It has everything that the base has changed since.", sweet, StringComparison.Ordinal);
        Assert.Contains("Nobody has measured it since it grew", sweet, StringComparison.Ordinal);

        scratch.Put("potato-rolls", text.Replace("golden all over", "dark all over", StringComparison.Ordinal));
        var page = await desk.Page(States);
        Assert.Contains("does not have: 1 (Bake: cue dark all over)", Said(page), StringComparison.Ordinal);
        var beside = page.QuerySelectorAll("section[aria-labelledby=family] a").Select(link => link.GetAttribute("href")!).Single(address => address.Contains("/sides", StringComparison.Ordinal));
        var sides = await desk.Page(beside);
        Assert.Equal("Two recipes", sides.QuerySelector("h1")!.TextContent);
        Assert.Equal(["Title", "Sugar (Dough)"], sides.QuerySelectorAll(".changes2 tbody th").Select(row => row.TextContent));

        scratch.Put("sweet-rolls", scratch.Text("sweet-rolls").Replace("measured: 105 min", "measured: 125 min", StringComparison.Ordinal));
        Assert.Contains("measured anew", Said(await desk.Page(States)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task UnknownRecipe_IsNotThere()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        foreach (var page in new[] { "states", "sides" })
        {
            using var answer = await desk.Get($"/recipes/nothing/{page}");
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        }
    }

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);

    private static IEnumerable<double> Figures(JsonElement told, params string[] names) =>
        names.Select(told.GetProperty).Where(value => value.ValueKind == JsonValueKind.Number).Select(value => value.GetDouble());
}
