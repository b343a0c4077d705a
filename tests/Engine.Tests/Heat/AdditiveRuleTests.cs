using CsCheck;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

/// <summary>The trade's own rule against the trade's own worked examples (thermal reference sheet 2.2, read), in °F as printed.</summary>
public class AdditiveRuleTests
{
    [Theory]
    [InlineData(75, 65, 65, 8, 87)]
    [InlineData(80, 65, 75, 35, 65)]
    [InlineData(78, 60, 70, 16, 88)]
    public void Water_OfAWorkedExample_IsThePrintedOne(double wanted, double flour, double room, double friction, double water) =>
        Assert.Equal(water, AdditiveRule.Water(F(wanted), [F(flour), F(room)], Difference(friction)).Fahrenheit, 1e-9);

    [Fact]
    public void Friction_OfATrial_IsTheWorkedOne() =>
        Assert.Equal(44 * 5 / 9.0, AdditiveRule.Friction(F(82), [F(72), F(70), F(60)]).Kelvins, 1e-9);

    [Fact]
    public void Water_RisesByTheNumberOfTemperatures_AndFallsOneToOneWithTheOthers() =>
        Gen.Select(Gen.Double[10, 35], Gen.Double[0, 40].Array[1, 4], Gen.Double[0, 20]).Sample((wanted, others, friction) =>
        {
            double Water(double dough, double first, double ff) => AdditiveRule.Water(
                Temperature.FromCelsius(dough),
                [Temperature.FromCelsius(first), .. others.Skip(1).Select(Temperature.FromCelsius)],
                TemperatureDelta.FromKelvins(ff)).Celsius;
            var water = Water(wanted, others[0], friction);
            Assert.Equal(water + others.Length + 1, Water(wanted + 1, others[0], friction), 1e-9);
            Assert.Equal(water - 1, Water(wanted, others[0] + 1, friction), 1e-9);
            Assert.Equal(water - 1, Water(wanted, others[0], friction + 1), 1e-9);
        });

    [Fact]
    public void Friction_OfATrial_GivesBackItsWater() => Gen.Double[0, 40].Array[4].Sample(celsius =>
    {
        var all = Array.ConvertAll(celsius, Temperature.FromCelsius);
        var friction = AdditiveRule.Friction(Temperature.FromCelsius(25), all);
        Assert.Equal(celsius[3], AdditiveRule.Water(Temperature.FromCelsius(25), all.AsSpan(0, 3), friction).Celsius, 1e-9);
    });

    private static Temperature F(double fahrenheit) => Temperature.FromFahrenheit(fahrenheit);

    private static TemperatureDelta Difference(double fahrenheit) => TemperatureDelta.FromKelvins(fahrenheit * 5 / 9);
}
