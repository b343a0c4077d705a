using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Doughwright.Browser.Tests.Running;

/// <summary>The desk as a program of its own, as it is shipped, with a folder of its own on a free port.</summary>
internal sealed class RunningDesk : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly Process _process;
    private readonly bool _ownsFolder;
    private readonly List<string> _messages = [];

    private RunningDesk(Process process, int port, string folder, bool ownsFolder)
    {
        (_process, Port, Folder, _ownsFolder) = (process, port, folder, ownsFolder);
    }

    public int Port { get; }

    public string Folder { get; }

    public string Address => $"http://127.0.0.1:{Port}";

    public bool HasEnded => _process.HasExited;

    public int ProcessId => _process.Id;

    /// <summary>Everything said on standard error so far.</summary>
    public string Messages
    {
        get
        {
            lock (_messages)
            {
                return string.Join('\n', _messages);
            }
        }
    }

    public static string Program { get; } = Path.Join(AppContext.BaseDirectory, "desk", "doughwright.dll");

    public static Task<RunningDesk> Open(int? port = null, string? folder = null, params (string Name, string Value)[] environment) =>
        Open(["--no-browser"], port, folder, environment);

    /// <param name="words">Of the command line, beside folder and port.</param>
    public static async Task<RunningDesk> Open(string[] words, int? port, string? folder, (string Name, string Value)[] environment)
    {
        var given = folder ?? Directory.CreateTempSubdirectory("desk-").FullName;
        var at = port ?? FreePort();
        string[] desk = [Environment.ProcessPath!, Program, .. words, "--folder", given, "--port", $"{at}"];
        // A shell lets what it runs in the background ignore Ctrl-C, and that is handed down: the desk is started as a terminal starts it.
        string[] command = OperatingSystem.IsLinux() ? ["env", "--default-signal=INT", .. desk] : desk;
        var start = new ProcessStartInfo(command[0], command[1..])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        var running = new RunningDesk(Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start."), at, given, folder is null);
        await running.Answers();
        return running;
    }

    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    /// <summary>What Ctrl and C do in a terminal. Gives the exit code and how long the end took.</summary>
    public async Task<(int ExitCode, TimeSpan Took)> PressCtrlC()
    {
        var watch = Stopwatch.StartNew();
        using var kill = Process.Start("kill", ["-INT", $"{_process.Id}"]);
        using var patience = new CancellationTokenSource(Patience);
        await _process.WaitForExitAsync(patience.Token);
        return (_process.ExitCode, watch.Elapsed);
    }

    /// <summary>Ends the program at once, as a fault of the machine would.</summary>
    public async Task Cut()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
        {
            await Cut();
        }

        _process.Dispose();
        if (_ownsFolder)
        {
            Directory.Delete(Folder, recursive: true);
        }
    }

    /// <summary>Waits for the line that says the desk is open.</summary>
    private async Task Answers()
    {
        _process.ErrorDataReceived += (_, line) =>
        {
            lock (_messages)
            {
                _messages.Add(line.Data ?? "");
            }
        };
        _process.BeginErrorReadLine();
        using var patience = new CancellationTokenSource(Patience);
        while (await _process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            if (line.Contains(Address, StringComparison.Ordinal))
            {
                return;
            }
        }

        await _process.WaitForExitAsync(patience.Token);
        throw new InvalidOperationException($"The desk ended with {_process.ExitCode}: {Messages}");
    }
}
