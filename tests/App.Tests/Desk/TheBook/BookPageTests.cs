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
    [InlineData("bread.zip", new byte[] { 1, 2, 3, 4, 5, 6, 7, 8 }, "bread.zip is no archive that can be unpacked")]
    public async Task WhatIsNoExport_IsRefused_AndNothingIsChanged(string name, byte[] sent, string reason)
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = scratch.Folder.Book.Size();
        var answer = await desk.Send(fileName: name, file: sent, from: await desk.Page(Page), field: "archive");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(reason, answer.Page.QuerySelector("main [role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(before, scratch.Folder.Book.Size());
    }

    /// <summary>The book is gone from under the desk, as with a disk that was pulled: the person is on the page of the book, with what is the case, and goes on from there.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("?measures=us")]
    public async Task ABookThatCannotBeWrittenOut_IsToldOnThePageOfTheBook(string measures)
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var export = (await desk.Page(Page + measures)).QuerySelector("a[href*='/book/export']")!;
        Assert.False(export.HasAttribute("download"));
        File.Move(scratch.Data.Book, scratch.Data.Book + ".pulled");
        using var refused = await desk.Get(export.GetAttribute("href")!);
        File.Move(scratch.Data.Book + ".pulled", scratch.Data.Book);
        Assert.Equal(HttpStatusCode.Redirect, refused.StatusCode);
        var told = refused.Headers.Location!.OriginalString;
        Assert.StartsWith(Page + "?refused=", told, StringComparison.Ordinal);
        Assert.Equal(measures.Length > 0, told.EndsWith("&measures=us", StringComparison.Ordinal));

        var page = await desk.Page(told);
        var alert = Assert.Single(page.QuerySelectorAll("main [role=alert]")).TextContent;
        Assert.Contains($"There is no book {scratch.Data.Book}.", alert, StringComparison.Ordinal);
        Assert.NotEmpty(page.QuerySelectorAll(".btns form"));
        using var written = await desk.Get("/book/export");
        Assert.Equal("application/zip", written.Content.Headers.ContentType!.MediaType);
    }

    /// <summary>An address from elsewhere tells of nothing that was not refused.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("0000000000000000")]
    public async Task ARefusalThatNeverWas_IsNotTold(string key)
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Null((await desk.Page($"{Page}?refused={key}")).QuerySelector("main [role=alert]"));
    }

    /// <summary>What could not be laid into the book is told until the author has done with it.</summary>
    [Fact]
    public async Task WhatIsNotInTheBook_IsTold_UntilItIsDoneWith()
    {
        using var older = new Scratch();
        File.WriteAllBytes(Path.Join(older.Data.Recipes, "latin <1>.yaml"), [0x47, 0x72, 0xfc, 0xdf]);
        await using var desk = await LiveDesk.On(older.Data);
        var page = await desk.Page(Page);
        var told = page.QuerySelector("section[aria-labelledby=book-left]")!;
        Assert.Contains("recipes/latin <1>.yaml", told.TextContent, StringComparison.Ordinal);
        Assert.Contains("It is not all UTF-8.", told.TextContent, StringComparison.Ordinal);
        var form = (IHtmlFormElement)told.ParentElement!;
        var button = Assert.Single(told.QuerySelectorAll("button"));
        var done = await desk.Send(form, (button.GetAttribute("name")!, button.GetAttribute("value")!));
        Assert.Equal((HttpStatusCode.SeeOther, Page), (done.Status, done.Location));
        Assert.Null((await desk.Page(Page)).QuerySelector("section[aria-labelledby=book-left]"));
        Assert.True(File.Exists(Path.Join(older.Data.Recipes, "latin <1>.yaml")));

        // The same button of a window that was open before.
        var again = await desk.Send(form, (button.GetAttribute("name")!, button.GetAttribute("value")!));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, again.Status);
        Assert.Contains("is not told of any more", again.Words, StringComparison.Ordinal);
    }

    public void Dispose() => scratch.Dispose();

    private static string Squeezed(string said) => string.Join(' ', said.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
