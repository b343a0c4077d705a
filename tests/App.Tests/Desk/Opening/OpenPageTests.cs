using System.Net;
using System.Text;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Tests.Desk.Shelf;
using Microsoft.Data.Sqlite;

namespace Doughwright.App.Tests.Desk.Opening;

/// <summary>What comes of giving a text to the desk: it stands in the book as it was, or nothing of it is lost.</summary>
public class OpenPageTests
{
    private static readonly byte[] Rolls = File.ReadAllBytes(House.PotatoRolls);
    private static readonly string Faulty = File.ReadAllText(House.Text("potato-rolls-twelve-faults.yaml"));

    [Fact]
    public async Task File_StandsInTheBook_ByteForByte()
    {
        using var scratch = new Scratch();
        await using var desk = await LiveDesk.On(scratch.Data);
        var bytes = Encoding.UTF8.GetBytes("\ufeff" + Encoding.UTF8.GetString(Rolls).ReplaceLineEndings("\r\n") + "# Größe\r\n");
        var answer = await desk.Send(fileName: "whatever.yaml", file: bytes);
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        Assert.Equal("/recipes/potato-rolls", answer.Location);
        Assert.Equal(bytes, scratch.Folder.Recipe("potato-rolls"));
        Assert.Equal(["potato-rolls"], scratch.Folder.Recipes);
    }

    [Fact]
    public async Task PastedText_LiesThereAsItWasTyped()
    {
        using var scratch = new Scratch();
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await desk.Send(Encoding.UTF8.GetString(Rolls));
        Assert.Equal("/recipes/potato-rolls", answer.Location);
        Assert.Equal(Rolls, scratch.Folder.Recipe("potato-rolls"));
    }

    [Fact]
    public async Task SameBytes_LeadToTheirPage_WithoutASecondCopy()
    {
        using var scratch = new Scratch().Put("mine", Encoding.UTF8.GetString(Rolls));
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Equal("/recipes/mine", (await desk.Send(fileName: "x.yaml", file: Rolls)).Location);
        Assert.Equal(["mine"], scratch.Folder.Recipes);
    }

