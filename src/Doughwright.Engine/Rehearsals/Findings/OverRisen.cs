using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// A dough that makes more gas than its flour holds, wherever on its way: in the bulk, on the bench, in the fridge, in the proof. It sinks and
/// grows slack. All gas since it was last pressed counts. Told once for each time, where it goes past. Source: rise-ceiling.
/// </summary>
internal static class OverRisen
{
    /// <summary>A dough that makes so many times the rise that it can hold is lost: an error, not a warning. A choice; common practice, no source.</summary>
    private const double Lost = 2;

    /// <summary>Less beyond what it holds than this is no news: nobody knows that to a tenth. A choice.</summary>
    private const double Margin = 1.1;

    public static IEnumerable<Finding> Of(RunResult run)
    {
        var (flour, ceiling) = HomeRun.FlourOf(run.Stage.Formula);
        if (flour is null)
        {
            yield break;
        }

        // What the author saw it hold it holds.
        var most = Math.Max(ceiling.UsualMost, run.Stage.Priors.Rise.Ceiling[0]);
        foreach (var part in run.Stage.Recipe.Components.Where(part => part.Kind == ComponentKind.Dough))
        {
            foreach (var (step, filled, passed) in Passes(run, part.Id, most))
            {
                (string, object)[] told = [("time", Rounded(passed)), ("growth", Math.Round(filled, 1)), ("flour", flour.Name), ("most", Math.Round(most, 1))];
                yield return filled - 1 > Lost * (most - 1)
                    ? StepFindings.About(step, "rises-far-past-its-flour", Grade.Error, false, told)
                    : StepFindings.About(step, "rises-past-its-flour", Grade.Warning, false, told);
            }
        }
    }

    /// <summary>Nobody knows such a moment to the minute.</summary>
    private static Duration Rounded(Duration passed)
    {
        var minutes = passed.Hours switch { < 2 => 5, < 10 => 15, _ => 60 };
        return Duration.FromMinutes(Math.Round(passed.Minutes / minutes) * minutes);
    }

    /// <summary>Steps in which it first goes past, one for each time that it is not pressed between.</summary>
    private static IEnumerable<(Step Step, double Filled, Duration Passed)> Passes(RunResult run, string part, double most)
    {
        var scale = ScaleOf(run, part);
        var isPast = false;
        for (var index = 0; index < run.Outcomes.Count; index++)
        {
            if (run.Graph.WorksOn[index] != part || run.Outcomes[index].Spell is not { } spell)
            {
                continue;
            }

            var step = run.Graph.Steps[index];
            if (!isPast && spell.Filled(scale, most) is { Passed: { } passed } filled && filled.Highest > Margin * most)
            {
                yield return (step, filled.Highest, passed);
                isPast = true;
            }

            isPast &= step.Kind != StepKind.Shape;
        }
    }

    /// <summary>How fast the dough is, as its bulk or proof told; the book's rate where none did.</summary>
    public static PerLane ScaleOf(RunResult run, string part) => Enumerable.Range(0, run.Outcomes.Count)
        .Where(index => run.Graph.WorksOn[index] == part)
        .Select(index => run.Outcomes[index].After.Dough)
        .FirstOrDefault(dough => dough is not null)?.Scale ?? new PerLane(run.Stage.Priors.Rise.Scale);
}
