using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Pictures.Files;

namespace Doughwright.App.Commands;

/// <summary>picture FILE: one picture of a rehearsal in a file of its own, for a lesson, a film or a printed sheet.</summary>
internal static class PictureCommand
{
    public static Answer Run(CommandRun run)
    {
        PictureAsked? asked = null;
        if (AskedRehearsal.Read(run, recipe => asked = PictureAsked.Read(run, recipe), out var refused) is not { } rehearsed || asked is null)
        {
            return refused;
        }

        if (MadePicture.Of(rehearsed.Rehearsal, rehearsed.Request, rehearsed.Bakes, asked.Wish, run.Options, run.Given.Faults) is not { } made)
        {
            return run.Given.Faults.Any ? Answer.None : Write(run, rehearsed, null, 0, With([MadePicture.NotKnown(asked.Wish)], rehearsed.Findings));
        }

        return asked.Out.Write(made.Bytes, run.Given.Faults)
            ? Write(run, rehearsed, (asked, made.File), made.Bytes.Length, With(made.Findings, rehearsed.Findings))
            : Answer.None;
    }

    private static Judgement With(IReadOnlyList<Finding> ofPicture, Judgement findings) => findings with { Open = [.. ofPicture, .. findings.Open] };

    private static Answer Write(CommandRun run, AskedRehearsal rehearsed, (PictureAsked Asked, PictureFile File)? made, int bytes, Judgement findings) => new(
        run.Json ? PictureJson.Write(Stamp.Of(rehearsed.Recipe), made, bytes, findings, run.Voice) : PictureText.Write(rehearsed.Rehearsal, made, bytes, findings, run.Voice),
        "",
        CommandRun.CodeOf(findings));
}
