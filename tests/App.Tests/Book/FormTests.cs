using Dapper;
using Doughwright.Book;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Book.Schema;
using Microsoft.Data.Sqlite;

namespace Doughwright.App.Tests.Book;

/// <summary>Books of every released form are opened, copied, brought forward and read. tests/data/books holds one of each, never edited.</summary>
public sealed class FormTests : IDisposable
{
    /// <summary>A form that was never released, to have one to go to.</summary>
    internal const string Trial = "ALTER TABLE state ADD COLUMN letters INTEGER; UPDATE state SET letters = (SELECT length(text) FROM body WHERE body.hash = state.hash);";

    internal static readonly Forms WithTrial = new([.. Forms.Shipped.Steps, Trial]);

    private readonly TestBook book = new();

    public static TheoryData<string> Stored => [.. Directory.EnumerateFiles(House.PathTo("tests", "data", "books"), "form-*.db").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    public void Dispose() => book.Dispose();

    [Theory]
    [MemberData(nameof(Stored))]
    public void AStoredBook_IsBroughtForwardAndRead(string name)
    {
        File.Copy(House.PathTo("tests", "data", "books", name), book.Path);
        using var open = book.Open();
        Assert.Empty(open.Verify());
        Assert.Equal(["kestrel-rolls", "ropewalk-loaf"], open.Papers.All(PaperSort.Recipe).Select(paper => paper.Name));
        Assert.Equal(["cottage"], open.Papers.TakenAway(PaperSort.Kitchen).Select(paper => paper.Name));
        Assert.Equal("doughwright: 1\ntitle: Ropewalk loaf, wetter\n", open.Papers.Text(PaperSort.Recipe, "ropewalk-loaf"));
        Assert.Equal(["made wetter", "made saltier", "laid"], open.Papers.States(PaperSort.Recipe, "ropewalk-loaf").Select(state => state.Did));
        var kept = Assert.Single(open.Kept.All(PaperSort.Recipe, "ropewalk-loaf"));
        Assert.Equal(("for the class", "=not a formula, a note", true), (kept.Name, kept.Note, kept.Published));
        Assert.Equal("right", open.Said.All(PaperSort.Recipe)["ropewalk-loaf"][Saying.Standing]);
        Assert.NotNull(open.Papers.Find(PaperSort.Recipe, "kestrel-rolls")!.GrownFrom);
    }

    /// <summary>A released form never changes: what is new comes as the next.</summary>
    [Fact]
    public void TheFirstForm_IsTheStoredOne()
    {
        File.Copy(House.PathTo("tests", "data", "books", "form-1.db"), book.Path);
        using var stored = BookFile.OpenToCopy(book.Path, new([Forms.Shipped.Steps[0]]));
        Assert.Empty(Doughwright.Book.Safety.Verifier.Verify(stored));
    }

    [Fact]
    public void AnOlderBook_IsCopiedVerifiedAndBroughtForward()
    {
        File.Copy(House.PathTo("tests", "data", "books", "form-1.db"), book.Path);
        using (var older = AuthorsBook.Open(book.Path, book.Clock, new([Forms.Shipped.Steps[0]])))
        {
            TestBook.Fill(older, 4, "kestrel-rolls");
        }

        using (var open = AuthorsBook.Open(book.Path, book.Clock, WithTrial))
        {
            Assert.Empty(open.Verify());
            Assert.Equal(TestBook.TextOf(4), open.Papers.Text(PaperSort.Recipe, "kestrel-rolls"));
            Assert.Equal(0, open.Opened.Use(file => file.ExecuteScalar<long>("SELECT count(*) FROM state WHERE letters IS NULL")));
        }

        var copy = Assert.Single(AuthorsBook.CopiesOf(book.Path));
        Assert.Equal($"before-form-{WithTrial.Now}-20261126T120000.db", Path.GetFileName(copy.Path));
        Assert.Empty(AuthorsBook.Examine(copy.Path));
        // This program does not know the trial form.
        Assert.Equal(BookTrouble.Newer, Assert.Throws<BookException>(() => book.Open()).Trouble);
    }

    /// <summary>A step that fails leaves the book in the form it had.</summary>
    [Fact]
    public void AStepThatFails_ChangesNothing()
    {
        using (var open = book.Open())
        {
            TestBook.Fill(open, 2);
        }

        var broken = new Forms([.. Forms.Shipped.Steps, Trial + "INSERT INTO kept (state, at, name, note) VALUES (999, '', '', '');"]);
        Assert.Equal(19, Assert.Throws<SqliteException>(() => AuthorsBook.Open(book.Path, book.Clock, broken)).SqliteErrorCode);
        using var still = book.Open();
        Assert.Equal(3, still.Papers.States(PaperSort.Recipe, "rolls").Count);
        Assert.Empty(still.Verify());
    }

    /// <summary>Makes the stored book of the present form. It is run once when a form is released, and its file is never edited after that.</summary>
    [Fact(Explicit = true)]
    [Trait("Category", "Making")]
    public void TheStoredBook_IsMade()
    {
        var to = House.PathTo("tests", "data", "books", $"form-{Forms.Shipped.Now}.db");
        Assert.False(File.Exists(to), "A stored book is never made again.");
        using var open = book.Open();
        var (papers, sort) = (open.Papers, PaperSort.Recipe);
        papers.Lay(sort, ["ropewalk-loaf"], "doughwright: 1\ntitle: Ropewalk loaf\n", "laid");
        var first = papers.Find(sort, "ropewalk-loaf")!.State;
        var second = Assert.IsType<WriteAnswer.Written>(papers.Write(sort, "ropewalk-loaf", first, "doughwright: 1\ntitle: Ropewalk loaf, saltier\n", "made saltier")).State;
        papers.Undo(sort, "ropewalk-loaf", second);
        var third = Assert.IsType<WriteAnswer.Written>(papers.Write(sort, "ropewalk-loaf", first, "doughwright: 1\ntitle: Ropewalk loaf, wetter\n", "made wetter")).State;
        open.Kept.Keep(sort, "ropewalk-loaf", third, "for the class", "=not a formula, a note", published: true);
        open.Said.Say(sort, "ropewalk-loaf", Saying.Standing, "trying");
        open.Said.Say(sort, "ropewalk-loaf", Saying.Standing, "right");
        open.Said.Say(sort, "ropewalk-loaf", Saying.Baked, "2026-11-20");
        papers.Lay(sort, ["kestrel-rolls"], "doughwright: 1\ntitle: Kestrel rolls\n", "grown", third);
        var rolls = papers.Find(sort, "kestrel-rolls")!.State;
        var changed = Assert.IsType<WriteAnswer.Written>(papers.Write(sort, "kestrel-rolls", rolls, "doughwright: 1\ntitle: Kestrel rolls, small\n", "made small")).State;
        papers.Undo(sort, "kestrel-rolls", changed);
        papers.Lay(PaperSort.Kitchen, ["cottage"], "kitchen: 1\nname: Kestrel cottage\n", "laid");
        papers.TakeAway(PaperSort.Kitchen, "cottage");
        papers.Lay(PaperSort.Note, ["scalding"], "# Scalding\n\nPour it at the boil.\n", "laid");
        papers.Lay(PaperSort.Ingredient, ["harbour-flour"], "ingredient: Harbour flour\n", "laid");
        open.CopyTo(to);
    }
}
