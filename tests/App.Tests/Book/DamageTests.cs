using System.Text;
using Dapper;
using Doughwright.Book;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Book.Safety;

namespace Doughwright.App.Tests.Book;

/// <summary>A damaged book says so wherever it is read, and is brought back from its latest sound copy with nothing thrown away.</summary>
public sealed class DamageTests : IDisposable
{
    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    /// <summary>One letter of one text, which the library does not notice.</summary>
    [Fact]
    public void ATextWithOneLetterChanged_IsNotGivenOut()
    {
        using (var open = book.Open())
        {
            TestBook.Fill(open, 2);
        }

        Replace(book.Path, "Rolls 2", "Rolls 9");
        using var damaged = book.Open();
        Assert.Equal(BookTrouble.Damaged, Trouble(() => damaged.Papers.Text(PaperSort.Recipe, "rolls")));
        Assert.Equal(BookTrouble.Damaged, Trouble(() => damaged.Papers.Write(PaperSort.Recipe, "rolls", 1, "x", "x")));
        Assert.Single(AuthorsBook.Examine(book.Path), flaw => flaw.Kind == FlawKind.Text);
    }

    [Fact]
    public void ADamagedPage_IsFound_AndTheBookIsBroughtBack()
    {
        long state;
        using (var open = book.Open())
        {
            state = TestBook.Fill(open, 30);
            Assert.NotNull(open.CopyOfTheDay(TestBook.Noon));
        }

        foreach (var page in Enumerable.Range(2, (int)(new FileInfo(book.Path).Length / 4096) - 2))
        {
            TestBook.Spoil(book.Path, page * 4096L, [.. Enumerable.Repeat((byte)0xee, 64)]);
        }

        var damaged = File.ReadAllBytes(book.Path);
        Assert.Contains(AuthorsBook.Examine(book.Path), flaw => flaw.Kind == FlawKind.File);
        Assert.Equal(book.In("copies", "2026-11-26.db"), AuthorsBook.LatestSoundCopy(book.Path)!.Path);
        var back = AuthorsBook.BringBack(book.Path, null, book.Clock);
        Assert.Equal(damaged, File.ReadAllBytes(back.SetAside!));
        using var sound = book.Open();
        Assert.Empty(sound.Verify());
        Assert.Equal((state, TestBook.TextOf(30)), (sound.Papers.Find(PaperSort.Recipe, "rolls")!.State, sound.Papers.Text(PaperSort.Recipe, "rolls")));
    }

    /// <summary>The book's program ended by force; then the last part of the log was lost.</summary>
    [Theory]
    [InlineData(40)]
    [InlineData(4096)]
    [InlineData(60_000)]
    public void ALogCutShort_IsNotTakenForWhole_AndWhatStandsBeforeIsBroughtBack(int cut)
    {
        var fallen = Fallen(30);
        using (var log = new FileStream(fallen + "-wal", FileMode.Open))
        {
            log.SetLength(log.Length - cut);
        }

        Refused(fallen);
        var back = AuthorsBook.BringBack(fallen, null, book.Clock);
        Assert.Equal((fallen, true), (back.From, File.Exists(back.SetAside + "-wal")));
        using var sound = AuthorsBook.Open(fallen, book.Clock);
        Assert.Empty(sound.Verify());
        Assert.InRange(sound.Papers.States(PaperSort.Recipe, "rolls").Count, 1, 30);
    }

    [Fact]
    public void ALogOfGarbage_IsNotTakenForWhole()
    {
        var fallen = Fallen(30);
        var length = new FileInfo(fallen + "-wal").Length;
        File.WriteAllBytes(fallen + "-wal", [.. Enumerable.Range(0, (int)length).Select(at => (byte)(at * 31 % 256))]);
        Refused(fallen);
    }

    /// <summary>Without the index beside it, which does not outlive every failure, two writes behind a broken place are proof enough.</summary>
    [Fact]
    public void ALogWithOneBitTurned_IsNotTakenForWhole()
    {
        var fallen = Fallen(30);
        File.Delete(fallen + "-shm");
        TestBook.Spoil(fallen + "-wal", (new FileInfo(fallen + "-wal").Length / 2) + 1000, 0xff);
        Refused(fallen);
    }

