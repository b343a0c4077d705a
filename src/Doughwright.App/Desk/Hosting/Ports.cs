using System.Net;
using System.Net.Sockets;

namespace Doughwright.App.Desk.Hosting;

/// <summary>Where the desk answers: on this machine only.</summary>
internal static class Ports
{
    /// <summary>Kept from day to day, so that a link stays good.</summary>
    public const int Usual = 7427;

    private const int Tries = 20;

    /// <summary>The usual port, or the next free one after it; null when none is free.</summary>
    public static int? FirstFree()
    {
        for (var port = Usual; port < Usual + Tries; port++)
        {
            if (IsFree(port))
            {
                return port;
            }
        }

        return null;
    }

    public static bool IsFree(int port)
    {
        try
        {
            using var listener = new TcpListener(IPAddress.Loopback, port);
            listener.Start();
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }
}
