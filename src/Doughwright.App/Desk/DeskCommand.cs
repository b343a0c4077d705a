using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Text;
using Doughwright.Book.Opening;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk;

/// <summary>No command: opens the desk, and keeps it open until it is closed.</summary>
internal static class DeskCommand
{
    public static int Run(DeskOptions options, TextWriter output, TextWriter messages, Voice voice)
    {
        var faults = new Faults(voice);
        var port = PortOf(options, faults);
        using var shelf = ShelfOf(options, faults);
        return faults.Any || port is not { } found || shelf is null
            ? Refused(faults, messages)
            : Serve(found, shelf, options, output, messages, voice);
    }

    /// <summary>Keeps the desk open at a port that was free a moment ago.</summary>
    internal static int Serve(int port, ShelfFolder shelf, DeskOptions options, TextWriter output, TextWriter messages, Voice voice)
    {
        try
        {
            var desk = DeskHost.Build(port, shelf, voice.Words, SealKey.OfUser());
            desk.Lifetime.ApplicationStarted.Register(() => Opened(AddressOf(port, options.Measures), shelf, options, output, voice));
            desk.RunAsync().GetAwaiter().GetResult();
            return ExitCode.Done;
        }
        catch (IOException problem) when (problem.InnerException is AddressInUseException)
        {
            var faults = new Faults(voice);
            AddTaken(port, Ports.FirstFree(), faults);
            return Refused(faults, messages);
        }
    }

    /// <param name="offer">A port that is free; null when none was found.</param>
    internal static void AddTaken(int port, int? offer, Faults faults)
    {
        if (offer is { } free)
        {
            faults.Add("port-taken", ("port", Whole(port)), ("offer", Whole(free)));
        }
        else
        {
            faults.Add("port-taken-like-all", ("port", Whole(port)));
        }
    }

    /// <summary>The first page, in the measures that were asked for.</summary>
    internal static string AddressOf(int port, MeasureSystem measures) => MeasureNames.InAddress(measures) is { } named
        ? QueryHelpers.AddQueryString($"http://127.0.0.1:{Whole(port)}/", Question.Measures, named)
        : $"http://127.0.0.1:{Whole(port)}/";

    private static int Refused(Faults faults, TextWriter messages)
    {
        messages.Write(FaultText.Write(faults.All, faults.Voice));
        messages.Flush();
        return ExitCode.CommandLine;
    }

    /// <returns>Null with a fault when nothing can be answered there.</returns>
    private static int? PortOf(DeskOptions options, Faults faults)
    {
        if (options.Port is { } asked)
        {
            if (Ports.IsFree(asked))
            {
                return asked;
            }

            AddTaken(asked, Ports.FirstFree(), faults);
            return null;
        }

        if (Ports.FirstFree() is { } free)
        {
            return free;
        }

        faults.Add("no-port-free", ("first", Whole(Ports.Usual)));
        return null;
    }

    /// <returns>Null with a fault when it cannot be used.</returns>
    private static ShelfFolder? ShelfOf(DeskOptions options, Faults faults)
    {
        try
        {
            return ShelfFolder.Open(options.Folder is { } given ? new(Path.GetFullPath(given)) : DataFolder.OfUser(), TimeProvider.System, faults.Voice.Words);
        }
        catch (BookException problem)
        {
            BookFaults.Add(problem, faults);
            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException)
        {
            faults.Add("folder-unusable", ("folder", options.Folder ?? DataFolder.OfUser().Root), ("reason", problem.Message));
            return null;
        }
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void Opened(string address, ShelfFolder shelf, DeskOptions options, TextWriter output, Voice voice)
    {
        foreach (var line in FirstLines(address, shelf, voice))
        {
            output.WriteLine(Page.Clean(line));
        }

        output.Flush();
        if (options.OpensBrowser)
        {
            OpenBrowser(address);
        }
    }

    /// <summary>Where the desk is, where everything is written, and what is not in the book: at each start, until the author has done with it.</summary>
    internal static IEnumerable<string> FirstLines(string address, ShelfFolder shelf, Voice voice) =>
    [
        voice.Say("desk.open", ("address", address)),
        voice.Say("desk.stop", ("file", shelf.Book.Path)),
        .. shelf.Left.All().Select(left => voice.Say("shelf.not-taken", ("name", left.File), ("reason", LeftWords.Reason(left, voice)))),
    ];

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
