using System.IO.Compression;
using Dapper;
using Doughwright.App.Commands;
using Doughwright.Book;
using Doughwright.Book.Exchange;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;

namespace Doughwright.App.Tests.Book;

/// <summary>A book goes out as plain files and comes back equal; what comes in changes nothing that is there.</summary>
public sealed class ExchangeTests : IDisposable
{
    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    [Theory]
    [InlineData("out")]
    [InlineData("out.zip")]
    public void ExportImportExport_IsTheSameToTheByte(string name)
    {
        using var first = book.Open();
        RichBook.Fill(first);
        first.Export(book.In("first-" + name));
        using var second = AuthorsBook.Open(book.In("second.db"), book.Clock);
        var answer = second.Import(book.In("first-" + name), ImportedPhotos.Look);
        Assert.Empty(answer.Faults);
        Assert.True(answer.Done);
        Assert.All(answer.Papers, paper => Assert.Equal(Coming.New, paper.Becomes));
        Assert.Empty(second.Verify());
        second.Export(book.In("second-" + name));
        Assert.Equal(Files(book.In("first-" + name)), Files(book.In("second-" + name)));
        Assert.True(Files(book.In("first-" + name)).Count > 10);
    }

    /// <summary>Undo, redo and what was kept work on as they did.</summary>
    [Fact]
    public void ABookThatCameIn_GoesOn()
    {
        using var first = book.Open();
        RichBook.Fill(first);
        first.Export(book.In("out"));
        using var second = AuthorsBook.Open(book.In("second.db"), book.Clock);
        TestBook.Fill(second, 3, "other");
        Assert.True(second.Import(book.In("out"), ImportedPhotos.Look).Done);
        var (was, now) = (first.Papers.Find(PaperSort.Recipe, "potato-rolls")!, second.Papers.Find(PaperSort.Recipe, "potato-rolls")!);
        Assert.Equal((was.Uid, was.Hash, was.Did, was.Undo, was.Redo), (now.Uid, now.Hash, now.Did, now.Undo, now.Redo));
        Assert.Equal(
            Assert.IsType<WriteAnswer.Written>(first.Papers.Redo(PaperSort.Recipe, "potato-rolls", was.State)).Hash,
            Assert.IsType<WriteAnswer.Written>(second.Papers.Redo(PaperSort.Recipe, "potato-rolls", now.State)).Hash);
        Assert.Equal(Enumerable.Reverse(RichBook.Awkward), second.Kept.All(PaperSort.Recipe, "potato-rolls").Select(kept => kept.Note));
        var offshoot = second.Papers.Find(PaperSort.Recipe, "CON")!.GrownFrom!.Value;
        Assert.Equal(first.Papers.TextOf(first.Papers.Find(PaperSort.Recipe, "CON")!.GrownFrom!.Value), second.Papers.TextOf(offshoot));
        Assert.Equal(4, second.Papers.States(PaperSort.Recipe, "other").Count);
    }

    [Fact]
    public void AnExport_TakenInTwice_ChangesNothing()
    {
        using var first = book.Open();
        RichBook.Fill(first);
        first.Export(book.In("out"));
        var answer = first.Import(book.In("out"), ImportedPhotos.Look);
        Assert.True(answer.Done);
        Assert.All(answer.Papers, paper => Assert.Equal(Coming.Same, paper.Becomes));
        first.Export(book.In("again"));
        Assert.Equal(Files(book.In("out")), Files(book.In("again")));
    }

    [Fact]
    public void APaperThatSaysSomethingElse_KeepsEverythingOut()
    {
        using var first = book.Open();
        RichBook.Fill(first);
        using var second = AuthorsBook.Open(book.In("second.db"), book.Clock);
        first.Export(book.In("out"));
        Assert.True(second.Import(book.In("out"), ImportedPhotos.Look).Done);
        first.Papers.Lay(PaperSort.Recipe, ["new"], "new", "laid");
        first.Papers.Write(PaperSort.Note, "scalding", first.Papers.Find(PaperSort.Note, "scalding")!.State, "other", "changed");
        first.Export(book.In("later"));
        var answer = second.Import(book.In("later"), ImportedPhotos.Look);
        Assert.False(answer.Done);
        Assert.Equal(["scalding"], answer.Papers.Where(paper => paper.Becomes == Coming.Other).Select(paper => paper.Name));
        Assert.Equal(["new"], answer.Papers.Where(paper => paper.Becomes == Coming.New).Select(paper => paper.Name));
        Assert.Null(second.Papers.Find(PaperSort.Recipe, "new"));
        second.Export(book.In("still"));
        Assert.Equal(Files(book.In("out")), Files(book.In("still")));
    }

