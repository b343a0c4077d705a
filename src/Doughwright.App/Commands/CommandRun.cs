using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>One run of a command: what was typed, and the recipe it is about.</summary>
internal sealed class CommandRun(Given given, Options options, Stream input)
{
    public Given Given => given;

    public Options Options => options;

    public Voice Voice => given.Faults.Voice;

    /// <summary>Where a command that takes long says how far it is, while it works.</summary>
    public TextWriter Progress { get; init; } = TextWriter.Null;

    public bool Json => given.Has(options.Json);

    /// <summary>The text of the recipe; null with a fault when there is none.</summary>
    public InputFile? ReadFile()
    {
        var files = given.Files(options.File);
        switch (files.Count)
        {
            case 0:
                given.Faults.Add("file-not-named");
                return null;
            case > 1:
                given.Faults.Add("files-too-many", ("files", files));
                return null;
            default:
                return InputFile.Read(files[0], input, given.Faults);
        }
    }

    /// <summary>The texts of just so many recipes, in the order in which they are named; null with a fault when there are fewer or more, or one is not there.</summary>
    public IReadOnlyList<InputFile>? ReadFiles(int count)
    {
        var files = given.Files(options.File);
        if (files.Count != count)
        {
            given.Faults.Add("files-wanted", ("count", count), ("named", files.Count), ("files", files.Count == 0 ? Voice.Words["nothing"] : Voice.List(files)));
            return null;
        }

        if (files.Count(file => file == "-") > 1)
        {
            given.Faults.Add("standard-input-twice");
            return null;
        }

        InputFile?[] read = [.. files.Select(file => InputFile.Read(file, input, given.Faults))];
        return read.Any(file => file is null) ? null : [.. read.Select(file => file!)];
    }

    public static (Reading Reading, IReadOnlyList<Finding> Findings, bool Understood) Understand(InputFile file)
    {
        var reading = RecipeText.Read(file.Text);
        // Only a text of a book can link to what is not there.
        var missing = reading.Recipe is { } recipe && file.Notes is { } notes ? notes.Missing(recipe) : [];
        return (reading, [.. file.Findings, .. reading.Findings, .. missing], reading.Understood && reading.Recipe is not null && file.Findings.Count == 0);
    }

    /// <summary>The answer when a line of a text was not understood: all findings, and nothing computed.</summary>
    public Answer NotUnderstood(IReadOnlyList<Finding> findings) => Refused(findings, "not-understood", ExitCode.NotUnderstood);

    /// <summary>All was understood, and no kitchen is like the one that is named: nothing can be worked out in it.</summary>
    public Answer Impossible(IReadOnlyList<Finding> findings) => Refused(findings, "kitchen-impossible", ExitCode.Errors);

    private Answer Refused(IReadOnlyList<Finding> findings, string why, int code) => new(
        Json ? FindingsJson.WriteNotUnderstood(findings, Voice) : FindingsText.Write(null, findings, Voice, quote: true),
        Json ? "" : Voice.Say(why) + "\n",
        code);

    /// <summary>What is accepted does not count, and errors cannot be accepted.</summary>
    public static int CodeOf(Judgement findings) => CodeOf(findings.Open);

    private static int CodeOf(IReadOnlyList<Finding> findings) =>
        findings.Any(finding => finding.Grade == Grade.Error) ? ExitCode.Errors : ExitCode.Done;
}
