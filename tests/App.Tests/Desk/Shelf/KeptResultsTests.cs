using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Shelf;

public class KeptResultsTests
{
    private static readonly Voice Metric = new(Words.Shipped, MeasureSystem.Metric);

    private static readonly SealKey Key = SealKey.OfThisDesk();

    [Fact]
    public void WhatIsKept_IsFound()
    {
        using var scratch = new Scratch();
        var kept = new KeptResults(scratch.Data, Key);
        kept.Keep("a-row", "one\ntwo ü");
        Assert.Equal("one\ntwo ü", kept.Find("a-row"));
        Assert.Null(kept.Find("b-row"));
    }

    [Fact]
    public void DamagedOrForeignFile_CountsAsNotThere()
    {
        using var scratch = new Scratch();
        var kept = new KeptResults(scratch.Data, Key);
        kept.Keep("a", "one");
        var file = Path.Join(scratch.Data.Kept, "a.kept");
        var whole = File.ReadAllText(file);
        foreach (var damaged in new[] { "", "one", whole[..^1], whole.Replace("one", "two", StringComparison.Ordinal), "\n", whole + "x", new string('0', 64) + "\none" })
        {
            File.WriteAllText(file, damaged);
            Assert.Null(kept.Find("a"));
        }

        File.WriteAllText(Path.Join(scratch.Data.Kept, "b.kept"), whole);
        Assert.Null(kept.Find("b"));
        kept.Keep("a", "again");
        Assert.Equal("again", kept.Find("a"));
    }

    [Fact]
    public void FolderThatCannotBeUsed_StopsNothing()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch.Data.Kept, "a file where the folder should be");
        var kept = new KeptResults(scratch.Data, Key);
        kept.Keep("a", "one");
        kept.Trim(1);
        Assert.Null(kept.Find("a"));
    }

    /// <summary>Whoever can write into the folder can count a digest; without the key it is no seal.</summary>
    [Fact]
    public void TextSealedWithoutTheKey_CountsAsNotThere()
    {
        using var scratch = new Scratch();
        var kept = new KeptResults(scratch.Data, Key);
        const string Markup = "<form action=\"/open\"></form>";
        kept.Keep("a", Markup);
        Assert.Equal(Markup, kept.Find("a"));
        Assert.Null(new KeptResults(scratch.Data, SealKey.OfThisDesk()).Find("a"));
        var digest = System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes("a\n" + Markup));
        File.WriteAllText(Path.Join(scratch.Data.Kept, "a.kept"), Convert.ToHexStringLower(digest) + "\n" + Markup);
        Assert.Null(kept.Find("a"));
    }

    [Fact]
    public void LargeShelf_KeepsAllItsRows_AndWhatWasUsedLast()
    {
        using var scratch = new Scratch();
        var kept = new KeptResults(scratch.Data, Key);
        const int Recipes = 1010;
        for (var i = 0; i < (4 * Recipes) + 3; i++)
        {
            var name = FormattableString.Invariant($"k{i}");
            kept.Keep(name, "x");
            File.SetLastAccessTimeUtc(Path.Join(scratch.Data.Kept, name + ".kept"), new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddSeconds(i));
        }

        Assert.Equal("x", kept.Find("k0"));
        kept.Trim(Recipes);
        Assert.Equal(4 * Recipes, Directory.GetFiles(scratch.Data.Kept, "*.kept").Length);
        Assert.Equal("x", kept.Find("k0"));
        Assert.Null(kept.Find("k3"));
        Assert.Equal("x", kept.Find("k4"));
    }

    [Fact]
    public void OldOnes_GoFirst_AndForeignFilesStay()
    {
        using var scratch = new Scratch();
        var kept = new KeptResults(scratch.Data, Key);
        for (var i = 0; i < KeptResults.Most + 5; i++)
        {
            var name = FormattableString.Invariant($"k{i}");
            kept.Keep(name, "x");
            File.SetLastAccessTimeUtc(Path.Join(scratch.Data.Kept, name + ".kept"), new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddSeconds(i));
        }

        var foreign = Path.Join(scratch.Data.Kept, "note.txt");
        File.WriteAllText(foreign, "mine");
        kept.Trim(1);
        Assert.True(File.Exists(foreign));
        Assert.Equal(KeptResults.Most, Directory.GetFiles(scratch.Data.Kept, "*.kept").Length);
        Assert.Null(kept.Find("k4"));
        Assert.Equal("x", kept.Find("k5"));
    }

    [Fact]
    public void Key_ChangesWithEverythingThatARowIsMadeFrom()
    {
        var keys = new RowKey(Words.Shipped);
        var other = new RowKey(new(new(Words.Shipped.Entries.ToDictionary()) { ["shelf.facts"] = "otherwise" }));
        byte[] text = [1, 2], changed = [1, 3];
        string[] all =
        [
            keys.Of("a", text, null, Metric),
            keys.Of("b", text, null, Metric),
            keys.Of("a", changed, null, Metric),
            keys.Of("a", text, [1], Metric),
            keys.Of("a", text, [2], Metric),
            keys.Of("a", text, [], Metric),
            keys.Of("a", text, null, new Voice(Words.Shipped, MeasureSystem.Us)),
            other.Of("a", text, null, Metric),
        ];
        Assert.Equal(all.Length, all.Distinct().Count());
        Assert.Equal(all[0], new RowKey(Words.Shipped).Of("a", [1, 2], null, Metric));
    }
}
