using System.Globalization;
using Dapper;
using Doughwright.Book;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Book.Safety;

namespace Doughwright.App.Tests.Book;

/// <summary>No room, or no right to write: it is told, what was written before is still there, and writing goes on as soon as it can.</summary>
public sealed class RoomTests : IDisposable
{
    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    /// <summary>The library's own limit on pages: works on every system.</summary>
    [Fact]
    public void AFileThatMayNotGrow_IsToldAsFull()
    {
        using var open = book.Open();
        var state = TestBook.Fill(open, 2);
        var pages = open.Opened.Use(file => file.ExecuteScalar<long>("PRAGMA page_count"));
        open.Opened.Use(file => file.Execute(string.Create(CultureInfo.InvariantCulture, $"PRAGMA max_page_count = {pages}")));
        Assert.Equal(BookTrouble.Full, Trouble(() => open.Papers.Write(PaperSort.Recipe, "rolls", state, new string('x', 100_000), "grew")));
        Assert.Equal(state, open.Papers.Find(PaperSort.Recipe, "rolls")!.State);
        Assert.Equal(3, open.Papers.States(PaperSort.Recipe, "rolls").Count);
        Assert.Empty(open.Verify());
        open.Opened.Use(file => file.Execute("PRAGMA max_page_count = 1000000"));
        Assert.IsType<WriteAnswer.Written>(open.Papers.Write(PaperSort.Recipe, "rolls", state, new string('x', 100_000), "grew"));
    }

    /// <summary>A real disk without room, as large as a book of some hundred states.</summary>
    [Fact]
    public void AFullDisk_IsTold_AndNothingThatWasTakenIsLost()
    {
        using var disk = SmallDisk.Mount("2m");
        var path = Path.Join(disk.Folder, "book.db");
        long state;
        var taken = 0;
        using (var open = AuthorsBook.Open(path, book.Clock))
        {
            open.Papers.Lay(PaperSort.Recipe, ["rolls"], "x", "laid");
            state = open.Papers.Find(PaperSort.Recipe, "rolls")!.State;
            BookException? told = null;
            while (told is null)
            {
                try
                {
                    state = Assert.IsType<WriteAnswer.Written>(open.Papers.Write(PaperSort.Recipe, "rolls", state, TestBook.TextOf(taken, 6000 + taken), "changed")).State;
                    taken++;
                }
                catch (BookException problem)
                {
                    told = problem;
                }
            }

            Assert.Equal(BookTrouble.Full, told.Trouble);
            Assert.InRange(taken, 20, 1000);
            Assert.Equal(BookTrouble.Full, Trouble(() => open.CopyOfTheDay(TestBook.Noon)));
            Assert.Equal(taken + 1, open.Papers.States(PaperSort.Recipe, "rolls").Count);
        }

        Assert.Empty(Directory.EnumerateFileSystemEntries(Path.Join(disk.Folder, "copies")));
        disk.Resize("8m");
        using var again = AuthorsBook.Open(path, book.Clock);
        Assert.Equal((state, taken + 1), (again.Papers.Find(PaperSort.Recipe, "rolls")!.State, again.Papers.States(PaperSort.Recipe, "rolls").Count));
        Assert.Empty(again.Verify());
        Assert.IsType<WriteAnswer.Written>(again.Papers.Write(PaperSort.Recipe, "rolls", state, "y", "changed"));
        Assert.NotNull(again.CopyOfTheDay(TestBook.Noon));
    }

    [Fact]
    public void ADiskThatCannotBeWritten_IsTold_AndCanBeRead()
    {
        using var disk = SmallDisk.Mount("4m");
        var path = Path.Join(disk.Folder, "book.db");
        using (var open = AuthorsBook.Open(path, book.Clock))
        {
            TestBook.Fill(open, 3);
        }

        disk.MakeReadOnly();
        Assert.Equal(BookTrouble.ReadOnly, Trouble(() => AuthorsBook.Open(path, book.Clock)));
        Assert.Equal(BookTrouble.ReadOnly, Trouble(() => AuthorsBook.Open(Path.Join(disk.Folder, "another.db"), book.Clock)));
        using (var reader = AuthorsBook.OpenToRead(path, book.Clock))
        {
            Assert.Equal(TestBook.TextOf(3), reader.Papers.Text(PaperSort.Recipe, "rolls"));
            Assert.Equal(BookTrouble.ReadOnly, Trouble(() => reader.CopyOfTheDay(TestBook.Noon)));
            reader.CopyTo(book.Path);
        }

        using var copy = book.OpenToRead();
        Assert.Empty(copy.Verify());
    }

    /// <summary>
    /// The disk fails while it is asked which copies there are, at once or after some: the copy of the day is made and sound, no other is let go, and what
    /// went wrong is told as a trouble of the book. Once the disk can be read, the old ones go.
    /// </summary>
    [Theory]
    [InlineData(0, "*.db")]
    [InlineData(5, "*.db")]
    [InlineData(0, "*.unfinished*")]
    public void ADiskThatFailsWhileOldCopiesAreLetGo_IsTold_AndTheCopyOfTheDayIsThere(int readable, string asked)
    {
        using var open = AuthorsBook.Open(book.Path, book.Clock);
        TestBook.Fill(open, 3);
        for (var day = -80; day < 0; day++)
        {
            Directory.CreateDirectory(book.In("copies"));
            File.WriteAllText(book.In("copies", $"{TestBook.Noon.AddDays(day):yyyy-MM-dd}.db"), "of an older day");
        }

        IEnumerable<string> Failing(string room, string pattern)
        {
            foreach (var file in Directory.EnumerateFiles(room, pattern).Take(pattern == asked ? readable : int.MaxValue))
            {
                yield return file;
            }

            if (pattern == asked)
            {
                throw new IOException("Input/output error");
            }
        }

        var told = Assert.Throws<BookException>(() => Copies.OfTheDay(open.Opened, TestBook.Noon, Failing));
        Assert.Equal((BookTrouble.Disk, book.In("copies")), (told.Trouble, told.Path));
        Assert.Equal(book.In("copies", "2026-11-26.db"), AuthorsBook.LatestSoundCopy(book.Path)!.Path);
        if (asked == "*.db")
        {
            Assert.Equal(81, AuthorsBook.CopiesOf(book.Path).Count);
        }

        Assert.Null(open.CopyOfTheDay(TestBook.Noon.AddHours(1)));
        Assert.NotNull(open.CopyOfTheDay(TestBook.Noon.AddDays(1)));
        Assert.InRange(AuthorsBook.CopiesOf(book.Path).Count, 7, 11);
        Assert.Empty(open.Verify());
    }

    private static BookTrouble Trouble(Action action) => Assert.Throws<BookException>(action).Trouble;
}
