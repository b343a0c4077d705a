using Doughwright.Book;
using Doughwright.Book.Papers;
using Doughwright.Book.Safety;

namespace Doughwright.App.Tests.Book;

/// <summary>Copies are whole files, made beside whoever writes, and let go by their days.</summary>
public sealed class CopyTests : IDisposable
{
    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    [Fact]
    public void ACopy_IsOneFileWithEverythingUpToTheMoment()
    {
        using var open = book.Open();
        TestBook.Fill(open, 12);
        open.CopyTo(book.In("copy.db"));
        TestBook.Fill(open, 1);
        File.Delete(book.In("copy.db.writer"));
        using var copy = AuthorsBook.OpenToRead(book.In("copy.db"), book.Clock);
        Assert.Equal(13, copy.Papers.States(PaperSort.Recipe, "rolls").Count);
        Assert.Equal([book.In("copy.db")], Directory.EnumerateFiles(book.Folder, "copy.db*"));
    }

    [Fact]
    public void ADay_HasOneCopy()
    {
        using var open = book.Open();
        TestBook.Fill(open, 1);
        Assert.Equal(book.In("copies", "2026-11-26.db"), open.CopyOfTheDay(TestBook.Noon));
        Assert.Null(open.CopyOfTheDay(TestBook.Noon.AddHours(2)));
        Assert.NotNull(open.CopyOfTheDay(TestBook.Noon.AddDays(1)));
    }

    /// <summary>Ten weeks of days: the last seven days, and the latest of each of the last four weeks.</summary>
    [Fact]
    public void OldCopies_GoByDaysAndWeeks()
    {
        var now = new DateTimeOffset(2026, 11, 26, 0, 0, 0, TimeSpan.Zero);
        var files = Enumerable.Range(0, 70).Select(day => $"copies/{now.AddDays(-day):yyyy-MM-dd}.db").Append("copies/before-form-2-20200101T000000.db").ToArray();
        var kept = files.Except(Rotation.TooOld(files, now)).ToArray();
        // A Thursday: its week holds the 26th to the 23rd; the Sundays before are the latest of their weeks.
        string[] wanted = ["26", "25", "24", "23", "22", "21", "20", "15", "08"];
        Assert.Equal([.. wanted.Select(day => $"copies/2026-11-{day}.db"), "copies/before-form-2-20200101T000000.db"], kept);
    }

    /// <summary>A clock that ran ahead for a month left copies of days to come. They push out nothing, least of all the copy just made.</summary>
    [Fact]
    public void ClockSetBack_LosesNoCopy()
    {
        var ahead = Enumerable.Range(1, 30).Select(day => $"{TestBook.Noon.AddDays(day):yyyy-MM-dd}.db").ToArray();
        var past = Enumerable.Range(0, 7).Select(day => $"{TestBook.Noon.AddDays(-day):yyyy-MM-dd}.db").ToArray();
        Assert.Empty(Rotation.TooOld([.. ahead, .. past], TestBook.Noon));
    }

    /// <summary>States follow each other by what was written from what, whatever the clock said.</summary>
    [Fact]
    public void ClockSetBack_LeavesTheOrderOfStates()
    {
        using var open = book.Open();
        var first = TestBook.Fill(open, 1);
        book.Clock.Now = TestBook.Noon.AddYears(-20);
        var second = TestBook.Fill(open, 1);
        Assert.Equal([second, first], open.Papers.States(PaperSort.Recipe, "rolls").Take(2).Select(state => state.Id));
        Assert.NotNull(open.Kept.Keep(PaperSort.Recipe, "rolls", second, "after", ""));
        Assert.Equal(first, Assert.IsType<WriteAnswer.Written>(open.Papers.Undo(PaperSort.Recipe, "rolls", second)).State);
        Assert.Equal(second, Assert.IsType<WriteAnswer.Written>(open.Papers.Redo(PaperSort.Recipe, "rolls", first)).State);
        Assert.Empty(open.Verify());
    }

    [Fact]
    public void BringingBack_SetsThePresentBookAside_WithWhatWasWrittenSince()
    {
        using (var open = book.Open())
        {
            TestBook.Fill(open, 2);
            open.CopyTo(book.In("copy.db"));
            TestBook.Fill(open, 2);
        }

        var back = AuthorsBook.BringBack(book.Path, book.In("copy.db"), book.Clock);
        Assert.Equal(book.In("book-set-aside-20261126T120000.db"), back.SetAside);
        using var now = book.OpenToRead();
        using var aside = AuthorsBook.OpenToRead(back.SetAside!, book.Clock);
        Assert.Equal((3, 5), (now.Papers.States(PaperSort.Recipe, "rolls").Count, aside.Papers.States(PaperSort.Recipe, "rolls").Count));
    }

    /// <summary>The library's connection is never taken away from under a copy that is being made.</summary>
    [Fact]
    public async Task Closing_WaitsForACopy()
    {
        var open = book.Open();
        TestBook.Fill(open, 200, letters: 6000);
        using var within = new ManualResetEventSlim();
        var reading = Task.Run(
            () => open.Opened.Use(file =>
            {
                within.Set();
                Thread.Sleep(200);
                return file.State;
            }),
            TestContext.Current.CancellationToken);
        within.Wait(TestContext.Current.CancellationToken);
        open.Dispose();
        Assert.Equal(System.Data.ConnectionState.Open, await reading);
        Assert.Throws<ObjectDisposedException>(() => open.CopyTo(book.In("late.db")));
        Assert.False(File.Exists(book.In("late.db")));
    }

    [Fact]
    public void AZeroInAText_ComesBack()
    {
        using var open = book.Open();
        open.Papers.Lay(PaperSort.Recipe, ["odd"], "before\0after", "laid");
        Assert.Equal("before\0after", open.Papers.Text(PaperSort.Recipe, "odd"));
        Assert.Empty(open.Verify());
    }
}
