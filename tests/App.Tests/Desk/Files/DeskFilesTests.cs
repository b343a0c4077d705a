using System.Net;
using Doughwright.App.Tests.Desk.Shelf;

namespace Doughwright.App.Tests.Desk.Files;

/// <summary>What the desk gives as files is what the command line writes, byte by byte, and nothing in it runs.</summary>
public sealed class DeskFilesTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("potato-rolls", "?kitchen=mountain&measures=us", "--kitchen", "mountain", "--measures", "us")]
    [InlineData("hearth-loaf", "")]
    public async Task PageOfTheDesk_IsThePageOfTheCommand(string recipe, string query, params string[] options)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var folder = Path.Join(scratch.Data.Root, "out");
        Assert.Equal(0, Run(["page", scratch.Folder.RecipeTexts.FileOf(recipe), .. options, "--out", folder]));
        using var answer = await desk.Get($"/recipes/{recipe}/page/file{query}");
        Assert.Equal(await File.ReadAllBytesAsync(Assert.Single(Directory.GetFiles(folder)), Stop), await answer.Content.ReadAsByteArrayAsync(Stop));
    }

    [Fact]
    public async Task PageForReaders_StandsInsideTheDesk_UnderAPolicyOfItsOwn()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        using var answer = await desk.Get("/recipes/potato-rolls/page/file");
        var policy = answer.Headers.GetValues("Content-Security-Policy").Single();
        Assert.StartsWith("default-src 'none'; style-src 'sha256-", policy, StringComparison.Ordinal);
        Assert.EndsWith("frame-ancestors 'self'; sandbox", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script-src", policy, StringComparison.Ordinal);
        Assert.Equal("SAMEORIGIN", answer.Headers.GetValues("X-Frame-Options").Single());
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        // The policy of the answer allows the same style as the file's own.
        Assert.Contains(policy.Split(';')[1].Trim(), WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Stop)), StringComparison.Ordinal);
        Assert.Null(answer.Content.Headers.ContentDisposition);
        using var saved = await desk.Get("/recipes/potato-rolls/page/file?save=1");
        Assert.Equal("potato-rolls.html", saved.Content.Headers.ContentDisposition!.FileName);
        using var around = await desk.Get("/recipes/potato-rolls/page");
        Assert.Equal("DENY", around.Headers.GetValues("X-Frame-Options").Single());
    }

    [Fact]
    public async Task Preview_HoldsThePage_WithItsFindings_AndTheCommandThatWritesIt()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/recipes/potato-rolls/page?kitchen=mountain&measures=us");
        var frame = page.QuerySelector("iframe")!;
        Assert.Equal("/recipes/potato-rolls/page/file?kitchen=mountain&measures=us", frame.GetAttribute("src"));
        Assert.Equal("", frame.GetAttribute("sandbox"));
        Assert.NotEmpty(frame.GetAttribute("title")!);
        Assert.NotEmpty(page.QuerySelectorAll(".finds > li"));
        Assert.Contains("page", page.QuerySelector(".same code")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("potato-rolls.html", page.QuerySelector("a[download]")!.GetAttribute("download"));
        Assert.Equal("/recipes/potato-rolls/page?kitchen=mountain", (await desk.Page("/recipes/potato-rolls?kitchen=mountain&dough=26C&free=potato,scald")).QuerySelector(".head a[href$='/page?kitchen=mountain']")!.GetAttribute("href"));
    }

    [Fact]
    public async Task WhatAPageIsNotAskedFor_IsRefused_AndTheRestUsed()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/recipes/potato-rolls/page?kitchen=mountain&dough=26C&air=900C");
        Assert.Equal(2, page.QuerySelectorAll(".refusals li").Length);
        Assert.Equal("/recipes/potato-rolls/page/file?kitchen=mountain", page.QuerySelector("iframe")!.GetAttribute("src"));
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get("/recipes/nobody/page")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get("/recipes/nobody/page/file")).StatusCode);
    }

    [Fact]
    public async Task HostileTitle_IsText_InTheFileAndInItsName()
    {
        var text = (await File.ReadAllTextAsync(House.PotatoRolls, Stop)).Replace("title: Potato rolls", "title: \"<script>alert(1)</script> \\\"x\\\" ../../etc\"", StringComparison.Ordinal);
        using var scratch = Scratch.WithTheShipped().Put("hostile", text);
        await using var desk = await LiveDesk.On(scratch.Data);
        using var saved = await desk.Get("/recipes/hostile/page/file?save=1");
        Assert.DoesNotContain("<script>alert", await saved.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        Assert.DoesNotContain('/', saved.Content.Headers.ContentDisposition!.FileName!);
        var page = await desk.Page("/recipes/hostile/page");
        Assert.DoesNotContain(page.Scripts, script => script.Text.Contains("alert", StringComparison.Ordinal));
        using var picture = await desk.Get("/recipes/hostile/picture?of=strip&as=svg");
        Assert.DoesNotContain("<script", await picture.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("of=strip&as=svg&kitchen=mountain&air=17C", "strip.svg", "--of", "strip", "--kitchen", "mountain", "--air", "17C")]
    [InlineData("of=rise&step=bulk&as=png&kitchen=mountain&dough=26C&free=potato,scald", "rise-bulk.png", "--of", "rise", "--step", "bulk", "--kitchen", "mountain", "--dough", "26C", "--free", "potato,scald")]
    [InlineData("of=balance&as=svg&measures=us", "balance.svg", "--of", "balance", "--measures", "us")]
    public async Task PictureOfTheDesk_IsThePictureOfTheCommand(string query, string file, params string[] options)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var written = Path.Join(scratch.Data.Root, file);
        Assert.Equal(0, Run(["picture", scratch.Folder.RecipeTexts.FileOf("potato-rolls"), .. options, "--out", written]));
        using var answer = await desk.Get("/recipes/potato-rolls/picture?" + query);
        Assert.Equal(await File.ReadAllBytesAsync(written, Stop), await answer.Content.ReadAsByteArrayAsync(Stop));
        Assert.Equal(file.EndsWith(".png", StringComparison.Ordinal) ? "image/png" : "image/svg+xml", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("potato-rolls-" + file, answer.Content.Headers.ContentDisposition!.FileName);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition.DispositionType);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
    }

    [Theory]
    [InlineData("of=rse", "strip, tall, rise, heat, balance, bake and place")]
    [InlineData("of=rise&step=mix", "bulk and proof")]
    [InlineData("of=strip&air=900C", "900")]
    [InlineData("of=strip&width=7", "160")]
    [InlineData("of=strip&nothing=7", "nothing")]
    public async Task PictureThatCannotBe_IsRefusedInWords(string query, string said)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        using var answer = await desk.Get("/recipes/potato-rolls/picture?" + query);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal("text/plain", answer.Content.Headers.ContentType!.MediaType);
        Assert.Contains(said, await answer.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get("/recipes/nobody/picture")).StatusCode);
    }

    [Fact]
    public async Task EveryPictureOfAPage_CanBeSaved_AsItIsSet()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var links = (await desk.Page("/recipes/potato-rolls?kitchen=mountain")).QuerySelectorAll(".saves a").Select(link => link.GetAttribute("href")!).ToArray();
        Assert.True(links.Length >= 10, $"{links.Length} links");
        Assert.All(links, link => Assert.Contains("kitchen=mountain", link, StringComparison.Ordinal));
        foreach (var link in links.Where(link => link.Contains("as=svg", StringComparison.Ordinal)))
        {
            using var answer = await desk.Get(link);
            Assert.True(answer.IsSuccessStatusCode, link);
        }
    }

    private static int Run(string[] arguments) => Cli.Run(arguments, Stream.Null, TextWriter.Null, TextWriter.Null);
}
