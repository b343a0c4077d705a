using System.Buffers.Binary;
using Doughwright.Book;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Microsoft.Data.Sqlite;

namespace Doughwright.App.Tests.Book;

/// <summary>What cannot be opened or written is told by its trouble, and nothing of it is changed.</summary>
public sealed class RefusalTests : IDisposable
{
    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    [Theory]
    [InlineData("no book at all")]
    [InlineData("SQLite format 3\0")]
    [InlineData("PK\u0003\u0004")]
    public void AFileThatIsNoBook_IsLeftAsItIs(string content)
    {
        File.WriteAllText(book.Path, content);
        Assert.Equal(BookTrouble.NotABook, Trouble(() => book.Open()));
        Assert.Equal(BookTrouble.NotABook, Trouble(() => book.OpenToRead()));
        Assert.Equal(content, File.ReadAllText(book.Path));
        Assert.Equal([book.Path], Directory.EnumerateFileSystemEntries(book.Folder));
    }

    [Fact]
    public void AnotherProgramsDatabase_IsLeftAsItIs()
    {
        using (var other = new SqliteConnection($"Data Source={book.Path};Pooling=False"))
        {
            other.Open();
            using var make = other.CreateCommand();
            make.CommandText = "CREATE TABLE song (id INTEGER PRIMARY KEY)";
            make.ExecuteNonQuery();
        }

        var before = File.ReadAllBytes(book.Path);
        Assert.Equal(BookTrouble.NotABook, Trouble(() => book.Open()));
        Assert.Equal(before, File.ReadAllBytes(book.Path));
    }

    [Fact]
    public void AFolder_IsNoBook()
    {
        Directory.CreateDirectory(book.Path);
        Assert.Equal(BookTrouble.NotABook, Trouble(() => book.Open()));
        Assert.Equal(BookTrouble.NotABook, Trouble(() => book.OpenToRead()));
    }

    [Fact]
    public void WhereThereIsNone_ReadingMakesNone()
    {
        Assert.Equal(BookTrouble.Missing, Trouble(() => book.OpenToRead()));
        Assert.Equal(BookTrouble.Missing, Trouble(() => AuthorsBook.Open(book.In("nowhere", "book.db"), book.Clock)));
        Assert.Empty(Directory.EnumerateFileSystemEntries(book.Folder));
    }

    [Fact]
    public void ANewerBook_IsLeftAsItIs()
    {
        book.Open().Dispose();
        var form = new byte[sizeof(int)];
        BinaryPrimitives.WriteInt32BigEndian(form, 99);
        TestBook.Spoil(book.Path, 60, form);
        var before = File.ReadAllBytes(book.Path);
        Assert.Equal(BookTrouble.Newer, Trouble(() => book.Open()));
        Assert.Equal(BookTrouble.Newer, Trouble(() => book.OpenToRead()));
        Assert.Equal(before, File.ReadAllBytes(book.Path));
    }

    [Fact]
    public void ASecondWriter_IsToldThatTheBookIsInUse_AndAReaderReads()
    {
        using var first = book.Open();
        TestBook.Fill(first, 3);
        Assert.Equal(BookTrouble.InUse, Trouble(() => book.Open()));
        using var reader = book.OpenToRead();
        Assert.Equal(TestBook.TextOf(3), reader.Papers.Text(PaperSort.Recipe, "rolls"));
    }

    /// <summary>The lock goes by the file, not by the name that led to it.</summary>
    [Fact]
    public void ASecondWriterByAnotherName_IsToldToo()
    {
        using var first = book.Open();
        var link = book.In("link.db");
        File.CreateSymbolicLink(link, book.Path);
        Assert.Equal(BookTrouble.InUse, Trouble(() => AuthorsBook.Open(link, book.Clock)));
    }

    /// <summary>Another program holds the file itself; no write waits for ever.</summary>
    [Fact]
    public void ALockedFile_IsToldAsBusy_AndIsWrittenWhenItIsFree()
    {
        using var mine = book.Open();
        var state = TestBook.Fill(mine, 1);
        using (var other = new SqliteConnection($"Data Source={book.Path};Pooling=False"))
        {
            other.Open();
            using var hold = other.CreateCommand();
            hold.CommandText = "BEGIN IMMEDIATE";
            hold.ExecuteNonQuery();
            Assert.Equal(BookTrouble.Busy, Trouble(() => mine.Papers.Write(PaperSort.Recipe, "rolls", state, "x", "x")));
        }

        Assert.IsType<WriteAnswer.Written>(mine.Papers.Write(PaperSort.Recipe, "rolls", state, "x", "x"));
        Assert.Empty(mine.Verify());
    }

    private static BookTrouble Trouble(Action action) => Assert.Throws<BookException>(action).Trouble;
}
