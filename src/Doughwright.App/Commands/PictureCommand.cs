using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
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

        var home = rehearsed.Rehearsal.AtHome || asked.Kind != PictureKind.Rise ? null : Rehearser.Rehearse(rehearsed.Recipe, Larder.Shipped);
        var choice = new PictureChoice(rehearsed.Rehearsal, home, run.Voice);
        if (asked.Step is { } step && choice.Steps(asked.Kind) is var steps && !steps.Contains(step))
        {
            run.Given.Faults.AddUnknown("picture-not-of-step", step, [.. steps], ("option", run.Options.Step.Name));
            return Answer.None;
        }

        if (choice.Draw(asked.Kind, asked.Step) is not { } drawn)
        {
            return Write(run, rehearsed, null, 0, And(NotKnown(asked), rehearsed.Findings));
        }

        var picture = PictureFile.Of(drawn, asked.Ground, asked.WidthPixels);
        if (picture.IsTooLarge)
        {
            run.Given.Faults.Add("picture-too-large", ("option", run.Options.Width.Name), ("given", asked.WidthPixels), ("height", picture.HeightPixels), ("widest", picture.WidestHere));
            return Answer.None;
        }

        var (bytes, findings) = Made(asked, picture, rehearsed.Findings);
        return asked.Out.Write(bytes, run.Given.Faults) ? Write(run, rehearsed, (asked, picture), bytes.Length, findings) : Answer.None;
    }

    private static (byte[] Bytes, Judgement Findings) Made(PictureAsked asked, PictureFile picture, Judgement findings)
    {
        if (!asked.IsPng)
        {
            return (System.Text.Encoding.UTF8.GetBytes(picture.ToSvg()), findings);
        }

        var painted = picture.ToPng();
        return (painted.Png, painted.Missing.Count == 0 ? findings : And(LettersMissing(painted.Missing), findings));
    }

    private static Judgement And(Finding first, Judgement findings) => findings with { Open = [first, .. findings.Open] };

    private static Finding NotKnown(PictureAsked asked) => About("picture-not-known", Grade.Error, ("picture", asked.KindAsTyped));

    private static Finding LettersMissing(IReadOnlyList<string> letters) => About("picture-letters-left-out", Grade.Warning, ("letters", letters.ToArray()));

    private static Finding About(string kind, Grade grade, params (string Name, object Value)[] arguments) => new()
    {
        Kind = kind,
        Grade = grade,
        Place = "",
        Position = Position.None,
        Arguments = arguments.ToDictionary(argument => argument.Name, argument => argument.Value),
    };

    private static Answer Write(CommandRun run, AskedRehearsal rehearsed, (PictureAsked Asked, PictureFile File)? made, int bytes, Judgement findings) => new(
        run.Json ? PictureJson.Write(Stamp.Of(rehearsed.Recipe), made, bytes, findings, run.Voice) : PictureText.Write(rehearsed.Rehearsal, made, bytes, findings, run.Voice),
        "",
        CommandRun.CodeOf(findings));
}
