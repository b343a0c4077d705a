using System.IO.Compression;
using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Launching;

/// <summary>What the shipped desk hands out beside its pages: small where that is possible, and whole.</summary>
public class ShippedFilesTests(House house)
{
    private static CancellationToken Ends => TestContext.Current.CancellationToken;

    [Fact(Timeout = Visit.Patience)]
    public async Task SheetsAndScripts_ComeCompressed_AndKeptForGood()
    {
        using var client = new HttpClient(new SocketsHttpHandler()) { BaseAddress = new(house.Desk.Address) };
        var page = await client.GetStringAsync("/", Ends);
        var files = Regex.Matches(page, @"(?:href|src)=""([^""/]+\.(?:css|js|svg)|_framework/[^""]+\.js)""").Select(match => match.Groups[1].Value).ToList();
        Assert.InRange(files.Count, 5, 20);
        foreach (var file in files)
        {
            var plain = await client.GetByteArrayAsync($"/{file}", Ends);
            using var request = new HttpRequestMessage(HttpMethod.Get, $"/{file}");
            request.Headers.Add("Accept-Encoding", "br, gzip");
            using var answer = await client.SendAsync(request, Ends);
            var sent = await answer.Content.ReadAsByteArrayAsync(Ends);
            Assert.Equal(["br"], answer.Content.Headers.ContentEncoding);
            Assert.True(answer.Headers.CacheControl?.ToString().Contains("immutable", StringComparison.Ordinal), file);
            Assert.True(sent.Length < plain.Length, file);
            using var unpacked = new MemoryStream();
            using var stream = new BrotliStream(new MemoryStream(sent), CompressionMode.Decompress);
            await stream.CopyToAsync(unpacked, Ends);
            Assert.Equal(plain, unpacked.ToArray());
        }
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task Pages_ComeCompressed()
    {
        using var client = new HttpClient { BaseAddress = new(house.Desk.Address) };
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Add("Accept-Encoding", "br, gzip");
        using var answer = await client.SendAsync(request, Ends);
        Assert.Equal(["br"], answer.Content.Headers.ContentEncoding);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task Fonts_AreCompressedAlready()
    {
        using var client = new HttpClient { BaseAddress = new(house.Desk.Address) };
        var sheet = await client.GetStringAsync("/tokens.css", Ends);
        var fonts = Regex.Matches(sheet, @"url\(""([^""]+\.woff2)""\)").Select(match => match.Groups[1].Value).Distinct().ToList();
        Assert.Equal(3, fonts.Count);
        foreach (var font in fonts)
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, $"/{font}");
            request.Headers.Add("Accept-Encoding", "br, gzip");
            using var answer = await client.SendAsync(request, Ends);
            Assert.Empty(answer.Content.Headers.ContentEncoding);
            Assert.Equal("font/woff2", answer.Content.Headers.ContentType?.MediaType);
        }
    }
}
