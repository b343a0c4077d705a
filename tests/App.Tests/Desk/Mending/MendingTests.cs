using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Desk.Mending;

/// <summary>A finding answered by a button: the text is changed, what it was is kept, and the way back leads to it. Nothing is written over a text that was not shown.</summary>
public sealed class MendingTests
{
    private const string Ring = "/recipes/pilot-ring";
    private const string MaizeFlour = "Write maize flour for cornflour";
    private const string Where = "?kitchen=summer&air=29C";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task WayOut_IsWrittenIntoTheText_AndLeadsBackToTheSameKitchen()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Ring + Where);
        var answer = await Press(desk, page, MaizeFlour);
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        Assert.StartsWith(Ring + Where + "&written=", answer.Location, StringComparison.Ordinal);
        Assert.EndsWith("#findings", answer.Location, StringComparison.Ordinal);
        var recipe = RecipeText.Read(await Text(scratch)).Recipe!;
        Assert.Contains(recipe.Components.SelectMany(part => part.Lines), line => line.Name == "maize flour");
        var after = await desk.Page(answer.Location!.Split('#')[0]);
        Assert.Contains("Written down: " + MaizeFlour + ".", after.QuerySelector(".written[role=status]")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(after.QuerySelectorAll("button"), button => button.TextContent.Contains("cornflour", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Comments_StayInTheText()
    {
        using var scratch = WithCornflour();
        scratch.Put("pilot-ring", "# my own words\n" + await Text(scratch));
        await using var desk = await LiveDesk.On(scratch.Data);
        await Press(desk, await desk.Page(Ring), MaizeFlour);
        Assert.Contains("# my own words", await Text(scratch), StringComparison.Ordinal);
    }

    [Fact]
    public async Task TakingBack_RestoresEveryByte_AndCanBeTakenBackItself()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = await Bytes(scratch);
        var done = await Press(desk, await desk.Page(Ring), MaizeFlour);
        var changed = await Bytes(scratch);
        var back = await Press(desk, await desk.Page(done.Location!), "Take it back");
        Assert.Equal(before, await Bytes(scratch));
        var page = await desk.Page(back.Location!);
        Assert.Contains("Taken back: " + MaizeFlour + ".", page.QuerySelector(".written")!.TextContent, StringComparison.Ordinal);
        await Press(desk, page, "Do it again");
        Assert.Equal(changed, await Bytes(scratch));
    }

    [Fact]
    public async Task EarlierText_StaysInTheBook()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var names = scratch.Folder.Recipes;
        var before = scratch.Folder.RecipeTexts.Find("pilot-ring")!;
        await Press(desk, await desk.Page(Ring), MaizeFlour);
        Assert.Equal(names, scratch.Folder.Recipes);
        var states = scratch.Folder.Book.Papers.States(PaperSort.Recipe, "pilot-ring");
        Assert.Equal(before.State, states[0].Before);
        Assert.Contains(before.Hash, states.Skip(1).Select(state => state.Hash));
    }

    [Fact]
    public async Task TextChangedMeanwhile_IsNotWrittenOver()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Ring);
        scratch.Put("pilot-ring", await Text(scratch) + "# changed in another window\n");
        var mine = await Bytes(scratch);
        var answer = await Press(desk, page, MaizeFlour);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("changed meanwhile", answer.Page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(Ring, answer.Page.QuerySelector("main a.btn")!.GetAttribute("href"));
        Assert.Equal(mine, await Bytes(scratch));
    }

    [Fact]
    public async Task PressedTwice_IsDoneOnce()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Ring);
        await Press(desk, page, MaizeFlour);
        var once = await Bytes(scratch);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Press(desk, page, MaizeFlour)).Status);
        Assert.Equal(once, await Bytes(scratch));
    }

    [Fact]
    public async Task TextChangedSince_HasNoWayBack()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var done = await Press(desk, await desk.Page(Ring), MaizeFlour);
        var page = await desk.Page(done.Location!);
        scratch.Put("pilot-ring", await Text(scratch) + "# and on\n");
        Assert.Null((await desk.Page(done.Location!)).QuerySelector(".written"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Press(desk, page, "Take it back")).Status);
        Assert.Contains("# and on", await Text(scratch), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../../kitchens/mountain")]
    [InlineData("..")]
    [InlineData("20260101T000000Z")]
    [InlineData("/etc/passwd")]
    [InlineData("")]
    public async Task NameThatIsNoEarlierText_LeadsNowhere(string stamp)
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = await Bytes(scratch);
        var page = await desk.Page(Ring);
        Assert.Null((await desk.Page($"{Ring}?written={Uri.EscapeDataString(stamp)}")).QuerySelector(".written"));
        var form = (IHtmlFormElement)page.QuerySelector("form.waysout")!;
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await desk.Send(form, ("back", stamp))).Status);
        Assert.Equal(before, await Bytes(scratch));
    }

    [Fact]
    public async Task WayOutThatIsNotOffered_ChangesNothing()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = await Bytes(scratch);
        var form = (IHtmlFormElement)(await desk.Page(Ring)).QuerySelector("form.waysout")!;
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await desk.Send(form, ("do", "tool-not-listed@steps.mix/add-tool"))).Status);
        Assert.Equal(before, await Bytes(scratch));
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get("/recipes/nobody/mend")).StatusCode);
        Assert.Equal(HttpStatusCode.Found, (await desk.Get(Ring + "/mend")).StatusCode);
    }

    [Fact]
    public async Task Finding_IsAcceptedWithAReason_ShownApart_AndAcceptedNoLonger()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Ring);
        var count = page.QuerySelectorAll(".finds > li").Length;
        var form = AcceptForm(page);
        var accepted = await desk.Send(form, ("reason", "  the  shop calls it so "));
        Assert.Equal(HttpStatusCode.SeeOther, accepted.Status);
        var after = await desk.Page(accepted.Location!);
        Assert.Equal(count - 1, after.QuerySelectorAll(".finds > li").Length);
        Assert.Contains("Accepted: the shop calls it so", after.QuerySelector(".acceptedhead + .ways")!.TextContent, StringComparison.Ordinal);
        var recipe = RecipeText.Read(await Text(scratch)).Recipe!;
        Assert.Equal("the shop calls it so", Assert.Single(recipe.Accepted).Reason);

        var no = await Press(desk, after, "Accept it no longer");
        Assert.Empty(RecipeText.Read(await Text(scratch)).Recipe!.Accepted);
        Assert.Equal(count, (await desk.Page(no.Location!)).QuerySelectorAll(".finds > li").Length);
    }

    [Theory]
    [InlineData("", "no reason")]
    [InlineData("   ", "no reason")]
    [InlineData("a\u202eb", "cannot be seen")]
    public async Task ReasonThatIsNone_IsRefused_AndNothingIsWritten(string reason, string said)
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = await Bytes(scratch);
        var answer = await desk.Send(AcceptForm(await desk.Page(Ring)), ("reason", reason));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(said, answer.Page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(answer.Page.QuerySelector("#mend-reason"));
        Assert.Equal(before, await Bytes(scratch));
    }

    [Fact]
    public async Task RefusedReason_CanBeTypedAgain()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await desk.Send(AcceptForm(await desk.Page(Ring)), ("reason", ""));
        var again = await desk.Send((IHtmlFormElement)answer.Page.QuerySelector("main form")!, ("reason", "it is so"));
        Assert.Equal(HttpStatusCode.SeeOther, again.Status);
    }

    [Fact]
    public async Task Markup_InAReason_IsText()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        const string Reason = "<script>alert(1)</script>\"'";
        var answer = await desk.Send(AcceptForm(await desk.Page(Ring)), ("reason", Reason));
        var page = await desk.Page(answer.Location!);
        Assert.DoesNotContain(page.Scripts, script => script.Text.Contains("alert", StringComparison.Ordinal));
        Assert.Contains(Reason, page.QuerySelector(".acceptedhead + .ways")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Safety_HasNoButtonToAcceptItAway_AndCannotBeSent()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Ring);
        var safety = page.QuerySelectorAll(".finds > li").Where(item => item.QuerySelector(".kind")!.TextContent.Contains("safety", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(safety);
        Assert.All(safety, item => Assert.Null(item.QuerySelector(".accept")));
        var before = await Bytes(scratch);
        var form = AcceptForm(page);
        form.QuerySelector<IHtmlInputElement>("input[name=accept]")!.Value = "raw-egg-on-hands@parts.wash.egg";
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await desk.Send(form, ("reason", "x"))).Status);
        Assert.Equal(before, await Bytes(scratch));
    }

    [Fact]
    public async Task AcceptedAtHome_IsNotCalledNeedless_Elsewhere()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        await desk.Send(AcceptForm(await desk.Page(Ring)), ("reason", "it is so"));
        Assert.DoesNotContain("no longer", (await desk.Page(Ring + "?kitchen=mountain")).QuerySelector(".finds")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task TextThatIsNotUnderstood_IsMendedLineByLine_InTheFolder()
    {
        var text = await File.ReadAllTextAsync(House.PotatoRolls, Stop);
        using var scratch = WithCornflour().Put("rolls", text.Replace("  scale:", "  scalee:", StringComparison.Ordinal).Replace("  fridge:", "  fridgge:", StringComparison.Ordinal));
        await using var desk = await LiveDesk.On(scratch.Data);
        var shown = await desk.Page("/open?name=rolls");
        var first = await Press(desk, shown, "“fridge”");
        Assert.StartsWith("/open?name=rolls&written=", first.Location, StringComparison.Ordinal);
        var second = await Press(desk, await desk.Page(first.Location!), "“scale”");
        Assert.StartsWith("/recipes/rolls?written=", second.Location, StringComparison.Ordinal);
        Assert.True(RecipeText.Read(scratch.Text("rolls")).Understood);
    }

    [Fact]
    public async Task TypedText_IsMendedInItsField_AndNothingIsWritten()
    {
        using var scratch = WithCornflour();
        await using var desk = await LiveDesk.On(scratch.Data);
        var files = Directory.GetFiles(scratch.Data.Root, "*", SearchOption.AllDirectories);
        var text = (await File.ReadAllTextAsync(House.PotatoRolls, Stop)).Replace("  fridge:", "  fridgge:", StringComparison.Ordinal);
        var refused = await desk.Send(text);
        var button = (IHtmlButtonElement)refused.Page.QuerySelector("button[form=open-form]")!;
        var mended = await desk.Send((IHtmlFormElement)refused.Page.QuerySelector("#open-form")!, ("text", refused.Field), (button.Name!, button.Value));
        Assert.Equal(HttpStatusCode.OK, mended.Status);
        Assert.Equal(text.Replace("fridgge", "fridge", StringComparison.Ordinal), mended.Field);
        Assert.Contains("Every line is understood now", mended.Page.QuerySelector(".written")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(files, Directory.GetFiles(scratch.Data.Root, "*", SearchOption.AllDirectories));
    }

    /// <summary>The shipped recipes, one of them with a name that can be several things.</summary>
    private static Scratch WithCornflour()
    {
        var scratch = Scratch.WithTheShipped();
        var text = scratch.Text("pilot-ring");
        return scratch.Put("pilot-ring", text.Replace("maize starch: 7 g", "cornflour: 7 g", StringComparison.Ordinal));
    }

    private static IHtmlFormElement AcceptForm(IHtmlDocument page) => (IHtmlFormElement)page.QuerySelector(".accept form")!;

    private static Task<LiveDesk.Answer> Press(LiveDesk desk, IHtmlDocument page, string words)
    {
        var button = (IHtmlButtonElement)page.QuerySelectorAll("main button").First(button => button.TextContent.Contains(words, StringComparison.Ordinal));
        return desk.Send((IHtmlFormElement)button.Closest("form")!, (button.Name!, button.Value));
    }

    private static Task<string> Text(Scratch scratch) => Task.FromResult(scratch.Text("pilot-ring"));

    private static Task<byte[]> Bytes(Scratch scratch) => Task.FromResult(scratch.Folder.Recipe("pilot-ring")!);
}
