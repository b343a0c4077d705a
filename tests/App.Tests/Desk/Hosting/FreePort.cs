using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Connections;

namespace Doughwright.App.Tests.Desk.Hosting;

/// <summary>
/// A desk on a free port of this machine. A port that is free is taken by somebody else before the desk listens on it, once in a while: then it
/// is another port's turn.
/// </summary>
internal static class FreePort
{
    private const int Tries = 20;

    public static Task<(WebApplication Desk, int Port)> Start(Func<int, WebApplication> build) => Start(build, Find);

    /// <param name="find">Names a port that is likely to be free.</param>
    public static async Task<(WebApplication Desk, int Port)> Start(Func<int, WebApplication> build, Func<int> find)
    {
        for (var tried = 1; ; tried++)
        {
            var port = find();
            var desk = build(port);
            try
            {
                await desk.StartAsync();
                return (desk, port);
            }
            catch (IOException problem) when (problem.InnerException is AddressInUseException && tried < Tries)
            {
                await desk.DisposeAsync();
            }
        }
    }

    public static int Find()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
