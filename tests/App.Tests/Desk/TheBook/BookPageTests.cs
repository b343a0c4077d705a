using System.Net;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book;

namespace Doughwright.App.Tests.Desk.TheBook;

/// <summary>The book as a whole on the desk: the same as the command line does, and all of it or nothing.</summary>
public sealed class BookPageTests : IDisposable
{
    private const string Page = "/book";

    private readonly Scratch scratch = Scratch.WithTheShipped();

    [Fact]
    public async Task ACopyMadeByHand_IsSound_AndListed()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var made = await desk.Send((IHtmlFormElement)(await desk.Page(Page)).QuerySelector(".btns form")!);
        Assert.Equal(HttpStatusCode.SeeOther, made.Status);
        var page = await desk.Page(made.Location!);
        var copy = AuthorsBook.CopiesOf(scratch.Data.Book)[0];
        Assert.Empty(AuthorsBook.Examine(copy.Path));
        Assert.Contains(Path.GetFileName(copy.Path), page.QuerySelector("main [role=status]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(page.QuerySelectorAll("tbody code"), code => code.TextContent == Path.GetFileName(copy.Path));
    }

    /// <summary>An address from elsewhere says nothing that did not happen.</summary>
    [Fact]
    public async Task ACopyThatIsNotThere_IsNotSaidToBeMade()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Null((await desk.Page(Page + "?made=book-of-yesterday.db")).QuerySelector("main [role=status]"));
    }

    [Fact]
    public async Task LookingThrough_SaysWhatTheCommandLineSays()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var said = (await desk.Page(Page + "?look=yes")).QuerySelectorAll("main [role=status] p").Select(paragraph => Squeezed(paragraph.TextContent)).ToArray();
        var told = Squeezed(Run.Of("book", "verify", "--folder", scratch.Data.Root).Output);
        Assert.Equal(3, said.Length);
        Assert.Contains("agrees with itself", said[0], StringComparison.Ordinal);
        Assert.All(said, paragraph => Assert.Contains(paragraph, told, StringComparison.Ordinal));
    }

    [Fact]
    public async Task WhatIsWrittenOut_IsTakenInByAnotherBook_AndChangesNothingThere()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        using var written = await desk.Get("/book/export");
        Assert.Equal("application/zip", written.Content.Headers.ContentType!.MediaType);
        Assert.StartsWith("doughwright-", written.Content.Headers.ContentDisposition!.FileName, StringComparison.Ordinal);
        var archive = await written.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        var before = scratch.Folder.Book.Size();

        var again = await desk.Send(fileName: "from-home.zip", file: archive, from: await desk.Page(Page), field: "archive");
        Assert.Equal(HttpStatusCode.OK, again.Status);
        Assert.Contains("from-home.zip is taken into the book", again.Words, StringComparison.Ordinal);
        Assert.Contains("In the book already, to the last word:", again.Words, StringComparison.Ordinal);
        Assert.Equal(before, scratch.Folder.Book.Size());

        using var empty = new Scratch();
        await using var other = await LiveDesk.On(empty.Data);
        Assert.Equal(HttpStatusCode.OK, (await other.Send(fileName: "from-home.zip", file: archive, from: await other.Page(Page), field: "archive")).Status);
        Assert.Equal(scratch.Folder.Recipes, empty.Folder.Recipes);
    }

    [Theory]
    [InlineData("", new byte[0], "No archive was chosen.")]
    [InlineData("bread.zip", new byte[] { 1, 2, 3, 4, 5, 6, 7, 8 }, "is no archive that can be unpacked")]
    public async Task WhatIsNoExport_IsRefused_AndNothingIsChanged(string name, byte[] sent, string reason)
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = scratch.Folder.Book.Size();
        var answer = await desk.Send(fileName: name, file: sent, from: await desk.Page(Page), field: "archive");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(reason, answer.Page.QuerySelector("main [role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(before, scratch.Folder.Book.Size());
    }

    public void Dispose() => scratch.Dispose();

    private static string Squeezed(string said) => string.Join(' ', said.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
