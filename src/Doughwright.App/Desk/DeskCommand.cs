using System.Diagnostics;
using System.Runtime.InteropServices;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Text;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk;

/// <summary>No command: opens the desk, and keeps it open until it is closed.</summary>
internal static class DeskCommand
{
    public static int Run(DeskOptions options, TextWriter output, TextWriter messages, Voice voice)
    {
        var faults = new Faults(voice);
        var port = PortOf(options, faults);
        var folder = options.Folder is { } given ? new DataFolder(Path.GetFullPath(given)) : DataFolder.OfUser();
        Make(folder, faults);
        if (faults.Any)
        {
            messages.Write(FaultText.Write(faults.All, voice));
            messages.Flush();
            return ExitCode.CommandLine;
        }

        var desk = DeskHost.Build(port, folder, voice.Words);
        desk.Lifetime.ApplicationStarted.Register(() => Opened($"http://127.0.0.1:{port}/", folder, options, output, voice));
        desk.RunAsync().GetAwaiter().GetResult();
        return ExitCode.Done;
    }

    private static int PortOf(DeskOptions options, Faults faults)
    {
        if (options.Port is { } asked)
        {
            if (!Ports.IsFree(asked))
            {
                faults.Add("port-taken", ("port", asked.ToString(System.Globalization.CultureInfo.InvariantCulture)), ("offer", (Ports.FirstFree() ?? 0).ToString(System.Globalization.CultureInfo.InvariantCulture)));
            }

            return asked;
        }

        if (Ports.FirstFree() is { } free)
        {
            return free;
        }

        faults.Add("no-port-free", ("first", Ports.Usual.ToString(System.Globalization.CultureInfo.InvariantCulture)));
        return 0;
    }

    private static void Make(DataFolder folder, Faults faults)
    {
        try
        {
            new ShelfFolder(folder).Make();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("folder-unusable", ("folder", folder.Root), ("reason", problem.Message));
        }
    }

    private static void Opened(string address, DataFolder folder, DeskOptions options, TextWriter output, Voice voice)
    {
        output.WriteLine(voice.Say("desk.open", ("address", address)));
        output.WriteLine(voice.Say("desk.stop", ("folder", folder.Root)));
        output.Flush();
        if (options.OpensBrowser)
        {
            OpenBrowser(address);
        }
    }

    /// <summary>
    /// Asks the system to show the address. Where nothing can, the address stands on the terminal. A browser that starts by this is left to itself:
    /// it neither writes into the terminal nor ends with the desk by Ctrl and C, which a shell's background keeps from it.
    /// </summary>
    private static void OpenBrowser(string address)
    {
        var opener = RuntimeInformation.IsOSPlatform(OSPlatform.OSX) ? "open" : "xdg-open";
        try
        {
            using var started = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", "\"$1\" \"$2\" </dev/null >/dev/null 2>&1 &", "sh", opener, address]));
        }
        catch (Exception problem) when (problem is System.ComponentModel.Win32Exception or InvalidOperationException)
        {
            return;
        }
    }
}
