using System.Buffers.Binary;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Book;

/// <summary>"book" on the command line: what it does, what it says, and what it leaves alone.</summary>
public sealed class BookCommandTests : IDisposable
{
    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    [Fact]
    public void BackupVerifyRestore_BringBackWhatWas()
    {
        Filled();
        Assert.Contains("by-hand-", Done("backup"), StringComparison.Ordinal);
        Assert.Contains("agrees with itself", Done("verify"), StringComparison.Ordinal);
        using (var open = book.Open())
        {
            open.Papers.Lay(PaperSort.Recipe, ["later"], "later", "laid");
        }

        Assert.Contains("set aside as", Done("restore"), StringComparison.Ordinal);
        using var back = book.OpenToRead();
        Assert.Equal(["rolls"], back.Papers.All(PaperSort.Recipe).Select(paper => paper.Name));
        Assert.Single(Directory.EnumerateFiles(book.Folder, "book-set-aside-*.db"));
    }

    [Theory]
    [InlineData("backup", "my-book.zip")]
    [InlineData("export", "out")]
    public void WordWhereAnOptionIsMeant_IsToldTheOption(string what, string word)
    {
        Filled();
        var run = Run.Of("book", what, word, "--folder", book.Folder);
        Assert.NotEqual(0, run.ExitCode);
        Assert.Contains("--out " + word, run.Messages, StringComparison.Ordinal);
        Assert.DoesNotContain("quotation marks", run.Messages, StringComparison.Ordinal);
        Assert.Equal(2, run.Messages.TrimEnd().Split('\n').Length);
    }

    [Fact]
    public void KitchenThatOnlyTheBookKnows_IsToldByItsAddress()
    {
        Filled();
        using (var open = book.Open())
        {
            open.Papers.Lay(PaperSort.Recipe, ["bread"], File.ReadAllText(House.PotatoRolls), "laid");
            open.Papers.Lay(PaperSort.Kitchen, ["my-flat"], "doughwright: 1\nkitchen: My flat\nair: 19 C\n", "laid");
        }

        var run = Run.Of("rehearse", book.Path + ":bread", "--kitchen", "my-flat");
        Assert.NotEqual(0, run.ExitCode);
        var said = string.Concat(run.Messages.Where(sign => !char.IsWhiteSpace(sign)));
        Assert.Contains($"--kitchen{book.Path}:my-flat.", said, StringComparison.Ordinal);
        Assert.Equal(0, Run.Of("rehearse", book.Path + ":bread", "--kitchen", book.Path + ":my-flat").ExitCode);
        Assert.Contains("There is no kitchen your-flat. There are", Run.Of("rehearse", book.Path + ":bread", "--kitchen", "your-flat").Messages, StringComparison.Ordinal);
        Assert.Contains("There is no kitchen my-flat. There are", Run.Of("rehearse", House.PotatoRolls, "--kitchen", "my-flat").Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void ExportImport_GiveAnEqualBook()
    {
        Filled();
        Done("export", "--out", book.In("out.zip"));
        using var other = new TestBook();
        var run = Run.Of("book", "import", book.In("out.zip"), "--folder", other.In("new"));
        Assert.Equal((0, ""), (run.ExitCode, run.Messages));
        Assert.Contains("recipe rolls", run.Output, StringComparison.Ordinal);
        Assert.Equal(0, Run.Of("book", "export", "--out", other.In("again.zip"), "--folder", other.In("new")).ExitCode);
        Assert.Equal(File.ReadAllBytes(book.In("out.zip")), File.ReadAllBytes(other.In("again.zip")));
    }

    [Fact]
    public void AnImportThatDiffers_IsOne_AndSaysWhatItWouldDo()
    {
        Filled();
        Done("export", "--out", book.In("out"));
        using (var open = book.Open())
        {
            TestBook.Fill(open, 1);
        }

        var run = Run.Of("book", "import", book.In("out"), "--folder", book.Folder);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("Nothing was taken in", run.Output, StringComparison.Ordinal);
        Assert.Contains("recipe rolls", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void ADamagedBook_IsOne_AndOffersTheCopy()
    {
        Filled();
        Done("backup");
        TestBook.Spoil(book.Path, 4096 * 3, [.. Enumerable.Repeat((byte)0xee, 4096)]);
        var run = Run.Of("book", "verify", "--folder", book.Folder);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("book restore", run.Output, StringComparison.Ordinal);
        Assert.Contains("by-hand-", run.Output.Replace("\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Done("restore");
        Done("verify");
    }

    /// <summary>What, where, and what to do; every trouble of a book has its words.</summary>
    [Fact]
    public void EveryTrouble_HasWords() => Assert.All(Enum.GetValues<BookTrouble>(), trouble =>
    {
        var told = Told(trouble);
        Assert.Contains(book.Path, told.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('{', told.Message + told.WayOut);
        Assert.True(told.WayOut.Length > 10);
    });

    [Fact]
    public void EveryTrouble_HasWordsOfItsOwn() => Assert.Equal(
        Enum.GetValues<BookTrouble>().Length, Enum.GetValues<BookTrouble>().Select(trouble => Told(trouble).Message).Distinct().Count());

    [Theory]
    [InlineData("")]
    [InlineData("destroy")]
    [InlineData("export")]
    [InlineData("import")]
    [InlineData("verify --out x.db")]
    [InlineData("backup a.db")]
    [InlineData("import a.zip b.zip")]
    [InlineData("import nowhere.zip")]
    public void WhatIsNotUnderstood_IsTwo(string words)
    {
        Filled();
        var run = Run.Of(["book", .. words.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--folder", book.Folder]);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.NotEmpty(run.Messages);
        Assert.DoesNotContain('{', run.Messages);
    }

    [Fact]
    public void ABookThatIsOpen_IsCopiedAndRead_AndNotReplaced()
    {
        Filled();
        using var open = book.Open();
        Done("backup");
        Done("verify");
        Done("export", "--out", book.In("out"));
        Assert.Contains("open in another program", Run.Of("book", "restore", "--folder", book.Folder).Messages, StringComparison.Ordinal);
        Assert.Contains("open in another program", Run.Of("book", "import", book.In("out"), "--folder", book.Folder).Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void ANewerBook_IsLeftAlone()
    {
        Filled();
        var form = new byte[sizeof(int)];
        BinaryPrimitives.WriteInt32BigEndian(form, 99);
        TestBook.Spoil(book.Path, 60, form);
        var before = File.ReadAllBytes(book.Path);
        foreach (var words in new string[][] { ["backup"], ["verify"], ["export", "--out", book.In("out")] })
        {
            var run = Run.Of(["book", .. words, "--folder", book.Folder]);
            Assert.Equal(2, run.ExitCode);
            Assert.Contains("newer program (form 99)", run.Messages, StringComparison.Ordinal);
        }

        Assert.Equal(before, File.ReadAllBytes(book.Path));
    }

    private void Filled()
    {
        using var open = book.Open();
        TestBook.Fill(open, 20);
    }

    private App.Commands.Fault Told(BookTrouble trouble)
    {
        var faults = new App.Commands.Faults(new(Words.Shipped, Doughwright.Engine.Quantities.MeasureSystem.Metric));
        App.Commands.BookFaults.Add(new BookException(trouble, book.Path, "why"), faults);
        return Assert.Single(faults.All);
    }

    private string Done(params string[] words)
    {
        var run = Run.Of(["book", .. words, "--folder", book.Folder]);
        Assert.Equal((0, ""), (run.ExitCode, run.Messages));
        return string.Join(' ', run.Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
    }
}
