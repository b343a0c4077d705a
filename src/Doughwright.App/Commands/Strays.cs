using System.CommandLine;

namespace Doughwright.App.Commands;

/// <summary>Words on a command line that belong to nothing: a misspelt command or option, a second file.</summary>
internal static class Strays
{
    public static void Report(ParseResult parsed, Options options, Faults faults)
    {
        var command = parsed.CommandResult.Command;
        var strays = parsed.UnmatchedTokens.ToList();
        if (command == options.Root)
        {
            // Behind a misspelt command nothing can be judged.
            if (strays.FirstOrDefault(stray => !IsOption(stray)) is { } unknown)
            {
                faults.AddUnknown("command-unknown", unknown, [.. options.Commands.Select(known => known.Name)]);
                return;
            }
        }
        else
        {
            // What stands where a file is wanted, and looks like an option, is a misspelt option.
            var files = parsed.GetResult(options.File)?.Tokens.Select(token => token.Value) ?? [];
            strays.AddRange(files.Where(IsOption));
        }

        // An option that lost its value takes the next option's place: "--air --tap 9C".
        foreach (var stray in strays.Where(IsOption))
        {
            var name = stray.Split('=')[0];
            var known = options.Of(command).Select(option => option.Name).ToArray();
            faults.AddUnknown("option-unknown", name, known, ("command", command == options.Root ? "" : command.Name));
        }

        var words = strays.Where(stray => !IsOption(stray)).ToArray();
        if (words.Length > 0)
        {
            faults.Add("words-left-over", ("words", words));
        }
    }

    public static bool IsOption(string word) => word.Length > 2 && word.StartsWith("--", StringComparison.Ordinal);
}
