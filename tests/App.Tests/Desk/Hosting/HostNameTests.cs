namespace Doughwright.App.Tests.Desk.Hosting;

/// <summary>The desk answers under its own names only: a name that someone points at this machine is another page's name.</summary>
public class HostNameTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    [Theory]
    [InlineData("127.0.0.1:PORT")]
    [InlineData("localhost:PORT")]
    [InlineData("LOCALHOST:PORT")]
    public async Task OwnNames_AreAnswered(string host) => Assert.Equal(200, await Status(host));

    [Theory]
    [InlineData("evil.example")]
    [InlineData("evil.example:PORT")]
    [InlineData("127.0.0.1.evil.example:PORT")]
    [InlineData("localhost.evil.example:PORT")]
    [InlineData("localhost.:PORT")]
    [InlineData("127.0.0.1.:PORT")]
    [InlineData("127.1:PORT")]
    [InlineData("2130706433:PORT")]
    [InlineData("0.0.0.0:PORT")]
    [InlineData("[::1]:PORT")]
    [InlineData("localhost")]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.1:1")]
    [InlineData("user@127.0.0.1:PORT")]
    [InlineData("127.0.0.1:PORT, evil.example")]
    [InlineData("")]
    public async Task OtherNames_AreRefused(string host) => Assert.Equal(400, await Status(host));

    [Fact]
    public async Task NoName_IsRefused() => Assert.Equal(400, StatusOf(await desk.Raw("GET / HTTP/1.1\r\nConnection: close\r\n\r\n")));

    [Fact]
    public async Task TwoNames_AreRefused() =>
        Assert.Equal(400, StatusOf(await desk.Raw($"GET / HTTP/1.1\r\nHost: {desk.Authority}\r\nHost: evil.example\r\nConnection: close\r\n\r\n")));

    [Fact]
    public async Task NameInTheAddressLine_DoesNotStandInForTheHost() =>
        Assert.Equal(400, StatusOf(await desk.Raw($"GET http://evil.example/ HTTP/1.1\r\nHost: {desk.Authority}\r\nConnection: close\r\n\r\n")));

    [Theory]
    [InlineData("X-Forwarded-Host")]
    [InlineData("Forwarded")]
    [InlineData("X-Original-Host")]
    public async Task ForwardedName_ChangesNothing(string header)
    {
        var answer = await desk.Raw($"GET / HTTP/1.1\r\nHost: evil.example\r\n{header}: {desk.Authority}\r\nConnection: close\r\n\r\n");
        Assert.Equal(400, StatusOf(answer));
    }

    [Fact]
    public async Task Refusal_SaysWhereTheDeskAnswers()
    {
        var answer = await desk.Raw("GET / HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n");
        Assert.Contains($"{desk.Origin}/", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("evil.example", answer, StringComparison.Ordinal);
    }

    private async Task<int> Status(string host) =>
        StatusOf(await desk.Raw($"GET / HTTP/1.1\r\nHost: {host.Replace("PORT", $"{desk.Port}", StringComparison.Ordinal)}\r\nConnection: close\r\n\r\n"));

    private static int StatusOf(string answer) =>
        answer.StartsWith("HTTP/1.1 ", StringComparison.Ordinal) ? int.Parse(answer.AsSpan(9, 3), System.Globalization.CultureInfo.InvariantCulture) : 0;
}
