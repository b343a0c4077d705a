using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// The clock of a scald, a puree or a filling that cools and is baked the same day: from about 60 °C until it is mixed or laid in. Quiet to two hours (one in a
/// kitchen above 32 °C), a note to four, a caution beyond. Source: cooling-clock.
/// </summary>
internal static class SafetyClock
{
    // A scald in a heavy bowl starts below 60 °C, which is where the clock of the rule begins: it is warm from its first minute.
    private const double RunsFromCelsius = 40;
    private static readonly Temperature HotKitchen = Temperature.FromCelsius(32);
    private static readonly Duration Quiet = Duration.FromHours(2);
    private static readonly Duration QuietWhenHot = Duration.FromHours(1);
    private static readonly Duration Caution = Duration.FromHours(4);

    public static IEnumerable<Finding> Of(RunResult run)
    {
        for (var index = 0; index < run.Graph.Steps.Count; index++)
        {
            var (step, outcome) = (run.Graph.Steps[index], run.Outcomes[index]);
            if (step is not { Kind: StepKind.Cool or StepKind.Scald, Where: not Where.Fridge }
                || outcome.StartCelsius is not { Central: >= RunsFromCelsius }
                || run.Stage.Recipe.FindComponent(step.Component) is not { Kind: not ComponentKind.Dough })
            {
                continue;
            }

            var quiet = run.Stage.Kitchen.Air.Knots[^1].Air > HotKitchen ? QuietWhenHot : Quiet;
            if (outcome.SettlesAtCelsius is not null)
            {
                yield return StepFindings.About(step, "stays-warm", Grade.Hint, true, ("limit", quiet));
            }
            else if (WarmFor(run, index) is { } time && time > quiet)
            {
                yield return time > Caution
                    ? StepFindings.About(step, "warm-for-too-long", Grade.Hint, true, ("time", time))
                    : StepFindings.About(step, "warm-for-long", Grade.Hint, true, ("time", time));
            }
        }
    }

    /// <summary>From the start of the cooling until something takes the part in, without its time in the fridge.</summary>
    private static Duration? WarmFor(RunResult run, int index)
    {
        var component = run.Graph.Steps[index].Component;
        var own = Enumerable.Range(index, run.Graph.Steps.Count - index).Where(other => run.Graph.WorksOn[other] == component).ToList();
        var cold = own.Where(other => run.Graph.Steps[other].Where == Where.Fridge).Sum(other => run.Outcomes[other].Minutes?.Central ?? 0);
        var taker = Enumerable.Range(index, run.Graph.Steps.Count - index).FirstOrDefault(other => run.Graph.Before[other].Contains(own[^1]), -1);
        var end = taker >= 0 ? run.Times.Starts[taker] : run.Times.Starts[own[^1]] + run.Outcomes[own[^1]].Minutes?.Central;
        return end - run.Times.Starts[index] - cold is { } minutes && double.IsFinite(minutes) ? Duration.FromMinutes(minutes) : null;
    }
}
