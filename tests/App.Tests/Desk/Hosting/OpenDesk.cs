using System.Net;
using System.Net.Sockets;
using System.Text;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Builder;

namespace Doughwright.App.Tests.Desk.Hosting;

/// <summary>A desk that answers on a free port of this machine, with a folder of its own, for as long as a group of tests runs.</summary>
public sealed class OpenDesk : IAsyncLifetime
{
    /// <summary>A page that always fails, with a message that nobody outside may see.</summary>
    public const string Broken = "/broken";

    public const string SecretOfTheFault = "secret-of-the-fault";

    private readonly string _folder = Directory.CreateTempSubdirectory("desk-").FullName;
    private WebApplication? _desk;

    public int Port { get; private set; }

    public string Authority => $"127.0.0.1:{Port}";

    public string Origin => $"http://{Authority}";

    public string Folder => _folder;

    public HttpClient Client { get; } = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false });

    public async ValueTask InitializeAsync()
    {
        var folder = new DataFolder(_folder);
        (_desk, Port) = await FreePort.Start(port =>
        {
            var desk = DeskHost.Build(port, Shelves.At(folder), Words.Shipped);
            desk.MapGet(Broken, () =>
            {
                throw new InvalidOperationException(SecretOfTheFault);
            });
            return desk;
        });
        Client.BaseAddress = new(Origin);
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        if (_desk is not null)
        {
            await _desk.DisposeAsync();
        }

        Shelves.Remove(new(_folder));
    }

    /// <summary>Every state of the book, to see that nothing changed.</summary>
    public string Picture()
    {
        var shelf = Shelves.At(new(_folder));
        return string.Join('\n', shelf.RecipeTexts.Papers().Concat(shelf.KitchenTexts.Papers()).Select(paper => $"{paper.Name} {paper.State} {paper.Hash}"));
    }

    /// <summary>Sends bytes as they stand and gives the answer as text: for what no client of good manners sends.</summary>
    public async Task<string> Raw(string request, TimeSpan? patience = null)
    {
        using var patienceEnds = new CancellationTokenSource(patience ?? TimeSpan.FromSeconds(10));
        using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        await socket.ConnectAsync(IPAddress.Loopback, Port, patienceEnds.Token);
        await socket.SendAsync(Encoding.Latin1.GetBytes(request), patienceEnds.Token);
        return await ReadToEnd(socket, patienceEnds.Token);
    }

    public static async Task<string> ReadToEnd(Socket socket, CancellationToken patience)
    {
        var text = new StringBuilder();
        var buffer = new byte[16384];
        try
        {
            while (await socket.ReceiveAsync(buffer, patience) is > 0 and var count)
            {
                text.Append(Encoding.Latin1.GetString(buffer, 0, count));
            }
        }
        catch (SocketException)
        {
            // The desk has closed the connection while something was still on the way: what came before counts.
        }

        return text.ToString();
    }

    public Task<HttpResponseMessage> Send(HttpMethod method, string path, params (string Name, string Value)[] headers) => Send(method, path, null, headers);

    public Task<HttpResponseMessage> Send(HttpMethod method, string path, HttpContent? content, params (string Name, string Value)[] headers)
    {
        var request = new HttpRequestMessage(method, path) { Content = content };
        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        return Client.SendAsync(request, TestContext.Current.CancellationToken);
    }
}
