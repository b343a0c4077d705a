namespace Doughwright.Engine.Heat;

/// <summary>The bowl right after a part was added and stirred in.</summary>
/// <param name="Id">Id of the line that was added.</param>
/// <param name="PartCelsius">How warm it went in.</param>
/// <param name="MeanCelsius">All that is in the bowl, evened out, the bowl itself included.</param>
/// <param name="WarmestPartCelsius">The warmest of the parts so far, as if it had not been stirred in yet.</param>
internal sealed record Addition(string Id, double PartCelsius, double MeanCelsius, double WarmestPartCelsius);

/// <summary>The additions to a bowl in their order.</summary>
internal sealed record MixingTrace(IReadOnlyList<Addition> Additions)
{
    /// <summary>
    /// The warmest other part that a part can touch, in °C: one already in the bowl and perhaps not stirred in, or one added later. Null
    /// when the part is alone. A yeast or a yolk is judged by this as well as by the mean.
    /// </summary>
    public double? WarmestMet(int index)
    {
        double? warmest = null;
        for (var other = 0; other < Additions.Count; other++)
        {
            if (other != index && !(warmest > Additions[other].PartCelsius))
            {
                warmest = Additions[other].PartCelsius;
            }
        }

        return warmest;
    }

    /// <summary>The warmest mean of the bowl from the addition of a part onwards, in °C.</summary>
    public double WarmestMean(int index)
    {
        var warmest = Additions[index].MeanCelsius;
        for (var later = index + 1; later < Additions.Count; later++)
        {
            warmest = Math.Max(warmest, Additions[later].MeanCelsius);
        }

        return warmest;
    }
}
