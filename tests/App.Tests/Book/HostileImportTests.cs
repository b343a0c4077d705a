using System.IO.Compression;
using System.Text;
using Doughwright.App.Commands;
using Doughwright.Book;
using Doughwright.Book.Papers;

namespace Doughwright.App.Tests.Book;

/// <summary>Exports that somebody else made, to harm or by mistake: all that is wrong is told at once, nothing is written anywhere.</summary>
public sealed class HostileImportTests : IDisposable
{
    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    [Theory]
    [InlineData("../evil.yaml", "import-name-leads-out")]
    [InlineData("recipes/../../evil.yaml", "import-name-leads-out")]
    [InlineData("/etc/evil.yaml", "import-name-leads-out")]
    [InlineData("C:/evil.yaml", "import-name-leads-out")]
    [InlineData("C:evil.yaml", "import-name-leads-out")]
    [InlineData("..\\evil.yaml", "import-name-leads-out")]
    [InlineData("recipes\\evil.yaml", "import-name-leads-out")]
    [InlineData("recipes/a\u0001.yaml", "import-name-odd")]
    [InlineData("recipes/a\u202elmay.yaml", "import-name-odd")]
    [InlineData("recipes/con.yaml", "import-name-odd")]
    [InlineData("recipes/ｒolls.yaml", "import-name-odd")]
    [InlineData("recipes/LPT1.yaml", "import-name-odd")]
    [InlineData("recipes/a.yaml:stream", "import-name-odd")]
    [InlineData("recipes/a.yaml ", "import-name-odd")]
    [InlineData("recipes//a.yaml", "import-name-odd")]
    [InlineData("inner.zip", "import-nested")]
    [InlineData("photos/inner.tar.gz", "import-nested")]
    [InlineData("run.sh", "import-stranger")]
    [InlineData("recipes/deep/a.yaml", "import-stranger")]
    [InlineData("photos/a.svg", "import-stranger")]
    [InlineData("recipes/not-listed.yaml", "import-stranger")]
    public void AName_ThatNoExportHas_IsTold(string name, string kind)
    {
        Assert.Equal([kind], Kinds(Archive(archive => Put(archive, name, "x"))));
        Assert.DoesNotContain(Directory.EnumerateFiles(Path.GetTempPath()), file => file.Contains("evil", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("recipes/rolls.yaml")]
    [InlineData("recipes/ROLLS.yaml")]
    public void AName_ThatIsThereTwice_IsTold(string name) => Assert.Equal(["import-name-twice"], Kinds(Archive(archive => Put(archive, name, "x"))));

    [Fact]
    public void ALink_IsNotFollowed()
    {
        Assert.Equal(["import-link"], Kinds(Archive(archive => archive.CreateEntry("recipes/link.yaml").ExternalAttributes = unchecked((int)0xA1FF0000))));
        Sound("out");
        File.CreateSymbolicLink(book.In("out", "recipes", "link.yaml"), "/etc/passwd");
        Directory.CreateSymbolicLink(book.In("out", "photos"), "/");
        Assert.Equal(["import-link", "import-link"], Kinds("out"));
    }

    [Fact]
    public void TenThousandFiles_AreRefused()
    {
        var kinds = Kinds(Archive(archive =>
        {
            for (var number = 0; number < 10_000; number++)
            {
                Put(archive, $"recipes/r{number}.yaml", "");
            }
        }));
        Assert.Equal(["import-too-many"], kinds);
    }

    /// <summary>Zeros pack to a thousandth.</summary>
    [Fact]
    public void WhatUnpacksToAThousandTimes_IsNotUnpacked() => Assert.Contains("import-too-dense", Kinds(Archive(archive =>
    {
        using var stream = archive.CreateEntry("recipes/bomb.yaml", CompressionLevel.SmallestSize).Open();
        var zeros = new byte[1 << 20];
        for (var megabyte = 0; megabyte < 64; megabyte++)
        {
            stream.Write(zeros);
        }
    })));

    /// <summary>An archive under another name is no text and no photo.</summary>
    [Fact]
    public void AnArchiveWithin_IsTold()
    {
        Sound("out");
        File.WriteAllBytes(book.In("out", "recipes", "rolls.yaml"), "PK\u0003\u0004rest"u8.ToArray());
        Assert.Contains("import-nested", Kinds("out"));
    }

    [Fact]
    public void WhatIsNoArchive_OrNotThere_IsTold()
    {
        File.WriteAllText(book.In("torn.zip"), "PK\u0003\u0004 and no end");
        Assert.Equal(["import-no-archive"], Kinds("torn.zip"));
        Assert.Equal(["import-missing"], Kinds("nowhere"));
    }

    [Theory]
    [InlineData("papers.csv", "recipe,rolls", "recipe,\"rolls", "import-line-shape")]
    [InlineData("papers.csv", "recipe,rolls", "spell,rolls", "import-row-refused")]
    [InlineData("papers.csv", "recipe,rolls,", "recipe,../rolls,", "import-line-value")]
    [InlineData("papers.csv", ".yaml,3,", ".yaml,none,", "import-line-value")]
    [InlineData("papers.csv", ".yaml,3,", ".yaml,99,", "import-line-unknown")]
    [InlineData("papers.csv", "recipes/rolls.yaml", "../../../../etc/passwd", "import-file-missing")]
    [InlineData("states.jsonl", "\"text\":\"", "\"text\":\"not ", "import-text-differs")]
    [InlineData("states.jsonl", "{\"paper\"", "{\"paperr\"", "import-line-shape")]
    [InlineData("states.jsonl", "\"before\":1", "\"before\":7", "import-line-unknown")]
    [InlineData("states.jsonl", "2026-11-26T12", "yesterday T12", "import-flaw")]
    [InlineData("recipes/rolls.yaml", "Rolls", "Rools", "import-file-differs")]
    [InlineData("book.json", "1", "2", "import-newer")]
    public void AFileThatWasChanged_IsTold(string file, string was, string becomes, string kind)
    {
        Sound("out");
        var text = File.ReadAllText(book.In("out", file));
        Assert.Contains(was, text, StringComparison.Ordinal);
        File.WriteAllText(book.In("out", file), text.Replace(was, becomes, StringComparison.Ordinal));
        Assert.Contains(kind, Kinds("out"));
    }

    [Fact]
    public void APhotoThatIsNone_IsTold()
    {
        using (var rich = AuthorsBook.Open(book.In("rich.db"), book.Clock))
        {
            RichBook.Fill(rich);
            rich.Export(book.In("out"));
        }

        var photo = Assert.Single(Directory.EnumerateFiles(book.In("out", "photos")));
        File.WriteAllText(photo, "<svg onload=\"alert(1)\"/>");
        Assert.Contains("import-no-photo", Kinds("out"));
    }

    /// <summary>What is wrong in one place does not hide what is wrong in another.</summary>
    [Fact]
    public void AllFaults_AreToldAtOnce()
    {
        var kinds = Kinds(Archive(archive =>
        {
            Put(archive, "../a.yaml", "x");
            Put(archive, "b.zip", "x");
            Put(archive, "run.sh", "x");
            Put(archive, "recipes/rolls.yaml", "x");
        }));
        Assert.Equal(["import-name-leads-out", "import-nested", "import-stranger", "import-name-twice"], kinds);
    }

    /// <summary>An archive of nothing but faults is told in part, and counted.</summary>
    [Fact]
    public void ManyFaults_AreCounted()
    {
        var kinds = Kinds(Archive(archive =>
        {
            for (var number = 0; number < 300; number++)
            {
                Put(archive, $"stranger-{number}", "x");
            }
        }));
        Assert.Equal(41, kinds.Length);
        Assert.Equal("import-more", kinds[^1]);
    }

    /// <summary>An export that is sound, with more put into it.</summary>
    private string Archive(Action<ZipArchive> spoil)
    {
        Sound("hostile.zip");
        using (var archive = ZipFile.Open(book.In("hostile.zip"), ZipArchiveMode.Update))
        {
            spoil(archive);
        }

        return "hostile.zip";
    }

    private void Sound(string name)
    {
        using var open = AuthorsBook.Open(book.In("source.db"), book.Clock);
        TestBook.Fill(open, 2);
        open.Export(book.In(name));
    }

    private string[] Kinds(string name)
    {
        using var open = book.Open();
        var answer = open.Import(book.In(name), ImportedPhotos.Look);
        Assert.False(answer.Done);
        Assert.Empty(open.Papers.All(PaperSort.Recipe));
        Assert.DoesNotContain(Directory.EnumerateFiles(book.Folder), file => file.Contains("unfinished", StringComparison.Ordinal));
        return [.. answer.Faults.Select(fault => fault.Kind)];
    }

    private static void Put(ZipArchive archive, string name, string text)
    {
        using var stream = archive.CreateEntry(name).Open();
        stream.Write(Encoding.UTF8.GetBytes(text));
    }
}
