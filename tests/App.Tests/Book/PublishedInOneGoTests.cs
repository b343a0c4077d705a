using Dapper;
using Doughwright.Book;
using Doughwright.Book.Papers;
using Microsoft.Data.Sqlite;

namespace Doughwright.App.Tests.Book;

/// <summary>A state is published and its recipe said to be so in one go: both are there, or neither.</summary>
public sealed class PublishedInOneGoTests : IDisposable
{
    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    [Fact]
    public void Publishing_KeepsTheState_AndSaysSo()
    {
        using var open = book.Open();
        var state = TestBook.Fill(open, 2);
        Assert.True(Publish(open, state)!.Published);
        Assert.Equal("published", Standing(open));
    }

    [Fact]
    public void WhereTheSecondCannotBeWritten_NeitherIs()
    {
        using var open = book.Open();
        var state = TestBook.Fill(open, 2);
        open.Opened.Use(file => file.Execute("CREATE TEMP TRIGGER no_word BEFORE INSERT ON said BEGIN SELECT RAISE(ABORT, 'no word'); END"));
        Assert.Contains("no word", Assert.Throws<SqliteException>(() => Publish(open, state)).Message, StringComparison.Ordinal);
        Assert.Empty(open.Kept.All(PaperSort.Recipe, "rolls"));
        open.Opened.Use(file => file.Execute("DROP TRIGGER no_word"));
        Assert.NotNull(Publish(open, state));
        Assert.Empty(open.Verify());
    }

    /// <summary>What was changed meanwhile is neither kept nor said to be published.</summary>
    [Fact]
    public void WhereTheFirstIsRefused_TheSecondIsNotSaid()
    {
        using var open = book.Open();
        var state = TestBook.Fill(open, 2);
        TestBook.Fill(open, 1);
        Assert.Null(Publish(open, state));
        Assert.Null(Standing(open));
    }

    private static string? Standing(AuthorsBook open) => open.Said.All(PaperSort.Recipe).GetValueOrDefault("rolls")?.GetValueOrDefault(Saying.Standing);

    private static KeptState? Publish(AuthorsBook open, long state) => open.Kept.Keep(PaperSort.Recipe, "rolls", state, "given out", "", published: true, "published");
}