    [Fact]
    public void ALogThatWasTakenAway_IsMissed()
    {
        var fallen = Fallen(30);
        File.Delete(fallen + "-wal");
        Refused(fallen);
    }

    /// <summary>What a program leaves that ended in the middle of a write is no damage.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    [InlineData(4100)]
    public void AWriteThatWasNeverFinished_IsNoDamage(int begun)
    {
        var fallen = Fallen(5);
        using (var log = new FileStream(fallen + "-wal", FileMode.Append))
        {
            log.Write(new byte[begun]);
        }

        using var open = AuthorsBook.Open(fallen, book.Clock);
        Assert.Equal(6, open.Papers.States(PaperSort.Recipe, "rolls").Count);
        Assert.Empty(open.Verify());
    }

    [Fact]
    public void AStrangeTable_IsAFlaw()
    {
        using (var open = book.Open())
        {
            open.Opened.Use(file => file.Execute("CREATE TRIGGER sly AFTER INSERT ON state BEGIN DELETE FROM kept; END"));
        }

        Assert.Equal([new Flaw(FlawKind.Shape, "trigger sly")], AuthorsBook.Examine(book.Path));
        Assert.Equal(BookTrouble.Damaged, Trouble(() => AuthorsBook.BackUp(book.Path, book.In("copy.db"), book.Clock)));
        Assert.False(File.Exists(book.In("copy.db")));
    }

    [Fact]
    public void WithoutASoundCopy_NothingIsDone()
    {
        using (var open = book.Open())
        {
            TestBook.Fill(open, 3);
        }

        Directory.CreateDirectory(book.In("copies"));
        File.WriteAllText(book.In("copies", "2026-11-25.db"), "torn");
        var before = File.ReadAllBytes(book.Path);
        Assert.Equal(BookTrouble.NoSoundCopy, Trouble(() => AuthorsBook.BringBack(book.Path, null, book.Clock)));
        Assert.Equal(BookTrouble.NotABook, Trouble(() => AuthorsBook.BringBack(book.Path, book.In("copies", "2026-11-25.db"), book.Clock)));
        Assert.Equal(before, File.ReadAllBytes(book.Path));
        Assert.DoesNotContain(Directory.EnumerateFiles(book.Folder), file => file.Contains("aside", StringComparison.Ordinal) || file.EndsWith("unfinished", StringComparison.Ordinal));
    }

    [Fact]
    public void ABookThatIsOpen_IsNotReplaced()
    {
        using var open = book.Open();
        open.CopyTo(book.In("copy.db"));
        Assert.Equal(BookTrouble.InUse, Trouble(() => AuthorsBook.BringBack(book.Path, book.In("copy.db"), book.Clock)));
        Assert.Equal(BookTrouble.InUse, Trouble(() => open.CopyTo(book.Path)));
    }

    /// <summary>A book as it lies there when its program was ended by force, its log not yet taken in.</summary>
    private string Fallen(int states)
    {
        var fallen = book.In("fallen.db");
        using var open = book.Open();
        TestBook.Fill(open, states);
        TestBook.CopyAsItLies(book.Path, fallen);
        Assert.True(File.Exists(fallen + "-wal") && File.Exists(fallen + "-shm"));
        return fallen;
    }

    private void Refused(string fallen)
    {
        var before = (File.ReadAllBytes(fallen), File.Exists(fallen + "-wal") ? File.ReadAllBytes(fallen + "-wal") : []);
        Assert.Equal(BookTrouble.LogDamaged, Trouble(() => AuthorsBook.Open(fallen, book.Clock)));
        Assert.Equal(BookTrouble.LogDamaged, Trouble(() => AuthorsBook.OpenToRead(fallen, book.Clock)));
        Assert.Equal(FlawKind.Log, Assert.Single(AuthorsBook.Examine(fallen)).Kind);
        Assert.Equal(before.Item1, File.ReadAllBytes(fallen));
        Assert.Equal(before.Item2, File.Exists(fallen + "-wal") ? File.ReadAllBytes(fallen + "-wal") : []);
    }

    private static void Replace(string file, string word, string by)
    {
        var bytes = File.ReadAllBytes(file);
        var at = bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes(word));
        Assert.True(at > 0);
        TestBook.Spoil(file, at, Encoding.UTF8.GetBytes(by));
    }

    private static BookTrouble Trouble(Action action) => Assert.Throws<BookException>(action).Trouble;
}
