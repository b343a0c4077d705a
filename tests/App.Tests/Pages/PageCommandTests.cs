using System.Text.Json;
using Doughwright.App.Commands;

namespace Doughwright.App.Tests.Pages;

/// <summary>page FILE --out DIR writes one file, whole or not at all.</summary>
public sealed class PageCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("pages-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Page_IsWritten_AndNamedAfterItsTitle()
    {
        var run = Run.Of("page", House.PotatoRolls, "--out", folder);
        Assert.Equal(0, run.ExitCode);
        Assert.Equal(["potato-rolls.html"], Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName));
        Assert.Contains(Path.Join(folder, "potato-rolls.html"), run.Output.Replace("\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(Path.Join(folder, "potato-rolls.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_IsMade_AndOurOwnPageIsReplaced()
    {
        var deep = Path.Join(folder, "a", "b");
        Assert.Equal(0, Run.Of("page", House.PotatoRolls, "--out", deep).ExitCode);
        var file = Path.Join(deep, "potato-rolls.html");
        var first = File.ReadAllText(file);
        Assert.Equal(0, Run.Of("page", House.PotatoRolls, "--out", deep, "--measures", "us").ExitCode);
        Assert.NotEqual(first, File.ReadAllText(file));
        Assert.Single(Directory.EnumerateFileSystemEntries(deep));
    }

    [Fact]
    public void FileThatIsNotOurs_IsLeftAlone()
    {
        var file = Path.Join(folder, "potato-rolls.html");
        File.WriteAllText(file, "<p>my own</p>");
        var run = Run.Of("page", House.PotatoRolls, "--out", folder);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("no page that Doughwright made", OneLine(run.Messages), StringComparison.Ordinal);
        Assert.Equal("<p>my own</p>", File.ReadAllText(file));
    }

    [Fact]
    public void FolderThatIsAFile_OrIsNotNamed_IsToldAndNothingIsWritten()
    {
        var file = Path.Join(folder, "file");
        File.WriteAllText(file, "");
        Assert.Contains("is a file", OneLine(Run.Of("page", House.PotatoRolls, "--out", file).Messages), StringComparison.Ordinal);
        var below = Run.Of("page", House.PotatoRolls, "--out", Path.Join(file, "below"));
        Assert.Equal(2, below.ExitCode);
        Assert.Contains("cannot be written", OneLine(below.Messages), StringComparison.Ordinal);
        Assert.Contains("--out", Run.Of("page", House.PotatoRolls).Messages, StringComparison.Ordinal);
        Assert.Equal([file], Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void EverythingWrong_IsToldAtOnce()
    {
        var messages = OneLine(Run.Of("page", "no-such-file.yaml", "--kitchen", "nowhere").Messages);
        Assert.Contains("no-such-file.yaml", messages, StringComparison.Ordinal);
        Assert.Contains("nowhere", messages, StringComparison.Ordinal);
        Assert.Contains("--out", messages, StringComparison.Ordinal);
    }

    [Fact]
    public void TextThatIsNotUnderstood_GivesNoPage()
    {
        Assert.Equal(3, Run.Of("page", House.Text("potato-rolls-twelve-faults.yaml"), "--out", folder).ExitCode);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void Json_SaysWhereAndHowLarge()
    {
        using var json = JsonDocument.Parse(Run.Of("page", House.Demo("hearth-loaf.yaml"), "--out", folder, "--json").Output);
        var file = json.RootElement.GetProperty("file").GetString()!;
        Assert.Equal(new FileInfo(file).Length, json.RootElement.GetProperty("bytes").GetInt64());
        Assert.Equal("Harbour hearth loaf", json.RootElement.GetProperty("title").GetString());
        Assert.NotEmpty(json.RootElement.GetProperty("findings").EnumerateArray());
    }

    [Theory]
    [InlineData("Potato rolls", "potato-rolls.html")]
    [InlineData("../../etc/passwd", "etc-passwd.html")]
    [InlineData("..", "recipe.html")]
    [InlineData("", "recipe.html")]
    [InlineData("CON", "recipe-con.html")]
    [InlineData("Пирог", "пирог.html")]
    [InlineData("a/b\\c:d*e?f\"g<h>i|j", "a-b-c-d-e-f-g-h-i-j.html")]
    public void FileName_IsASlugOfTheTitle(string title, string name) => Assert.Equal(name, PageFile.NameOf(title));

    [Fact]
    public void LongTitle_GivesANameThatFits() => Assert.InRange(System.Text.Encoding.UTF8.GetByteCount(PageFile.NameOf(string.Concat(Enumerable.Repeat("🍞", 300)))), 1, 255);

    /// <summary>Messages are wrapped for a terminal.</summary>
    private static string OneLine(string text) => System.Text.RegularExpressions.Regex.Replace(text, @"\s+", " ");
}
