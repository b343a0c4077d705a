namespace Doughwright.App.Tests.Desk.Hosting;

/// <summary>Every answer carries the headers under which nothing but the desk's own files runs, refusals and faults included.</summary>
public class HeaderTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private string Policy =>
        "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; "
        + $"connect-src 'self' ws://127.0.0.1:{desk.Port} ws://localhost:{desk.Port}; "
        + "object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    [Theory]
    [InlineData("GET", "/", 200)]
    [InlineData("GET", "/tokens.css", 200)]
    [InlineData("GET", "/desk.js", 200)]
    [InlineData("GET", "/typing.js", 200)]
    [InlineData("GET", "/away.js", 200)]
    [InlineData("GET", "/mark.svg", 200)]
    [InlineData("GET", "/fonts/brygada-1918-latin-wght-normal.woff2", 200)]
    [InlineData("GET", "/_framework/blazor.web.js", 200)]
    [InlineData("GET", "/nothing-here", 404)]
    [InlineData("GET", "/fonts/nothing-here.woff2", 404)]
    [InlineData("GET", OpenDesk.Broken, 500)]
    [InlineData("POST", "/", 403)]
    public async Task EveryAnswer_CarriesThem(string method, string path, int status)
    {
        using var answer = await desk.Send(new HttpMethod(method), path);
        Assert.Equal(status, (int)answer.StatusCode);
        AssertHeaders(name => answer.Headers.TryGetValues(name, out var values) ? values : []);
    }

    [Fact]
    public async Task RefusedName_CarriesThem()
    {
        var answer = await desk.Raw("GET / HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n");
        var lines = answer.Split("\r\n\r\n")[0].Split("\r\n").Skip(1).Select(line => line.Split(": ", 2)).ToLookup(pair => pair[0], pair => pair[1]);
        AssertHeaders(name => lines[name]);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/nothing-here")]
    [InlineData("/fonts/nothing-here.woff2")]
    [InlineData(OpenDesk.Broken)]
    public async Task PagesAndRefusals_AreNotKeptByTheBrowser(string path)
    {
        using var answer = await desk.Send(HttpMethod.Get, path);
        Assert.Equal("no-store", answer.Headers.CacheControl?.ToString());
    }

    [Fact]
    public async Task Fonts_AreKeptForAWeek()
    {
        using var answer = await desk.Send(HttpMethod.Get, "/fonts/brygada-1918-latin-wght-normal.woff2");
        Assert.Equal(TimeSpan.FromDays(7), answer.Headers.CacheControl?.MaxAge);
    }

    [Fact]
    public async Task Cookie_IsSeenByNoScript_AndSentFromNoOtherSite()
    {
        using var answer = await desk.Send(HttpMethod.Get, "/");
        if (answer.Headers.TryGetValues("Set-Cookie", out var cookies))
        {
            Assert.All(cookies, cookie =>
            {
                Assert.StartsWith("desk=", cookie, StringComparison.Ordinal);
                Assert.Contains("; httponly", cookie, StringComparison.OrdinalIgnoreCase);
                Assert.Contains("; samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
                Assert.DoesNotContain("domain=", cookie, StringComparison.OrdinalIgnoreCase);
            });
        }
    }

    [Fact]
    public async Task Fault_TellsNothingOfTheInside()
    {
        using var answer = await desk.Send(HttpMethod.Get, OpenDesk.Broken);
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("A fault of ours", page, StringComparison.Ordinal);
        Assert.All(
            [OpenDesk.SecretOfTheFault, "Exception", "   at ", ".cs:", desk.Folder, AppContext.BaseDirectory],
            secret => Assert.DoesNotContain(secret, page, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Page_HasNeitherScriptNorStyleOfItsOwn()
    {
        using var answer = await desk.Send(HttpMethod.Get, "/");
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.DoesNotMatch(@"<script(?![^>]*\bsrc=)|<style|\sstyle=|\son[a-z]+=""|javascript:", page);
    }

    private void AssertHeaders(Func<string, IEnumerable<string>> header)
    {
        Assert.Equal([Policy], header("Content-Security-Policy"));
        Assert.Equal(["nosniff"], header("X-Content-Type-Options"));
        Assert.Equal(["DENY"], header("X-Frame-Options"));
        Assert.Equal(["same-origin"], header("Referrer-Policy"));
        Assert.Equal(["same-origin"], header("Cross-Origin-Opener-Policy"));
        Assert.Equal(["same-origin"], header("Cross-Origin-Resource-Policy"));
        Assert.Empty(header("Server"));
        Assert.Empty(header("X-Powered-By"));
    }
}
