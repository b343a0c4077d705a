using System.Globalization;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App;

/// <summary>The command line: from words typed to an exit code. Data goes to standard output, messages to standard error.</summary>
internal static class Cli
{
    /// <param name="openDesk">Opens the desk and keeps it open; without it, no command at all is told what the program can do.</param>
    public static int Run(
        string[] arguments, Stream input, TextWriter output, TextWriter messages, Words? words = null, Func<DeskOptions, Voice, int>? openDesk = null)
    {
        words ??= Words.Shipped;
        try
        {
            var answer = Answer(arguments, input, messages, words);
            if (answer.Desk is { } desk && openDesk is not null)
            {
                return openDesk(desk, new(words, MeasureSystem.Metric));
            }

            output.Write(answer.Output);
            messages.Write(answer.Messages);
            return answer.ExitCode;
        }
        catch (Exception fault)
        {
            var voice = new Voice(words, MeasureSystem.Metric);
            var said = new Fault(voice.Say("our-fault.message", ("reason", fault.Message)), voice.Say("our-fault.wayOut"));
            output.Write(arguments.Contains("--json") ? ErrorJson.Write([said]) : "");
            messages.Write(FaultText.Write([said], voice));
            messages.Write(Environment.GetEnvironmentVariable("DOUGHWRIGHT_TRACE") == "1" ? $"{fault}\n" : "");
            return ExitCode.OurFault;
        }
        finally
        {
            output.Flush();
            messages.Flush();
        }
    }

    private static Answer Answer(string[] arguments, Stream input, TextWriter messages, Words words)
    {
        var options = new Options();
        var parsed = options.Parse(arguments);
        var command = parsed.CommandResult.Command;
        var measures = MeasureSystem.Metric;
        if (parsed.GetResult(options.Measures)?.Tokens is [var named] && MeasureNames.All.TryGetValue(named.Value, out var chosen))
        {
            measures = chosen;
        }

        var voice = new Voice(words, measures);
        var faults = new Faults(voice);
        var given = new Given(parsed, faults);
        if (given.Has(options.Help))
        {
            return new(HelpText.Write(command, options, voice), "", ExitCode.Done);
        }

        if (given.Has(options.Version) && command == options.Root)
        {
            return new(Stamp.EngineVersion + "\n", "", ExitCode.Done);
        }

        if (given.One(options.Measures) is { } system)
        {
            given.Word(options.Measures.Name, system, MeasureNames.All);
        }

        Strays.Report(parsed, options, faults);
        if (command == options.Root)
        {
            var desk = Desk(given, options, measures);
            return faults.Any
                ? Refused(faults, given.Has(options.Json))
                : new(HelpText.Write(options.Root, options, voice), "", ExitCode.Done) { Desk = given.Has(options.Json) ? null : desk };
        }

        var run = new CommandRun(given, options, input) { Progress = messages };
        var answer = command == options.Findings ? FindingsCommand.Run(run)
            : command == options.Formula ? FormulaCommand.Run(run)
            : command == options.Picture ? PictureCommand.Run(run)
            : command == options.Resize ? ResizeCommand.Run(run)
            : command == options.Swap ? SwapCommand.Run(run)
            : command == options.Page ? PageCommand.Run(run)
            : command == options.Larder ? LarderCommand.Run(run)
            : command == options.Place ? PlaceCommand.Run(run)
            : command == options.Evidence ? EvidenceCommand.Run(run)
            : command == options.Book ? BookCommand.Run(run)
            : command == options.Ready ? ReadyCommand.Run(run)
            : command == options.Compare ? CompareCommand.Run(run)
            : RehearseCommand.Run(run);
        return faults.Any ? Refused(faults, given.Has(options.Json)) : answer;
    }

    private static DeskOptions Desk(Given given, Options options, MeasureSystem measures)
    {
        int? port = null;
        if (given.One(options.Port) is { } typed)
        {
            port = int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1024 and <= 65535 ? number : null;
            if (port is null)
            {
                given.Faults.Add("port-wanted", ("given", typed));
            }
        }

        var folder = given.One(options.Folder);
        if (folder is not null && string.IsNullOrWhiteSpace(folder))
        {
            given.Faults.Add("option-without-value", ("option", options.Folder.Name), ("example", given.Example(options.Folder)));
        }

        return new(port, folder, !given.Has(options.NoBrowser), measures);
    }

    private static Answer Refused(Faults faults, bool json) =>
        new(json ? ErrorJson.Write(faults.All) : "", FaultText.Write(faults.All, faults.Voice), ExitCode.CommandLine);
}
