using Doughwright.Publishing.Pictures.Strips.Geometry;

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>Finds the waits that are drawn short.</summary>
internal static class LongWaits
{
    /// <summary>Only a recipe longer than this is folded.</summary>
    private const double LongDay = 12 * 60;

    /// <summary>A wait longer than this is folded.</summary>
    private const double LongWait = 3 * 60;

    /// <summary>So much of a wait is drawn in its true length at its start, and at its end, where what comes next needs room for its words.</summary>
    private const double KeptBefore = 20;
    private const double KeptAfter = 75;

    /// <summary>Waits in which nothing begins, nothing ends and nobody lends a hand.</summary>
    public static IReadOnlyList<FoldedWait> Of(Plan plan)
    {
        if (plan.End <= LongDay)
        {
            return [];
        }

        var moments = plan.Steps.SelectMany(Moments).Append(0).Append(plan.End).Where(minute => minute >= 0 && minute <= plan.End).Distinct().Order().ToArray();
        return
        [
            .. moments.Zip(moments.Skip(1))
                .Where(pair => pair.Second - pair.First > LongWait && !plan.Steps.Any(step => IsInComb(step, pair.First)))
                .Select(pair => new FoldedWait(pair.First + KeptBefore, pair.Second - KeptAfter)),
        ];
    }

    /// <summary>Whether a wait that begins then lies in the range in which a step may end: a comb is never cut.</summary>
    private static bool IsInComb(PlannedStep step, double minute) => step.EndsByCue
        && minute >= step.Start + step.Step.Time!.Value.Low.Minutes
        && minute < HighEnd(step);

    /// <summary>Where the comb of a step ends. An open end is drawn as far on as the likely end lies after the low one.</summary>
    private static double HighEnd(PlannedStep step)
    {
        var time = step.Step.Time!.Value;
        return step.Start + (time.High?.Minutes ?? ((2 * time.Likely.Minutes) - time.Low.Minutes));
    }

    private static IEnumerable<double> Moments(PlannedStep step)
    {
        yield return step.Start;
        yield return step.Start + step.Step.Hands.Minutes;
        yield return step.EndOrStart;
        foreach (var happening in step.Step.Events)
        {
            yield return step.Start + happening.After.Likely.Minutes;
        }

        if (step.EndsByCue)
        {
            yield return step.Start + step.Step.Time!.Value.Low.Minutes;
            yield return HighEnd(step);
        }
    }
}
