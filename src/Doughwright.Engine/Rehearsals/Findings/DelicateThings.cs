using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>Yeast or egg that meets something too hot in the bowl, by itself or inside a part, judged by the warmest part unmixed as well as by the mean.</summary>
internal static class DelicateThings
{
    public static IEnumerable<Finding> Of(RunResult here)
    {
        foreach (var step in here.Graph.Steps)
        {
            if (here.BowlOf(step) is not { IsKnown: true } bowl)
            {
                continue;
            }

            foreach (var (thing, meets) in HeatAnswer.MeetingsIn(bowl))
            {
                if (meets > thing.Bears)
                {
                    yield return thing.IsYeast
                        ? StepFindings.About(step, "yeast-meets-heat", Grade.Warning, false, ("yeast", thing.Name), ("celsius", meets))
                        : StepFindings.About(step, "egg-meets-heat", Grade.Warning, false, ("egg", thing.Name), ("celsius", meets));
                }
            }
        }
    }
}
