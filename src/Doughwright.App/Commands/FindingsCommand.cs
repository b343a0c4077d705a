using Doughwright.App.Json;
using Doughwright.App.Text;

namespace Doughwright.App.Commands;

/// <summary>findings FILE: everything that is wrong, missing or risky, from the text to the rehearsal at home, and what can be done about it.</summary>
internal static class FindingsCommand
{
    public static Answer Run(CommandRun run)
    {
        if (run.ReadFile() is not { } file || run.Given.Faults.Any)
        {
            return Answer.None;
        }

        var whole = WholeJudgement.Of(file);
        if (FindingsChange.Of(run, file, whole) is { } changed)
        {
            return changed;
        }

        if (whole.Recipe is not { } recipe)
        {
            return NotUnderstood(run, whole);
        }

        var judged = whole.Judged;
        var output = run.Json
            ? FindingsJson.Write(Stamp.Of(recipe), recipe, judged, run.Voice)
            : FindingsText.Write(recipe.Title, judged.Open, run.Voice, quote: true, whole.Offers, judged.Accepted);
        return new(output, "", CommandRun.CodeOf(judged));
    }

    private static Answer NotUnderstood(CommandRun run, WholeJudgement whole) => run.Json
        ? run.NotUnderstood(whole.All)
        : run.NotUnderstood(whole.All) with { Output = FindingsText.Write(null, whole.All, run.Voice, quote: true, whole.Offers, []) };
}
