using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Runtime.InteropServices;

namespace Doughwright.Bench;

/// <summary>
/// From the start of the program to the first byte of its first page, beside the plain template of the same kind of program, published the same
/// way and started in turn.
/// </summary>
internal static class DeskStart
{
    private const int Starts = 15;

    public static async Task<int> Run()
    {
        var work = Directory.CreateTempSubdirectory("desk-start-").FullName;
        try
        {
            var template = Path.Join(work, "plain");
            Ran("dotnet", "new", "blazor", "--interactivity", "Server", "--no-https", "--name", "Plain", "--output", template);
            var plain = Publish(template, Path.Join(work, "plain-program"), "Plain.dll");
            var desk = Publish(Path.Join(Root(), "src", "Doughwright.App"), Path.Join(work, "desk-program"), "doughwright.dll");
            string[] ofDesk = [desk, "--no-browser", "--folder", Path.Join(work, "folder"), "--port"];
            var (took, plainTook) = (new List<double>(), new List<double>());
            for (var start = 0; start < Starts; start++)
            {
                plainTook.Add(await Start(port => new("dotnet", [plain]) { Environment = { ["ASPNETCORE_URLS"] = $"http://127.0.0.1:{port}" } }));
                took.Add(await Start(port => new("dotnet", [.. ofDesk, $"{port}"])));
            }

            var (median, plainMedian) = (Median(took), Median(plainTook));
            Console.WriteLine($"start to first byte, median of {Starts}: desk {median:0} ms, plain template {plainMedian:0} ms, ratio {median / plainMedian:0.00}");
            return 0;
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }
    }

    internal static string Publish(string project, string into, string program)
    {
        var system = RuntimeInformation.IsOSPlatform(OSPlatform.OSX) ? "osx" : "linux";
        var machine = RuntimeInformation.OSArchitecture == Architecture.Arm64 ? "arm64" : "x64";
        Ran("dotnet", "publish", project, "-c", "Release", "-v", "quiet", "--nologo", "-o", into, "-r", $"{system}-{machine}", "--self-contained", "false",
            "-p:PublishReadyToRun=true", "-p:RestoreLockedMode=false", "-p:NuGetLockFilePath=obj/ahead.lock.json");
        return Path.Join(into, program);
    }

    /// <returns>Milliseconds.</returns>
    private static async Task<double> Start(Func<int, ProcessStartInfo> startOn)
    {
        var port = FreePort();
        var start = startOn(port);
        start.RedirectStandardOutput = true;
        var watch = Stopwatch.StartNew();
        using var program = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start.");
        try
        {
            while (true)
            {
                using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
                try
                {
                    await socket.ConnectAsync(IPAddress.Loopback, port);
                }
                catch (SocketException) when (watch.Elapsed < TimeSpan.FromSeconds(30) && !program.HasExited)
                {
                    await Task.Delay(2);
                    continue;
                }

                await socket.SendAsync(System.Text.Encoding.ASCII.GetBytes($"GET / HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nConnection: close\r\n\r\n"));
                var first = new byte[12];
                await socket.ReceiveAsync(first);
                return System.Text.Encoding.ASCII.GetString(first) == "HTTP/1.1 200"
                    ? watch.Elapsed.TotalMilliseconds
                    : throw new InvalidOperationException("The first page did not come.");
            }
        }
        finally
        {
            program.Kill();
            await program.WaitForExitAsync();
        }
    }

    private static void Ran(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}: {said}");
        }
    }

    internal static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);

    internal static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    internal static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Join(folder.FullName, "Doughwright.slnx")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("The benchmark runs outside the house.");
        }

        return folder.FullName;
    }
}
