using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book;

namespace Doughwright.App.Tests.Desk.Hosting;

public class DailyCopyTests
{
    [Fact]
    public async Task DeskThatIsOpened_CopiesItsBook_OnceADay()
    {
        using var scratch = Scratch.WithTheShipped();
        for (var opened = 0; opened < 2; opened++)
        {
            await using var desk = await LiveDesk.On(scratch.Data);
            for (var wait = 0; wait < 200 && AuthorsBook.CopiesOf(scratch.Data.Book).Count == 0; wait++)
            {
                await Task.Delay(50, TestContext.Current.CancellationToken);
            }

            Assert.NotNull(AuthorsBook.LatestSoundCopy(scratch.Data.Book));
        }

        Assert.Single(AuthorsBook.CopiesOf(scratch.Data.Book));
    }
}
