using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>The book is written out from its page, and the person stays on that page, whatever comes of it.</summary>
public class BookJourneys(House house)
{
    [Fact(Timeout = Visit.Patience)]
    public async Task WritingOut_GivesAFile_OrSaysWhyNotInItsPlace()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/book", address: desk.Address);
        var page = visit.Page;
        var export = page.Locator("a[href$='/book/export']");
        var file = await page.RunAndWaitForDownloadAsync(() => export.ClickAsync());
        Assert.EndsWith(".zip", file.SuggestedFilename, StringComparison.Ordinal);
        Assert.True(new FileInfo(await file.PathAsync()).Length > 1000);
        Assert.Equal($"{desk.Address}/book", page.Url);

        // The disk with the book is pulled out, and comes back.
        var book = Path.Join(desk.Folder, "book.db");
        File.Move(book, book + ".pulled");
        await export.ClickAsync();
        await Assertions.Expect(page.Locator("#book-refused")).ToContainTextAsync("There is no book");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("The book");
        File.Move(book + ".pulled", book);
        Assert.NotEmpty((await page.RunAndWaitForDownloadAsync(() => export.ClickAsync())).SuggestedFilename);
    }
}
