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
        var (given, options) = (run.Given, run.Options);
        if (!given.Has(options.To))
        {
            given.Faults.Add("to-wanted", ("example", given.Example(options.To)));
        }

        var target = given.Temperature(options.To, Limits.WarmPlace);
        var wish = new PlaceWish { Lamp = given.Power(options.Lamp, Limits.Lamp), OpenWater = given.Has(options.OpenWater) };
        Step? step = null;
        return AskedRehearsal.Of(run, recipe => step = StepOf(run, recipe), asked => Write(
            run, asked, Places.Advise(asked.Rehearsal, step!.Id, target!.Value, wish)));
    }

    private static string Write(CommandRun run, AskedRehearsal asked, PlaceAdvice advice) => run.Json
        ? PlaceJson.Write(Stamp.Of(asked.Recipe), asked.Rehearsal, advice, asked.Findings, run.Voice)
        : PlaceText.Write(asked.Rehearsal, advice, asked.Findings, run.Voice);

    /// <summary>The step that is named, else the first bulk or proof; null with a fault when there is none.</summary>
    private static Step? StepOf(CommandRun run, Recipe recipe)
    {
        var (given, options) = (run.Given, run.Options);
        var rising = recipe.Steps.Where(step => step.Kind is StepKind.Bulk or StepKind.Proof).ToList();
        if (given.One(options.Step) is { } name)
        {
            var named = new Names(recipe, given.Faults).Step(options.Step.Name, name);
            if (named is not null && !rising.Contains(named))
            {
                given.Faults.AddUnknown("step-not-rising", name, [.. rising.Select(step => step.Id)], ("option", options.Step.Name));
            }

            return named;
        }

        if (rising.Count == 0)
        {
            given.Faults.Add("nothing-rises");
            return null;
        }

        return rising.FirstOrDefault(step => step.Kind == StepKind.Bulk) ?? rising[0];
    }
}
