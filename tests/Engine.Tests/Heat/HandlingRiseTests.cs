using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Tests.Heat;

public class HandlingRiseTests
{
    /// <summary>Common practice, no source (corrections 1).</summary>
    [Theory]
    [InlineData(MixingWay.ByHand, 1.5, 0.7)]
    [InlineData(MixingWay.Machine, 3, 0.7)]
    [InlineData(MixingWay.FoodProcessor, 6, 2)]
    public void Of_AWayOfMixing_IsTheTradesExpectation(MixingWay way, double mean, double sd)
    {
        var rise = HandlingRise.Of(way);
        Assert.Equal(mean, rise.Mean.Kelvins);
        Assert.Equal(sd, rise.Sd.Kelvins);
        Assert.Equal(2, rise.StandardDeviationsOff(TemperatureDelta.FromKelvins(mean + (2 * sd))), 1e-9);
    }
}
