using System.Net.WebSockets;

namespace Doughwright.App.Tests.Desk.Hosting;

/// <summary>What changes something or opens a circuit comes from a page of the desk, or does not come in.</summary>
public class OriginTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private static CancellationToken Ends => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(null)]
    [InlineData("null")]
    [InlineData("http://evil.example")]
    [InlineData("https://127.0.0.1:PORT")]
    [InlineData("http://127.0.0.1:1")]
    [InlineData("http://127.0.0.1")]
    [InlineData("http://localhost:PORT")]
    [InlineData("http://127.0.0.1:PORT.evil.example")]
    public async Task Circuit_OfAnotherOrigin_IsRefused(string? origin) => Assert.Equal(403, await OpenCircuit(origin));

    [Fact]
    public async Task Circuit_OfTheDesk_Opens() => Assert.Equal(101, await OpenCircuit(desk.Origin));

    [Fact]
    public void Pages_AreFound() => Assert.Superset(new HashSet<string> { "/", "/book", "/new", "/recipes/potato-rolls/states", "/recipes/potato-rolls/write" }, EveryAddress.All().ToHashSet());

    [Theory]
    [InlineData("/_blazor/negotiate?negotiateVersion=1")]
    [InlineData("/_blazor/disconnect")]
    [ClassData(typeof(EveryAddress))]
    public async Task Post_OfAnotherOrigin_IsRefused(string path)
    {
        var before = desk.Picture();
        foreach (var origin in new[] { null, "null", "http://evil.example", "http://127.0.0.1:1" })
        {
            using var answer = await desk.Send(HttpMethod.Post, path, Form(), origin is null ? [] : [("Origin", origin)]);
            Assert.Equal(403, (int)answer.StatusCode);
        }

        Assert.Equal(before, desk.Picture());
    }

    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    [InlineData("none")]
    [InlineData("nonsense")]
    public async Task Post_ThatTheBrowserCallsForeign_IsRefused_WhateverItsOrigin(string site)
    {
        using var answer = await desk.Send(HttpMethod.Post, "/", Form(), ("Origin", desk.Origin), ("Sec-Fetch-Site", site));
        Assert.Equal(site == "none" ? 400 : 403, (int)answer.StatusCode);
    }

    [Theory]
    [ClassData(typeof(EveryAddress))]
    public async Task Post_WithoutToken_IsRefused_AndChangesNothing(string path)
    {
        var before = desk.Picture();
        using var answer = await desk.Send(HttpMethod.Post, path, Form(), ("Origin", desk.Origin));
        Assert.InRange((int)answer.StatusCode, 400, 499);
        Assert.Equal(before, desk.Picture());
    }

    [Theory]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("PATCH")]
    [InlineData("TRACE")]
    [InlineData("PROPFIND")]
    public async Task OtherMethods_AreRefused(string method)
    {
        using var foreign = await desk.Send(new HttpMethod(method), "/");
        Assert.Equal(403, (int)foreign.StatusCode);
        using var own = await desk.Send(new HttpMethod(method), "/", ("Origin", desk.Origin));
        Assert.InRange((int)own.StatusCode, 400, 499);
    }

    [Theory]
    [InlineData("X-HTTP-Method-Override")]
    [InlineData("X-HTTP-Method")]
    [InlineData("X-Method-Override")]
    public async Task MethodInAHeader_ChangesNothing(string header)
    {
        var before = desk.Picture();
        using var answer = await desk.Send(HttpMethod.Get, "/", (header, "POST"));
        Assert.Equal(200, (int)answer.StatusCode);
        Assert.Equal(before, desk.Picture());
    }

    [Theory]
    [InlineData("no-cors", "image")]
    [InlineData("no-cors", "script")]
    [InlineData("cors", "empty")]
    [InlineData("navigate", "iframe")]
    public async Task OtherPage_CannotLookAtTheDesk(string mode, string destination)
    {
        using var answer = await desk.Send(HttpMethod.Get, "/", ("Sec-Fetch-Site", "cross-site"), ("Sec-Fetch-Mode", mode), ("Sec-Fetch-Dest", destination));
        Assert.Equal(403, (int)answer.StatusCode);
    }

    [Fact]
    public async Task LinkFromAnotherPage_LeadsToTheDesk()
    {
        using var answer = await desk.Send(
            HttpMethod.Get, "/", ("Sec-Fetch-Site", "cross-site"), ("Sec-Fetch-Mode", "navigate"), ("Sec-Fetch-Dest", "document"));
        Assert.Equal(200, (int)answer.StatusCode);
        Assert.DoesNotContain("Access-Control-Allow-Origin", answer.Headers.Select(header => header.Key));
    }

    private static FormUrlEncodedContent Form() => new([new("text", "doughwright: 1\n"), new("_handler", "open")]);

    /// <summary>Status of the answer to a circuit that is asked for; 101 is an open one.</summary>
    private async Task<int> OpenCircuit(string? origin)
    {
        using var socket = new ClientWebSocket();
        socket.Options.CollectHttpResponseDetails = true;
        if (origin is not null)
        {
            socket.Options.SetRequestHeader("Origin", origin.Replace("PORT", $"{desk.Port}", StringComparison.Ordinal));
        }

        try
        {
            await socket.ConnectAsync(new($"ws://{desk.Authority}/_blazor"), Ends);
        }
        catch (WebSocketException) when (socket.HttpStatusCode != 0)
        {
            return (int)socket.HttpStatusCode;
        }

        return (int)socket.HttpStatusCode;
    }
}
