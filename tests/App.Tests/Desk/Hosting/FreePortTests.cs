using System.Net;
using System.Net.Sockets;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Hosting;

public class FreePortTests
{
    [Fact]
    public async Task Start_OnAPortThatIsTaken_TakesTheNext()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var folder = Directory.CreateTempSubdirectory("desk-");
        var ports = new Queue<int>([((IPEndPoint)taken.LocalEndpoint).Port, .. Enumerable.Range(0, 10).Select(_ => FreePort.Find())]);
        var (desk, port) = await FreePort.Start(port => DeskHost.Build(port, Shelves.At(new(folder.FullName)), Words.Shipped), ports.Dequeue);
        await using (desk)
        {
            Assert.NotEqual(((IPEndPoint)taken.LocalEndpoint).Port, port);
            using var client = new HttpClient();
            using var answer = await client.GetAsync($"http://127.0.0.1:{port}/look.css", TestContext.Current.CancellationToken);
            Assert.NotEqual(HttpStatusCode.BadRequest, answer.StatusCode);
        }

        Shelves.Remove(new(folder.FullName));
    }
}
