using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// A filling that is wanted straight from the hob. The time line makes it just in time, so without a step that cools it, it is hot: told where
/// it is cooked, with the time that cooling takes. Into what is baked it goes below 30 °C: common practice, no source.
/// </summary>
internal static class HotFilling
{
    private static readonly Temperature IntoBaked = Temperature.FromCelsius(30);

    public static IEnumerable<Finding> Of(RunResult run)
    {
        for (var index = 0; index < run.Graph.Steps.Count; index++)
        {
            var taker = run.Graph.Steps[index];
            foreach (var filling in run.Graph.FillingsAt(index))
            {
                if (About(run, filling, index, RichDough.FillingTo(run.Stage), "filling-not-cooled", Grade.Hint) is { } told)
                {
                    yield return told;
                }
            }

            if (taker.Component != run.Graph.WorksOn[index] && IsBaked(run, index)
                && run.Stage.Recipe.FindComponent(taker.Component) is { Kind: ComponentKind.Filling }
                && About(run, taker.Component, index, IntoBaked, "filling-not-cooled", Grade.Warning) is { } late)
            {
                yield return late;
            }
        }
    }

    private static bool IsBaked(RunResult run, int index) => Enumerable.Range(0, index).Any(earlier =>
        (run.Graph.Steps[earlier].Kind == StepKind.Bake || run.Graph.Steps[earlier].IsCooked) && run.Graph.WorksOn[earlier] == run.Graph.WorksOn[index]);

    private static Finding? About(RunResult run, string filling, int taker, Temperature limit, string kind, Grade grade)
    {
        var last = Enumerable.Range(0, taker).LastOrDefault(earlier => run.Graph.WorksOn[earlier] == filling && !StepGraph.IsBeside(run.Graph.Steps[earlier]), -1);
        if (last < 0 || run.Graph.Steps[last] is not { IsCooked: true } cook
            || run.Outcomes[last].After.Celsius is not { } hot || hot.Central <= limit.Celsius
            || WaysOut.Of(cook, run.Outcomes[last] with { StartCelsius = hot }, run.Stage, limit).Bath is not { } bath)
        {
            return null;
        }

        return StepFindings.About(
            cook,
            kind,
            grade,
            false,
            ("filling", run.Stage.Component(filling).Name),
            ("taker", run.Graph.Steps[taker].Name),
            ("celsius", Temperature.FromCelsius(hot.Central)),
            ("limit", limit),
            ("bath", bath));
    }
}
