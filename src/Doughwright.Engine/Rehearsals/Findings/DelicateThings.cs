using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>Yeast or egg that meets something too hot in the bowl, judged by the warmest part unmixed as well as by the mean.</summary>
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

            foreach (var meeting in HeatAnswer.MeetingsIn(bowl))
            {
                var isYeast = bowl.Lines.First(line => line.Name == meeting.What).Role == Role.Yeast;
                if (meeting.Temperature > (isYeast ? HeatAnswer.YeastBears : HeatAnswer.EggBears))
                {
                    yield return isYeast
                        ? StepFindings.About(step, "yeast-meets-heat", Grade.Warning, false, ("yeast", meeting.What), ("celsius", meeting.Temperature))
                        : StepFindings.About(step, "egg-meets-heat", Grade.Warning, false, ("egg", meeting.What), ("celsius", meeting.Temperature));
                }
            }
        }
    }
}
