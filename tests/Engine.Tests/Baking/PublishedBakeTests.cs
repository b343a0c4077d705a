using Doughwright.Engine.Numerics;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Tests.Cases;

namespace Doughwright.Engine.Tests.Baking;

/// <summary>
/// The model before any bake of the author against a published one, which lies in tests/data/published/zhang-2005 with its source. The factor on the
/// diffusivity was fitted to this loaf, so it holds the program to its fit.
/// </summary>
public class PublishedBakeTests
{
    /// <summary>What differs must stay within the spread the model admits, the pace, which the author's bake then fixes.</summary>
    [Fact]
    public void Minutes_WithoutAnAuthorsBake_AreWithinTheSpreadOfThePace() =>
        Assert.All(Published.Run("zhang-2005-small-dome-loaf", "time to core temperature").Points, point => Assert.InRange(
            Math.Abs(Elementary.Log(point.Computed!.Value / point.Measured.Value)) / OvenPiece.PaceSpread, 0, StepFindings.FarFromPrior));

    /// <summary>
    /// Once the surface boils a hotter oven can add nothing in this model, so it answers too weakly. Only the direction is asked; the size is a case
    /// that does not agree.
    /// </summary>
    [Fact]
    public void Minutes_InAHotterOven_AreFewer() =>
        Assert.InRange(Published.Run("hotter-oven-by-20-k", "time by oven").Points[0].Computed!.Value, 0, 0.9999);
}
