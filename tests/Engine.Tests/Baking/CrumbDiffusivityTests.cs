using Doughwright.Engine.Baking;

namespace Doughwright.Engine.Tests.Baking;

public class CrumbDiffusivityTests
{
    /// <summary>Thermal reference sheet 8.3, marked computed from the published law: these values test the formula only.</summary>
    [Theory]
    [InlineData(0.60, 4.341e-7)]
    [InlineData(0.70, 4.798e-7)]
    [InlineData(0.80, 5.302e-7)]
    [InlineData(0.85, 5.574e-7)]
    public void AtPorosity_FollowsThePublishedLaw(double porosity, double squareMetresPerSecond) =>
        Assert.Equal(squareMetresPerSecond, CrumbDiffusivity.AtPorosity(porosity), 0.5e-10);

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void AtPorosity_OutsideNothingToAll_IsRefused(double porosity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CrumbDiffusivity.AtPorosity(porosity));
}