    [Fact]
    public async Task OtherTextOfTheSameTitle_GetsANumber()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Equal("/recipes/potato-rolls-2", (await desk.Send(fileName: "x.yaml", file: [.. Rolls, (byte)'\n'])).Location);
        Assert.Equal(Rolls, scratch.Folder.Recipe("potato-rolls"));
    }

    [Fact]
    public async Task TitleAndFileName_NeverLeadOutOfTheFolder()
    {
        using var scratch = new Scratch();
        await using var desk = await LiveDesk.On(scratch.Data);
        var text = Encoding.UTF8.GetString(Rolls).Replace("title: Potato rolls", "title: \"../../../tmp/x\"", StringComparison.Ordinal);
        var answer = await desk.Send(fileName: "../../../../etc/passwd.yaml", file: Encoding.UTF8.GetBytes(text));
        Assert.Equal("/recipes/tmp-x", answer.Location);
        Assert.Equal(["tmp-x"], scratch.Folder.Recipes);
        Assert.Empty(Directory.EnumerateFileSystemEntries(scratch.Data.Recipes));
    }

    [Fact]
    public async Task LineThatIsNotUnderstood_StoresNothing_AndLosesNothing()
    {
        using var scratch = new Scratch();
        await using var desk = await LiveDesk.On(scratch.Data);
        foreach (var answer in new[] { await desk.Send(Faulty), await desk.Send(fileName: "x.yaml", file: Encoding.UTF8.GetBytes(Faulty)), await desk.Send("\n\n" + Faulty + "\n\n") })
        {
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
            Assert.Null(answer.Location);
            Assert.Empty(scratch.Folder.Recipes);
            Assert.Equal(Faulty.Trim(), answer.Field.Trim());
        }

        Assert.Equal("\n\n" + Faulty + "\n\n", (await desk.Send("\n\n" + Faulty + "\n\n")).Field);
    }

    /// <summary>Line, quoted line and caret, message and way out: all of them, as the command line prints them.</summary>
    [Fact]
    public async Task Findings_AreThoseOfTheCommandLine()
    {
        using var scratch = new Scratch();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = (await desk.Send(Faulty)).Page;
        var printed = Run.Of("findings", House.Text("potato-rolls-twelve-faults.yaml")).Output;
        var shown = page.QuerySelectorAll(".finds > li");
        Assert.Equal(13, shown.Length);
        foreach (var finding in shown)
        {
            Assert.Contains(finding.QuerySelector(".kind")!.TextContent, printed, StringComparison.Ordinal);
            var quote = finding.QuerySelector("pre")!;
            quote.QuerySelector("br")!.Replace(page.CreateTextNode("\n"));
            Assert.Contains(quote.TextContent, printed, StringComparison.Ordinal);
            Assert.All(finding.QuerySelectorAll("p").Skip(1), words => Assert.Contains(OneLine(words.TextContent), OneLine(printed), StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("nothing")]
    [InlineData("empty")]
    [InlineData("binary")]
    [InlineData("utf16")]
    [InlineData("latin1")]
    [InlineData("large")]
    public async Task WhatCannotBeRead_IsSaid_AndNotStored(string what)
    {
        var (bytes, said) = what switch
        {
            "nothing" => (null, "Neither a file nor a text"),
            "empty" => (Array.Empty<byte>(), "Nothing is written in it: x.yaml"),
            "binary" => ([1, (byte)'\n', 2, 0, 3], "byte 4, in line 2"),
            "utf16" => (Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("title: x")).ToArray(), "UTF-16"),
            "latin1" => ([.. Rolls, 0xe4, (byte)'\n'], "not UTF-8"),
            _ => (new byte[TextFolder.LargestText + 1], "1,048,577 bytes"),
        };
        using var scratch = new Scratch();
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await desk.Send(fileName: bytes is null ? "" : "x.yaml", file: bytes);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(said, answer.Words, StringComparison.Ordinal);
        Assert.Empty(scratch.Folder.Recipes);
    }

    [Fact]
    public async Task LargestText_IsRead()
    {
        using var scratch = new Scratch();
        await using var desk = await LiveDesk.On(scratch.Data);
        var comment = Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("# " + new string('x', 77) + "\n", 13000)));
        var bytes = Rolls.Concat(comment).Take(TextFolder.LargestText).ToArray();
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(fileName: "x.yaml", file: bytes)).Status);
        Assert.Equal(bytes, scratch.Folder.Recipe("potato-rolls"));
    }

    [Fact]
    public async Task FileAndOtherText_AreNotMixedUp()
    {
        using var scratch = new Scratch();
        await using var desk = await LiveDesk.On(scratch.Data);
        var both = await desk.Send("typed by hand", "x.yaml", Rolls);
        Assert.Contains("together", both.Words, StringComparison.Ordinal);
        Assert.Equal("typed by hand", both.Field);
        Assert.Empty(scratch.Folder.Recipes);

        // The text that the page itself put into the field does not stand in the way of a mended file.
        var refused = await desk.Send(Faulty);
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(refused.Field, "x.yaml", Rolls, refused.Page)).Status);
    }

    [Fact]
    public async Task KitchenText_GoesToTheKitchens()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var text = File.ReadAllText(House.PathTo("demo", "kitchens", "mountain.yaml")) + "# mine\n";
        Assert.Equal("/?kitchen=kestrel-cottage-heated", (await desk.Send(text)).Location);
        Assert.Equal(text, Encoding.UTF8.GetString(scratch.Folder.Kitchen("kestrel-cottage-heated")!));
        var refused = await desk.Send(text.Replace("air:", "aer:", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("aer", refused.Page.QuerySelector(".finds")!.TextContent, StringComparison.Ordinal);

        // Another height in place of one that cannot be would be a kitchen that nobody has.
        var states = scratch.Folder.Kitchens.Count;
        var high = await desk.Send(text.Replace("altitude: 1200 m", "altitude: 9000 m", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, high.Status);
        Assert.Contains("9,000 m", high.Page.QuerySelector(".finds")!.TextContent.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.Contains("9000 m", high.Field, StringComparison.Ordinal);
        Assert.Equal(states, scratch.Folder.Kitchens.Count);
    }

    [Fact]
    public async Task BookThatCannotBeWritten_IsSaid_AndTheTextStays()
    {
        using var scratch = new Scratch();
        await using var desk = await LiveDesk.On(scratch.Data);
        using var other = new SqliteConnection($"Data Source={scratch.Data.Book};Pooling=False");
        other.Open();
        using var held = other.BeginTransaction(deferred: false);
        var answer = await desk.Send(Encoding.UTF8.GetString(Rolls));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("could not be written", answer.Words, StringComparison.Ordinal);
        Assert.Equal(Encoding.UTF8.GetString(Rolls), answer.Field);
    }

    [Fact]
    public async Task TextOfTheFolder_IsShownWithItsFindings()
    {
        using var scratch = new Scratch().Put("faults", Faulty).Put("good", Encoding.UTF8.GetString(Rolls));
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/open?name=faults");
        Assert.Equal("faults", page.QuerySelector("h1")!.TextContent);
        Assert.Equal(13, page.QuerySelectorAll(".finds > li").Length);
        Assert.Contains(scratch.Folder.RecipeTexts.FileOf("faults"), page.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Every line of it is understood", (await desk.Page("/open?name=good")).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../recipes/good")]
    [InlineData("nothing")]
    public async Task NameThatIsNotThere_IsSaid(string name)
    {
        using var scratch = new Scratch().Put("good", Encoding.UTF8.GetString(Rolls));
        await using var desk = await LiveDesk.On(scratch.Data);
        using var answer = await desk.Get("/open?name=" + Uri.EscapeDataString(name));
        Assert.Contains(name, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task FormWithoutItsToken_ChangesNothing()
    {
        using var scratch = new Scratch();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/open");
        page.QuerySelector("input[name=__RequestVerificationToken]")!.Remove();
        Assert.Equal(HttpStatusCode.BadRequest, (await desk.Send(Encoding.UTF8.GetString(Rolls), from: page)).Status);
        Assert.Empty(scratch.Folder.Recipes);
    }

    private static string OneLine(string text) => string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