    [Fact]
    public void ANameThatIsTaken_GetsANumber()
    {
        using var first = book.Open();
        first.Papers.Lay(PaperSort.Recipe, ["rolls"], "theirs", "laid");
        first.Export(book.In("out"));
        using var second = AuthorsBook.Open(book.In("second.db"), book.Clock);
        second.Papers.Lay(PaperSort.Recipe, ["rolls"], "mine", "laid");
        Assert.Equal(["rolls-2"], second.Import(book.In("out"), ImportedPhotos.Look).Papers.Select(paper => paper.As));
        Assert.Equal(("mine", "theirs"), (second.Papers.Text(PaperSort.Recipe, "rolls"), second.Papers.Text(PaperSort.Recipe, "rolls-2")));
    }

    /// <summary>No cell begins with what a spreadsheet takes for a formula.</summary>
    [Fact]
    public void Tables_HoldNoFormula()
    {
        using var first = book.Open();
        RichBook.Fill(first);
        first.Export(book.In("out"));
        foreach (var table in Directory.EnumerateFiles(book.In("out"), "*.csv"))
        {
            var cells = File.ReadAllText(table).Split('\n').SelectMany(line => line.Split(',')).Select(cell => cell.TrimStart('"')).ToArray();
            Assert.NotEmpty(cells);
            Assert.DoesNotContain(cells, cell => cell.Length > 0 && "=+-@\t".Contains(cell[0], StringComparison.Ordinal));
        }
    }

    [Fact]
    public void WhatIsThere_IsNotWrittenOver()
    {
        using var first = book.Open();
        Directory.CreateDirectory(book.In("full"));
        File.WriteAllText(book.In("full", "mine.txt"), "mine");
        File.WriteAllText(book.In("mine.zip"), "mine");
        Assert.Equal(BookTrouble.Taken, Assert.Throws<BookException>(() => first.Export(book.In("full"))).Trouble);
        Assert.Equal(BookTrouble.Taken, Assert.Throws<BookException>(() => first.Export(book.In("mine.zip"))).Trouble);
        Assert.Equal(("mine", "mine"), (File.ReadAllText(book.In("full", "mine.txt")), File.ReadAllText(book.In("mine.zip"))));
    }

    /// <summary>A column that the export does not know of would be lost silently. Whoever adds one adds it there, and then here.</summary>
    [Fact]
    public void EveryColumn_IsExported()
    {
        using var open = book.Open();
        var columns = open.Opened.Use(file => file.Query<string>(
            "SELECT m.name || '.' || c.name FROM sqlite_schema AS m, pragma_table_info(m.name) AS c WHERE m.type = 'table' AND m.name NOT LIKE 'sqlite%'").Order(StringComparer.Ordinal).ToArray());
        Assert.Equal(
            "body.hash body.text correction.at correction.done correction.id correction.kept correction.place correction.text kept.at kept.id kept.name kept.note kept.published kept.state "
            + "paper.grown_from paper.id paper.name paper.now paper.sort paper.taken_away paper.uid photo.bytes photo.hash photo.type photo_of.at photo_of.hash photo_of.paper photo_of.words "
            + "said.at said.id said.paper said.value said.what state.at state.before state.did state.hash state.id state.paper step_back.onward step_back.paper step_back.state",
            string.Join(' ', columns));
    }

    private static Dictionary<string, string> Files(string export)
    {
        if (File.Exists(export))
        {
            using var archive = ZipFile.OpenRead(export);
            return archive.Entries.Select(entry => (entry.FullName, "")).Append(("all", Convert.ToHexString(File.ReadAllBytes(export)))).ToDictionary(one => one.Item1, one => one.Item2);
        }

        return Directory.EnumerateFiles(export, "*", SearchOption.AllDirectories).ToDictionary(file => Path.GetRelativePath(export, file), file => Convert.ToHexString(File.ReadAllBytes(file)));
    }
}
