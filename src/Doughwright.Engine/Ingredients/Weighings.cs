using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Ingredients;

/// <summary>Something weighed before and after water came or went. Both above zero.</summary>
public sealed record Weighings(Mass Before, Mass After)
{
    /// <summary>The share that is left, above 0; more than 1 where water was taken up.</summary>
    public double Left => After / Before;

    /// <summary>What was lost of 100 g; below zero where it gained.</summary>
    public double LossPerHundred => 100 * (Before - After).Grams / Before.Grams;

    /// <summary>
    /// The least and the most that can have been lost of 100 g when each weight was read to the nearest step of a scale: b and a are off by half a step each way.
    /// Source: mass-balance.
    /// </summary>
    /// <param name="step">Of the scale, above zero and less than what was weighed.</param>
    public (double Low, double High) LossOnAScaleOf(Mass step)
    {
        var half = step.Grams / 2;
        double Loss(double before, double after) => 100 * (before - after) / before;
        return (Loss(Before.Grams - half, After.Grams + half), Loss(Before.Grams + half, After.Grams - half));
    }
}
