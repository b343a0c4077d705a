using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Warming;

namespace Doughwright.App.Commands;

/// <summary>place FILE --to 26C: how a dough comes to stand at a temperature in this kitchen.</summary>
internal static class PlaceCommand
{
    public static Answer Run(CommandRun run)
    {
        var options = new PlaceOptions(run.Given, run.Options);
        var (target, wish) = (options.Target(), options.Wish());
        Step? step = null;
        return AskedRehearsal.Of(run, recipe => step = options.StepOf(recipe), asked => Write(
            run, asked, Places.Advise(asked.Rehearsal, step!.Id, target!.Value, wish)), bakesMatter: false);
    }

    private static string Write(CommandRun run, AskedRehearsal asked, PlaceAdvice advice)
    {
        var findings = asked.Findings with { Open = With(asked.Findings.Open, advice) };
        return run.Json
            ? PlaceJson.Write(Stamp.Of(asked.Recipe), asked.Rehearsal, advice, findings, run.Voice)
            : PlaceText.Write(asked.Rehearsal, advice, findings, run.Voice);
    }

    /// <summary>What the warmth asked for does goes first, and before what the room as it is does to the same step.</summary>
    public static IReadOnlyList<Finding> With(IReadOnlyList<Finding> findings, PlaceAdvice advice) =>
        [.. advice.Findings, .. findings.Where(finding => advice.Findings.All(other => other.Id != finding.Id))];
}
