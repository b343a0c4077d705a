using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// The clock of a scald or puree that cools and is baked the same day: from about 60 °C until it is mixed in. Quiet to two hours (one in a
/// kitchen above 32 °C), a note to four, a caution beyond. Source: cooling-clock.
/// </summary>
internal static class SafetyClock
{
    private const double RunsFromCelsius = 60;
    private static readonly Temperature HotKitchen = Temperature.FromCelsius(32);
    private static readonly Duration Quiet = Duration.FromHours(2);
    private static readonly Duration QuietWhenHot = Duration.FromHours(1);
    private static readonly Duration Caution = Duration.FromHours(4);

    public static IEnumerable<Finding> Of(RunResult run)
    {
        foreach (var (step, outcome) in run.Each())
        {
            if (outcome.StartCelsius is not { Central: >= RunsFromCelsius } || step is not { Kind: StepKind.Cool or StepKind.Scald, Where: not Where.Fridge }
                || run.Stage.Recipe.FindComponent(step.Component) is not { BelongsToDough: true, Kind: not ComponentKind.Dough })
            {
                continue;
            }

            var quiet = run.Stage.Kitchen.Air.Knots[^1].Air > HotKitchen ? QuietWhenHot : Quiet;
            if (outcome.SettlesAtCelsius is not null)
            {
                yield return StepFindings.About(step, "stays-warm", Grade.Hint, true, ("limit", quiet));
            }
            else if (outcome.Minutes is { } minutes && minutes.Central > quiet.Minutes)
            {
                var time = Duration.FromMinutes(minutes.Central);
                yield return time > Caution
                    ? StepFindings.About(step, "warm-for-too-long", Grade.Hint, true, ("time", time))
                    : StepFindings.About(step, "warm-for-long", Grade.Hint, true, ("time", time));
            }
        }
    }
}
