using CsCheck;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

public class FatMeltingTests
{
    [Fact]
    public void CelsiusOf_AHeatContent_IsTheTemperatureItCameFrom() =>
        Gen.Select(Gen.Double[1, 5000], Gen.Double[0, 50000], Gen.Double[-40, 120]).Sample((capacity, melting, celsius) =>
        {
            var butter = FatMelting.Butter;
            Assert.Equal(celsius, butter.CelsiusOf(capacity, melting, butter.HeatContent(capacity, melting, celsius)), 1e-9);
        });

    [Fact]
    public void HeatContent_RisesWithTemperature() => Gen.Select(
        Gen.Double[1, 5000], Gen.Double[0, 50000], Gen.Double[-40, 120], Gen.Double[0.01, 50]).Sample((capacity, melting, celsius, by) =>
        {
            var butter = FatMelting.Butter;
            Assert.True(butter.HeatContent(capacity, melting, celsius + by) > butter.HeatContent(capacity, melting, celsius));
        });

    /// <summary>About 60 kJ per kg of fat between 5 and 24 °C, half of it by the middle (corrections 3, from memory).</summary>
    [Fact]
    public void Butter_TakesItsMeltingHeatBetweenFiveAndTwentyFour()
    {
        var butter = FatMelting.Butter;
        Assert.Equal(60_000, butter.HeatContent(0, 1000 * butter.JoulesPerGram, 24), 1e-9);
        Assert.Equal(0, butter.HeatContent(0, 1000 * butter.JoulesPerGram, 5));
        Assert.Equal(0.5, butter.MeltedShare(Temperature.FromCelsius(14.5)), 1e-12);
    }

    /// <summary>Steps of common practice, no source (corrections 3).</summary>
    [Theory]
    [InlineData(14.9, ButterState.Firm)]
    [InlineData(15, ButterState.Softening)]
    [InlineData(18, ButterState.Creams)]
    [InlineData(21, ButterState.Creams)]
    [InlineData(21.1, ButterState.TooSoft)]
    [InlineData(32, ButterState.Liquid)]
    public void ButterState_FollowsTheTradesSteps(double celsius, object state) =>
        Assert.Equal(state, ButterStates.At(Temperature.FromCelsius(celsius)));
}
