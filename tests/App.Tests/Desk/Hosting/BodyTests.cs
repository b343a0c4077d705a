using System.Net;
using System.Net.Sockets;
using System.Text;
using Doughwright.App.Desk.Hosting;

namespace Doughwright.App.Tests.Desk.Hosting;

/// <summary>Bodies that are too large, too slow or broken, and names that lead out of the folder.</summary>
public class BodyTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    [Fact]
    public async Task TooLargeBody_IsRefusedBeforeItIsRead()
    {
        var answer = await desk.Raw(
            $"POST / HTTP/1.1\r\nHost: {desk.Authority}\r\nOrigin: {desk.Origin}\r\nContent-Type: application/x-www-form-urlencoded\r\n"
            + $"Content-Length: {Guards.LargestForm + 1}\r\nConnection: close\r\n\r\n");
        Assert.StartsWith("HTTP/1.1 413 ", answer, StringComparison.Ordinal);
        Assert.Contains("4 MiB", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task TooLargeBodyInPieces_IsRefused()
    {
        using var content = new StreamContent(new Endless(Guards.LargestForm * 2));
        content.Headers.TryAddWithoutValidation("Content-Type", "application/x-www-form-urlencoded");
        var request = new HttpRequestMessage(HttpMethod.Post, "/") { Content = content };
        request.Headers.TransferEncodingChunked = true;
        request.Headers.TryAddWithoutValidation("Origin", desk.Origin);
        try
        {
            using var answer = await desk.Client.SendAsync(request, TestContext.Current.CancellationToken);
            Assert.InRange((int)answer.StatusCode, 400, 499);
        }
        catch (HttpRequestException closed)
        {
            // Closed while pieces were still being sent.
            Assert.NotNull(closed.InnerException);
        }
    }

    [Fact]
    [Trait("Category", "Slow")]
    public async Task SlowBody_IsCutOff()
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        await socket.ConnectAsync(IPAddress.Loopback, desk.Port, patience.Token);
        var head = $"POST / HTTP/1.1\r\nHost: {desk.Authority}\r\nOrigin: {desk.Origin}\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 100000\r\n\r\na";
        await socket.SendAsync(Encoding.Latin1.GetBytes(head), patience.Token);
        var answer = await OpenDesk.ReadToEnd(socket, patience.Token);
        Assert.StartsWith("HTTP/1.1 4", answer, StringComparison.Ordinal);
        using var still = await desk.Send(HttpMethod.Get, "/");
        Assert.Equal(HttpStatusCode.OK, still.StatusCode);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public async Task SlowHeaders_AreCutOff()
    {
        var answer = await desk.Raw($"GET / HTTP/1.1\r\nHost: {desk.Authority}\r\nX-Slow: ", TimeSpan.FromSeconds(25));
        Assert.True(answer.Length == 0 || answer.StartsWith("HTTP/1.1 408", StringComparison.Ordinal), answer);
    }

    [Theory]
    [InlineData("/..%2f..%2f..%2fetc/passwd")]
    [InlineData("/fonts/../../../../../../etc/passwd")]
    [InlineData("/fonts/%2e%2e/%2e%2e/%2e%2e/doughwright.dll")]
    [InlineData("/fonts/%2e%2e%2f%2e%2e%2fdoughwright.dll")]
    [InlineData("/%5c..%5c..%5cetc%5cpasswd")]
    [InlineData("/doughwright.dll")]
    [InlineData("/doughwright.staticwebassets.endpoints.json")]
    [InlineData("/wwwroot/desk.css")]
    [InlineData("/recipes/%2e%2e%2fkitchens%2fclassroom")]
    [InlineData("/recipes/..%2f..%2fetc%2fpasswd")]
    [InlineData("/recipes/%2fetc%2fpasswd")]
    [InlineData("/recipes/potato-rolls%00")]
    [InlineData("/recipes/potato-rolls.yaml")]
    [InlineData("/recipes/%ff%fe")]
    [InlineData("/%00")]
    [InlineData("//evil.example/")]
    public async Task NamesThatLeadOut_LeadNowhere(string path)
    {
        var answer = await desk.Raw($"GET {path} HTTP/1.1\r\nHost: {desk.Authority}\r\nConnection: close\r\n\r\n");
        Assert.Matches("^HTTP/1.1 (400|404) ", answer);
        Assert.DoesNotContain("root:", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("Location:", answer, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(desk.Folder, answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("GET / HTTP/9.9")]
    [InlineData("GET  / HTTP/1.1")]
    [InlineData("GET / HTTP/1.1\r\nBad Header: 1")]
    public async Task BrokenRequests_AreRefused(string head)
    {
        var answer = await desk.Raw($"{head}\r\nHost: {desk.Authority}\r\nConnection: close\r\n\r\n");
        Assert.Matches("^(HTTP/1.1 (4|505)|$)", answer);
    }

    [Fact]
    public async Task VeryLongAddress_IsRefused()
    {
        var answer = await desk.Raw($"GET /{new string('a', 20_000)} HTTP/1.1\r\nHost: {desk.Authority}\r\nConnection: close\r\n\r\n");
        Assert.Matches("^HTTP/1.1 4", answer);
    }

    /// <summary>So many bytes, all the same letter.</summary>
    private sealed class Endless(long length) : Stream
    {
        private long _left = length;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var taken = (int)Math.Min(count, _left);
            buffer.AsSpan(offset, taken).Fill((byte)'a');
            _left -= taken;
            return taken;
        }

        public override void Flush() => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
