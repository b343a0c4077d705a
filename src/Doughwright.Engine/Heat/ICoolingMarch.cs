using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>One way of following a body in time: with its inside, or as one temperature.</summary>
internal interface ICoolingMarch
{
    /// <param name="limitMinutes">Per lane the time after which it counts as never; null for the longest there is.</param>
    CoolingTimes TimeToReach(CoolingLanes lanes, double[]? limitMinutes);

    double[] MeanAfter(CoolingLanes lanes, Duration time);

    /// <summary>Volume means of one lane on its way, after the start and before <paramref name="minutes"/>.</summary>
    IReadOnlyList<(double Minutes, double Celsius)> Way(CoolingLanes one, double minutes);
}
