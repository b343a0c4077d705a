using Doughwright.Engine.Heat;

namespace Doughwright.Engine.Tests.Heat;

public class ExchangeCoefficientTests
{
    /// <summary>
    /// Radiation at emissivity 0.9 plus natural convection of a 10 cm ball, thermal reference sheet 6.1 (marked computed, from correlations
    /// from memory), must lie within two standard deviations of the defaults.
    /// </summary>
    [Fact]
    public void Defaults_AgreeWithRadiationAndNaturalConvection()
    {
        Assert.InRange(ExchangeCoefficient.Covered.StandardDeviationsOff(5.329 + 3.48), -2, 2);
        Assert.InRange(ExchangeCoefficient.StillFridge.StandardDeviationsOff(4.737 + 5.03), -2, 2);
        Assert.InRange(ExchangeCoefficient.CoveredHot.StandardDeviationsOff(6.294 + 5.66), -2, 2);
        Assert.InRange(ExchangeCoefficient.CoveredHot.StandardDeviationsOff(7.357 + 6.41), -2, 2);
    }

    [Fact]
    public void StandardDeviationsOff_CountsInLogarithms() =>
        Assert.Equal(1, ExchangeCoefficient.Covered.StandardDeviationsOff(8 * 1.2840254166877414), 1e-9);
}
