using System.Text.Json;
using SkiaSharp;

namespace Doughwright.App.Tests.Commands;

/// <summary>picture: what is written, what is refused, and that nothing is half written.</summary>
public sealed class PictureCommandTests : IDisposable
{
    private static readonly string Ring = House.Demo("pilot-ring.yaml");

    private readonly string folder = Directory.CreateTempSubdirectory("pictures-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string In(string name) => Path.Join(folder, name);

    private static Run Picture(params string[] arguments) => Run.Of(["picture", Ring, .. arguments]);

    [Theory]
    [InlineData("strip")]
    [InlineData("tall")]
    [InlineData("rise")]
    [InlineData("heat")]
    [InlineData("balance")]
    [InlineData("bake")]
    public void EveryPicture_IsWritten_AsWideAsAsked(string kind)
    {
        var run = Picture("--of", kind, "--out", In("a.png"), "--width", "700", "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Messages));
        using var picture = SKBitmap.Decode(In("a.png"));
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal((700, picture.Height), (picture.Width, json.RootElement.GetProperty("heightPixels").GetInt32()));
        Assert.Equal(new FileInfo(In("a.png")).Length, json.RootElement.GetProperty("bytes").GetInt64());
        Assert.Equal(["a.png"], Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName));
    }

    [Fact]
    public void KitchenAndGround_ChangeThePicture()
    {
        Picture("--out", In("home.svg"));
        Picture("--out", In("summer.svg"), "--kitchen", "summer");
        Picture("--out", In("dark.svg"), "--ground", "dark");
        Assert.Equal(3, new[] { "home.svg", "summer.svg", "dark.svg" }.Select(name => File.ReadAllText(In(name))).Distinct().Count());
    }

    [Fact]
    public void FormIsSaid_ByTheNameOrByTheOption()
    {
        Assert.Equal(0, Picture("--out", In("a.PNG"), "--width", "300").ExitCode);
        Assert.Equal(0, Picture("--out", In("picture"), "--as", "svg").ExitCode);
        Assert.StartsWith("<svg", File.ReadAllText(In("picture")), StringComparison.Ordinal);
        Assert.Equal(2, Picture("--out", In("a.jpg")).ExitCode);
        Assert.False(File.Exists(In("a.jpg")));
    }

    [Fact]
    public void OlderPicture_IsReplaced_AFolderNever()
    {
        File.WriteAllText(In("a.svg"), "old");
        Assert.Equal(0, Picture("--out", In("a.svg")).ExitCode);
        Assert.StartsWith("<svg", File.ReadAllText(In("a.svg")), StringComparison.Ordinal);
        Directory.CreateDirectory(In("b.svg"));
        Assert.Equal(2, Picture("--out", In("b.svg")).ExitCode);
        Assert.True(Directory.Exists(In("b.svg")));
    }

    [Fact]
    public void Recipe_IsNeverWrittenOver()
    {
        File.Copy(Ring, In("ring.yaml"));
        var run = Run.Of("picture", In("ring.yaml"), "--out", Path.Join(folder, ".", "ring.yaml"), "--as", "svg");
        Assert.Equal(2, run.ExitCode);
        Assert.Equal(File.ReadAllText(Ring), File.ReadAllText(In("ring.yaml")));
    }

    [Theory]
    [InlineData("--width", "100")]
    [InlineData("--width", "9000")]
    [InlineData("--width", "1920px")]
    [InlineData("--width", "-5")]
    [InlineData("--ground", "blue")]
    [InlineData("--of", "cake")]
    [InlineData("--as", "gif")]
    [InlineData("--step", "bulk")]
    [InlineData("--kitchen", "moon")]
    [InlineData("--air", "900C")]
    public void WrongValues_AreTwo_AndNothingIsWritten(string option, string value)
    {
        var run = Picture("--out", In("a.svg"), option, value);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.NotEmpty(run.Messages);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void AllFaults_AreToldAtOnce()
    {
        var messages = Picture("--of", "cake", "--width", "7", "--ground", "blue").Messages;
        Assert.All(new[] { "cake", "--width", "blue", "--out" }, word => Assert.Contains(word, messages, StringComparison.Ordinal));
    }

    [Fact]
    public void Step_IsOneThatHasSuchAPicture()
    {
        Assert.Equal(0, Picture("--of", "heat", "--step", "mix", "--out", In("mix.svg")).ExitCode);
        Assert.Equal(0, Picture("--of", "heat", "--step", "butter", "--out", In("butter.svg")).ExitCode);
        Assert.NotEqual(File.ReadAllText(In("mix.svg")), File.ReadAllText(In("butter.svg")));
        var refused = Picture("--of", "rise", "--step", "bake", "--out", In("c.svg"));
        Assert.Equal(2, refused.ExitCode);
        Assert.Contains("bulk", refused.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Place_IsDrawn_AsAskedFor()
    {
        string[] asked = ["--of", "place", "--to", "26C", "--air", "17C"];
        Assert.Equal(0, Picture([.. asked, "--out", In("first.svg")]).ExitCode);
        Assert.Equal(0, Picture([.. asked, "--in", "oven", "--out", In("oven.svg")]).ExitCode);
        Assert.Equal(0, Picture([.. asked, "--in", "oven", "--lamp", "25W", "--out", In("lamp.svg")]).ExitCode);
        Assert.Equal(0, Picture([.. asked, "--step", "proof", "--in", "oven", "--out", In("proof.png"), "--width", "700"]).ExitCode);
        Assert.Equal(3, Directory.EnumerateFiles(folder, "*.svg").Select(File.ReadAllText).Distinct().Count());
        using var picture = SKBitmap.Decode(In("proof.png"));
        Assert.Equal(700, picture.Width);
    }

    /// <summary>A ring on a tray goes into no basin, and a room as warm as asked needs no place: that is said, and nothing is written.</summary>
    [Theory]
    [InlineData("--step", "proof", "--in", "water-bath", "--air", "17C")]
    [InlineData("--air", "26C")]
    public void PlaceThatThereIsNot_IsTold(params string[] more)
    {
        var run = Picture(["--of", "place", "--to", "26C", "--out", In("a.svg"), .. more]);
        Assert.Equal(1, run.ExitCode);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    [Theory]
    [InlineData("--to", "--of", "place")]
    [InlineData("mix", "--of", "place", "--to", "26C", "--step", "mix")]
    [InlineData("cellar", "--of", "place", "--to", "26C", "--in", "cellar")]
    [InlineData("--to", "--of", "rise", "--to", "26C")]
    [InlineData("--open-water", "--open-water")]
    public void PlaceThatIsNotWellAsked_IsRefused(string word, params string[] options)
    {
        var run = Picture([.. options, "--out", In("a.svg")]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(word, run.Messages, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void TooManyPixels_AreRefused_WithTheWidestThatGoes()
    {
        var run = Picture("--of", "tall", "--out", In("a.png"), "--width", "8192");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("widest", run.Messages, StringComparison.Ordinal);
        Assert.False(File.Exists(In("a.png")));
    }

    /// <summary>A dough with an unknown line has no balance: that is a finding, and no empty picture.</summary>
    [Fact]
    public void WhatIsNotKnown_IsNotDrawn()
    {
        var text = File.ReadAllText(Ring).Replace("    sugar: 42 g", "    moon dust: 42 g", StringComparison.Ordinal);
        var run = Run.WithInput(text, "picture", "-", "--of", "heat", "--step", "mix", "--out", In("a.svg"), "--json");
        Assert.Equal(1, run.ExitCode);
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("file").ValueKind);
        Assert.Equal("picture-not-known", json.RootElement.GetProperty("findings")[0].GetProperty("kind").GetString());
        Assert.False(File.Exists(In("a.svg")));
    }

    [Fact]
    public void TextThatIsNotUnderstood_IsThree() =>
        Assert.Equal(3, Run.Of("picture", House.Text("potato-rolls-twelve-faults.yaml"), "--out", In("a.svg")).ExitCode);
}
