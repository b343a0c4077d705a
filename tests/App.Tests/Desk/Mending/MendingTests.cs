using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Desk.Mending;

/// <summary>A finding answered by a button: the text is changed, what it was is kept, and the way back leads to it. Nothing is written over a text that was not shown.</summary>
public sealed class MendingTests() : OnADesk(WithCornflour())
{
    private const string Ring = "/recipes/pilot-ring";
    private const string MaizeFlour = "Write maize flour for cornflour";
    private const string Where = "?kitchen=summer&air=29C";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task WayOut_IsWrittenIntoTheText_AndLeadsBackToTheSameKitchen()
    {
        var page = await Desk.Page(Ring + Where);
        var answer = await Press(page, MaizeFlour);
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        Assert.StartsWith(Ring + Where + "&written=", answer.Location, StringComparison.Ordinal);
        Assert.EndsWith("#findings", answer.Location, StringComparison.Ordinal);
        var recipe = RecipeText.Read(Text).Recipe!;
        Assert.Contains(recipe.Components.SelectMany(part => part.Lines), line => line.Name == "maize flour");
        var after = await Desk.Page(answer.Location!.Split('#')[0]);
        Assert.Contains("Written down: " + MaizeFlour + ".", after.QuerySelector(".written[role=status]")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(after.QuerySelectorAll("button"), button => button.TextContent.Contains("cornflour", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Comments_StayInTheText()
    {
        Scratch.Put("pilot-ring", "# my own words\n" + Text);
        await Press(await Desk.Page(Ring), MaizeFlour);
        Assert.Contains("# my own words", Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task TakingBack_RestoresEveryByte_AndCanBeTakenBackItself()
    {
        var before = Bytes;
        var done = await Press(await Desk.Page(Ring), MaizeFlour);
        var changed = Bytes;
        var back = await Press(await Desk.Page(done.Location!), "Take it back");
        Assert.Equal(before, Bytes);
        var page = await Desk.Page(back.Location!);
        Assert.Contains("Taken back: " + MaizeFlour + ".", page.QuerySelector(".written")!.TextContent, StringComparison.Ordinal);
        await Press(page, "Do it again");
        Assert.Equal(changed, Bytes);
    }

    [Fact]
    public async Task EarlierText_StaysInTheBook()
    {
        var names = Scratch.Folder.Recipes;
        var before = Scratch.Folder.RecipeTexts.Find("pilot-ring")!;
        await Press(await Desk.Page(Ring), MaizeFlour);
        Assert.Equal(names, Scratch.Folder.Recipes);
        var states = Scratch.Folder.Book.Papers.States(PaperSort.Recipe, "pilot-ring");
        Assert.Equal(before.State, states[0].Before);
        Assert.Contains(before.Hash, states.Skip(1).Select(state => state.Hash));
    }

    [Fact]
    public async Task TextChangedMeanwhile_IsNotWrittenOver()
    {
        var page = await Desk.Page(Ring);
        Scratch.Put("pilot-ring", Text + "# changed in another window\n");
        var mine = Bytes;
        var answer = await Press(page, MaizeFlour);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("changed meanwhile", answer.Page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(Ring, answer.Page.QuerySelector("main a.btn")!.GetAttribute("href"));
        Assert.Equal(mine, Bytes);
    }

    [Fact]
    public async Task PressedTwice_IsDoneOnce()
    {
        var page = await Desk.Page(Ring);
        await Press(page, MaizeFlour);
        var once = Bytes;
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Press(page, MaizeFlour)).Status);
        Assert.Equal(once, Bytes);
    }

    [Fact]
    public async Task TextChangedSince_HasNoWayBack()
    {
        var done = await Press(await Desk.Page(Ring), MaizeFlour);
        var page = await Desk.Page(done.Location!);
        Scratch.Put("pilot-ring", Text + "# and on\n");
        Assert.Null((await Desk.Page(done.Location!)).QuerySelector(".written"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Press(page, "Take it back")).Status);
        Assert.Contains("# and on", Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../../kitchens/mountain")]
    [InlineData("..")]
    [InlineData("20260101T000000Z")]
    [InlineData("/etc/passwd")]
    [InlineData("")]
    public async Task NameThatIsNoEarlierText_LeadsNowhere(string stamp)
    {
        var before = Bytes;
        var page = await Desk.Page(Ring);
        Assert.Null((await Desk.Page($"{Ring}?written={Uri.EscapeDataString(stamp)}")).QuerySelector(".written"));
        var form = (IHtmlFormElement)page.QuerySelector("form.waysout")!;
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Desk.Send(form, ("back", stamp))).Status);
        Assert.Equal(before, Bytes);
    }

    [Fact]
    public async Task WayOutThatIsNotOffered_ChangesNothing()
    {
        var before = Bytes;
        var form = (IHtmlFormElement)(await Desk.Page(Ring)).QuerySelector("form.waysout")!;
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Desk.Send(form, ("do", "tool-not-listed@steps.mix/add-tool"))).Status);
        Assert.Equal(before, Bytes);
        Assert.Equal(HttpStatusCode.NotFound, (await Desk.Get("/recipes/nobody/mend")).StatusCode);
        Assert.Equal(HttpStatusCode.Found, (await Desk.Get(Ring + "/mend")).StatusCode);
    }

    [Fact]
    public async Task Finding_IsAcceptedWithAReason_ShownApart_AndAcceptedNoLonger()
    {
        var page = await Desk.Page(Ring);
        var count = page.QuerySelectorAll(".finds > li").Length;
        var form = AcceptForm(page);
        var accepted = await Desk.Send(form, ("reason", "  the  shop calls it so "));
        Assert.Equal(HttpStatusCode.SeeOther, accepted.Status);
        var after = await Desk.Page(accepted.Location!);
        Assert.Equal(count - 1, after.QuerySelectorAll(".finds > li").Length);
        Assert.Contains("Accepted: the shop calls it so", after.QuerySelector(".acceptedhead + .ways")!.TextContent, StringComparison.Ordinal);
        var recipe = RecipeText.Read(Text).Recipe!;
        Assert.Equal("the shop calls it so", Assert.Single(recipe.Accepted).Reason);

        var no = await Press(after, "Accept it no longer");
        Assert.Empty(RecipeText.Read(Text).Recipe!.Accepted);
        Assert.Equal(count, (await Desk.Page(no.Location!)).QuerySelectorAll(".finds > li").Length);
    }

    [Theory]
    [InlineData("", "no reason")]
    [InlineData("   ", "no reason")]
    [InlineData("a\u202eb", "cannot be seen")]
    public async Task ReasonThatIsNone_IsRefused_AndNothingIsWritten(string reason, string said)
    {
        var before = Bytes;
        var answer = await Desk.Send(AcceptForm(await Desk.Page(Ring)), ("reason", reason));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(said, answer.Page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(answer.Page.QuerySelector("#mend-reason"));
        Assert.Equal(before, Bytes);
    }

    [Fact]
    public async Task RefusedReason_CanBeTypedAgain()
    {
        var answer = await Desk.Send(AcceptForm(await Desk.Page(Ring)), ("reason", ""));
        var again = await Desk.Send((IHtmlFormElement)answer.Page.QuerySelector("main form")!, ("reason", "it is so"));
        Assert.Equal(HttpStatusCode.SeeOther, again.Status);
    }

    [Fact]
    public async Task Markup_InAReason_IsText()
    {
        const string Reason = "<script>alert(1)</script>\"'";
        var answer = await Desk.Send(AcceptForm(await Desk.Page(Ring)), ("reason", Reason));
        var page = await Desk.Page(answer.Location!);
        Assert.DoesNotContain(page.Scripts, script => script.Text.Contains("alert", StringComparison.Ordinal));
        Assert.Contains(Reason, page.QuerySelector(".acceptedhead + .ways")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Safety_HasNoButtonToAcceptItAway_AndCannotBeSent()
    {
        var page = await Desk.Page(Ring);
        var safety = page.QuerySelectorAll(".finds > li").Where(item => item.QuerySelector(".kind")!.TextContent.Contains("safety", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(safety);
        Assert.All(safety, item => Assert.Null(item.QuerySelector(".accept")));
        var before = Bytes;
        var form = AcceptForm(page);
        form.QuerySelector<IHtmlInputElement>("input[name=accept]")!.Value = "raw-egg-on-hands@parts.wash.egg";
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Desk.Send(form, ("reason", "x"))).Status);
        Assert.Equal(before, Bytes);
    }

    [Fact]
    public async Task AcceptedAtHome_IsNotCalledNeedless_Elsewhere()
    {
        await Desk.Send(AcceptForm(await Desk.Page(Ring)), ("reason", "it is so"));
        Assert.DoesNotContain("no longer", (await Desk.Page(Ring + "?kitchen=mountain")).QuerySelector(".finds")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task TextThatIsNotUnderstood_IsMendedLineByLine_InTheFolder()
    {
        var text = await File.ReadAllTextAsync(House.PotatoRolls, Stop);
        Scratch.Put("rolls", text.Replace("  scale:", "  scalee:", StringComparison.Ordinal).Replace("  fridge:", "  fridgge:", StringComparison.Ordinal));
        var shown = await Desk.Page("/open?name=rolls");
        var first = await Press(shown, "“fridge”");
        Assert.StartsWith("/open?name=rolls&written=", first.Location, StringComparison.Ordinal);
        var second = await Press(await Desk.Page(first.Location!), "“scale”");
        Assert.StartsWith("/recipes/rolls?written=", second.Location, StringComparison.Ordinal);
        Assert.True(RecipeText.Read(Scratch.Text("rolls")).Understood);
    }

    [Fact]
    public async Task TypedText_IsMendedInItsField_AndNothingIsWritten()
    {
        var files = Scratch.Files;
        var text = (await File.ReadAllTextAsync(House.PotatoRolls, Stop)).Replace("  fridge:", "  fridgge:", StringComparison.Ordinal);
        var refused = await Desk.Send(text);
        var button = (IHtmlButtonElement)refused.Page.QuerySelector("button[form=open-form]")!;
        var mended = await Desk.Send((IHtmlFormElement)refused.Page.QuerySelector("#open-form")!, ("text", refused.Field), (button.Name!, button.Value));
        Assert.Equal(HttpStatusCode.OK, mended.Status);
        Assert.Equal(text.Replace("fridgge", "fridge", StringComparison.Ordinal), mended.Field);
        Assert.Contains("Every line is understood now", mended.Page.QuerySelector(".written")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(files, Scratch.Files);
    }

    /// <summary>The shipped recipes, one of them with a name that can be several things.</summary>
    private static Scratch WithCornflour()
    {
        var scratch = Scratch.WithTheShipped();
        var text = scratch.Text("pilot-ring");
        return scratch.Put("pilot-ring", text.Replace("maize starch: 7 g", "cornflour: 7 g", StringComparison.Ordinal));
    }

    private static IHtmlFormElement AcceptForm(IHtmlDocument page) => (IHtmlFormElement)page.QuerySelector(".accept form")!;

    private Task<LiveDesk.Answer> Press(IHtmlDocument page, string words)
    {
        var button = (IHtmlButtonElement)page.QuerySelectorAll("main button").First(button => button.TextContent.Contains(words, StringComparison.Ordinal));
        return Desk.Send((IHtmlFormElement)button.Closest("form")!, (button.Name!, button.Value));
    }

    private string Text => Scratch.Text("pilot-ring");

    private byte[] Bytes => Scratch.Folder.Recipe("pilot-ring")!;
}
