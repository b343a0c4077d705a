using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Commands;

/// <summary>evidence FOLDER: every published, measured case in a folder, held against the models of a rehearsal.</summary>
internal static class EvidenceCommand
{
    public static Answer Run(CommandRun run)
    {
        if (Folder(run) is not { } folder)
        {
            return Answer.None;
        }

        using var stop = new StopSign();
        var progress = new ProgressLines(run.Progress, run.Voice, "evidence-progress", folder.Texts.Count);
        var held = EvidenceRun.Of(folder, progress.Done, stop.Token);
        var output = run.Json ? EvidenceJson.Write(held, run.Voice) : EvidenceText.Write(held, run.Voice);
        return new(output, "", CodeOf(held));
    }

    /// <summary>A text that was not understood, then anything that is wrong or out of tolerance.</summary>
    private static int CodeOf(EvidenceRun held) =>
        held.Findings.Any(finding => finding.NotUnderstood) ? ExitCode.NotUnderstood
        : held.Series.Any(series => series.Result.Within == false) || held.Findings.Any(finding => finding.Grade == Grade.Error) ? ExitCode.Errors
        : ExitCode.Done;

    private static CaseFolder? Folder(CommandRun run)
    {
        var named = run.Given.Files(run.Options.File);
        switch (named.Count)
        {
            case 0:
                run.Given.Faults.Add("case-folder-not-named");
                return null;
            case > 1:
                run.Given.Faults.Add("files-too-many", ("files", named));
                return null;
            default:
                return CaseFolder.Read(named[0], run.Given.Faults);
        }
    }
}
