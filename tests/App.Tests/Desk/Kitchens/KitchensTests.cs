using System.Net;
using AngleSharp.Html.Dom;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Quantities;

namespace Doughwright.App.Tests.Desk.Kitchens;

/// <summary>A kitchen that was set on a recipe's page, kept by a name, found again, taken away and brought back.</summary>
public sealed class KitchensTests
{
    private const string Set = "/recipes/potato-rolls/kitchen?kitchen=mountain&air=17C&tap=8C&dough=26C&free=potato,scald";

    [Fact]
    public async Task KitchenOfAPage_IsKept_WithWhatWasSet_AndLeadsBack()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await Keep(desk, Set, "Aunt's, in August");
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        Assert.Equal("/recipes/potato-rolls?kitchen=aunts-in-august&dough=26C&free=potato,scald", answer.Location);
        var kept = ShelfKitchen.Find(scratch.Folder, "aunts-in-august")!.Kitchen!;
        Assert.Equal("Aunt's, in August", kept.Name);
        Assert.Equal(17, kept.Air.At(Duration.Zero).Celsius, 12);
        Assert.Equal(8, kept.Tap.Celsius, 12);
        Assert.Equal(1200, kept.Altitude.Metres, 9);
        Assert.Contains("Aunt's, in August", (await desk.Page(answer.Location!)).QuerySelector("fieldset.which")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "no name")]
    [InlineData("   ", "no name")]
    [InlineData("Ropewalk, summer term", "kept already")]
    [InlineData("ropewalk, SUMMER term", "kept already")]
    [InlineData("a\u202eb", "cannot be seen")]
    [InlineData("a\u0001b", "cannot be seen")]
    public async Task NameThatCannotBeTaken_IsRefused_AndNothingIsWritten(string name, string reason)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = scratch.Folder.Kitchens;
        var answer = await Keep(desk, Set, name);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(reason, answer.Page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(before, scratch.Folder.Kitchens);
    }

    [Fact]
    public async Task NameTooLong_IsRefused_AndStandsInTheField()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var name = new string('a', 61);
        var answer = await Keep(desk, Set, name);
        Assert.Contains("61", answer.Page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(name, ((IHtmlInputElement)answer.Page.QuerySelector("#keep-name")!).GetAttribute("value"));
    }

    [Fact]
    public async Task MarkupInAName_IsText()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await Keep(desk, Set, "<script>alert(1)</script>");
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        var kitchens = await desk.Page("/kitchens");
        Assert.DoesNotContain(kitchens.Scripts, script => script.Text.Contains("alert", StringComparison.Ordinal));
        Assert.Contains("<script>alert(1)</script>", kitchens.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task EveryKitchen_IsTold_AndGoesAndComesBack()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/kitchens");
        Assert.Equal(scratch.Folder.Kitchens.Count, page.QuerySelectorAll("main h2").Length);
        Assert.Contains("1,200\u00a0m above the sea", page.QuerySelectorAll("main section").First(kitchen => kitchen.QuerySelector("button[value=mountain]") is not null).TextContent, StringComparison.Ordinal);

        var bytes = scratch.Folder.Kitchen("mountain");
        var away = await Move(desk, page, ("away", "mountain"));
        Assert.Equal("/kitchens?taken=mountain", away.Location);
        Assert.DoesNotContain("mountain", scratch.Folder.Kitchens);

        var back = await desk.Page(away.Location!);
        Assert.Equal("/kitchens", (await Move(desk, back, ("back", "mountain"))).Location);
        Assert.Equal(bytes, scratch.Folder.Kitchen("mountain"));
    }

    [Fact]
    public async Task OtherOfTheSameName_StandsBesideTheOneThatComesBack()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var back = await desk.Page((await Move(desk, await desk.Page("/kitchens"), ("away", "mountain"))).Location!);
        var text = System.Text.Encoding.UTF8.GetString(KitchenShelf.Bytes("mountain"));
        Assert.Equal("mountain-2", scratch.Folder.KitchenTexts.Lay("mountain", text, "laid by a test"));
        Assert.Equal("/kitchens", (await Move(desk, back, ("back", "mountain"))).Location);
        Assert.Equal(KitchenShelf.Bytes("mountain"), scratch.Folder.Kitchen("mountain"));
        Assert.Equal(KitchenShelf.Bytes("mountain"), scratch.Folder.Kitchen("mountain-2"));
    }

    [Fact]
    public async Task KitchenTakenAwayAgain_LosesNoneOfItsStates()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var away = await Move(desk, await desk.Page("/kitchens"), ("away", "mountain"));
        await Move(desk, await desk.Page(away.Location!), ("back", "mountain"));
        scratch.PutKitchen("mountain", "mine");
        await Move(desk, await desk.Page("/kitchens"), ("away", "mountain"));
        Assert.Equal(2, scratch.Folder.Book.Papers.States(PaperSort.Kitchen, "mountain").Count);
        Assert.True(scratch.Folder.KitchenTexts.CanPutBack("mountain"));
    }

    [Theory]
    [InlineData("../potato-rolls")]
    [InlineData("..")]
    [InlineData("/etc/passwd")]
    [InlineData("nobody")]
    public async Task NameThatIsNoKitchen_MovesNothing(string name)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var files = scratch.Files;
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Move(desk, await desk.Page("/kitchens"), ("away", name))).Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Move(desk, await desk.Page("/kitchens"), ("back", name))).Status);
        Assert.Equal(files, scratch.Files);
        Assert.Null((await desk.Page("/kitchens?taken=" + Uri.EscapeDataString(name))).QuerySelector(".opened[role=status]"));
    }

    [Fact]
    public async Task RecipePage_OffersIt_OnlyWhenSomethingWasSet()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        const string Link = "a[href^='/recipes/potato-rolls/kitchen?']";
        Assert.Null((await desk.Page("/recipes/potato-rolls?kitchen=mountain")).QuerySelector(Link));
        Assert.Equal("/recipes/potato-rolls/kitchen?kitchen=mountain&air=17C", (await desk.Page("/recipes/potato-rolls?kitchen=mountain&air=17C")).QuerySelector(Link)!.GetAttribute("href"));
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get("/recipes/nobody/kitchen?air=17C")).StatusCode);
    }

    private static Task<LiveDesk.Answer> Move(LiveDesk desk, IHtmlDocument page, (string, string) button) =>
        desk.Send((IHtmlFormElement)page.QuerySelector("main form")!, button);

    private static async Task<LiveDesk.Answer> Keep(LiveDesk desk, string address, string name) =>
        await desk.Send((IHtmlFormElement)(await desk.Page(address)).QuerySelector("form.keepform")!, ("name", name));
}
