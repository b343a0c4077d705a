using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Numerics;

/// <summary>
/// The oracle is System.Math of the machine the tests run on, itself within 0.51 units in the last place, so that "1 unit" here means
/// neighbouring doubles at most. Against 45-digit decimal arithmetic the own functions err by 0.63 (exp) and 0.76 units (log) at worst.
/// </summary>
public class ElementaryTests
{
    private const int Points = 400_001;

    [Fact]
    public void Exp_OverItsWholeRange_IsWithinOneUnitInTheLastPlace() =>
        Assert.InRange(WorstUlps(-708, 709, Elementary.Exp, Math.Exp), 0, 1);

    [Fact]
    public void Exp_NearZero_IsWithinOneUnitInTheLastPlace() =>
        Assert.InRange(WorstUlps(-1, 1, Elementary.Exp, Math.Exp), 0, 1);

    [Fact]
    public void Log_OverItsWholeRange_IsWithinOneUnitInTheLastPlace() =>
        Assert.InRange(WorstUlps(-1074, 1024, e => Elementary.Log(Math.Pow(2, e)), e => Math.Log(Math.Pow(2, e))), 0, 1);

    [Fact]
    public void Log_AroundOne_IsWithinOneUnitInTheLastPlace() =>
        Assert.InRange(WorstUlps(0.5, 2, Elementary.Log, Math.Log), 0, 1);

    /// <summary>The powers the engine meets: a dose to 0.7, a pressure ratio to 5.256, a ratio of ten-kelvin steps.</summary>
    [Theory]
    [InlineData(0.7)]
    [InlineData(5.2559)]
    [InlineData(-0.38)]
    public void Pow_OfModerateValues_IsWithinAFewUnits(double power) =>
        Assert.InRange(
            WorstUlps(0.05, 20, x => Elementary.Pow(x, power), x => Math.Pow(x, power)), 0, 1 + 2.5 * Math.Abs(power * Math.Log(20)));

    [Fact]
    public void Pow_OverTheWholeRange_ErrsByNoMoreThanItsStatedUnits()
    {
        for (var i = 0; i < 20_000; i++)
        {
            var x = Math.Pow(2, -1000 + i * 0.1);
            var y = -1 + 2 * ((i * 0.6180339887498949) % 1);
            var stated = 1 + 2.5 * Math.Abs(y * Math.Log(x));
            Assert.True(Ulps(Elementary.Pow(x, y), Math.Pow(x, y)) <= stated, $"{x} to the power {y}");
        }
    }

    /// <summary>e, ln 2, ln 10 and the square root of 2 to 17 digits, from memory.</summary>
    [Fact]
    public void KnownConstants_ComeOutToTheLastDigit()
    {
        Assert.Equal(2.7182818284590452, Elementary.Exp(1));
        Assert.Equal(0.69314718055994531, Elementary.Log(2));
        Assert.Equal(2.3025850929940457, Elementary.Log(10));
        Assert.InRange(Ulps(Elementary.Pow(2, 0.5), 1.4142135623730951), 0, 1);
    }

    [Fact]
    public void ExactPoints_AreExact()
    {
        Assert.Equal(1, Elementary.Exp(0));
        Assert.Equal(0, Elementary.Log(1));
        Assert.Equal(1, Elementary.Pow(7.3, 0));
        Assert.Equal(1, Elementary.Pow(1, 123.4));
        Assert.Equal(0, Elementary.Pow(0, 0.7));
        Assert.Equal(1, Elementary.Pow(0, 0));
    }

    [Fact]
    public void BeyondTheRange_ExpIsNoughtOrInfinite()
    {
        Assert.Equal(0, Elementary.Exp(-708.1));
        Assert.Equal(0, Elementary.Exp(double.NegativeInfinity));
        Assert.Equal(double.PositiveInfinity, Elementary.Exp(709.1));
        Assert.Equal(double.PositiveInfinity, Elementary.Exp(double.PositiveInfinity));
        Assert.Equal(double.PositiveInfinity, Elementary.Log(double.PositiveInfinity));
    }

    [Fact]
    public void ScalarForms_RefuseWhatHasNoValue()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Elementary.Exp(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Elementary.Log(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Elementary.Log(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Elementary.Log(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Elementary.Pow(-2, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Elementary.Pow(0, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Elementary.Pow(2, double.NaN));
    }

    [Fact]
    public void OverLanes_WhatHasNoValueStaysInItsLane()
    {
        Assert.Equal(double.NegativeInfinity, Elementary.Log(Lane1.Of(0)).Value);
        Assert.Equal(double.NaN, Elementary.Log(Lane1.Of(-1)).Value);
        Assert.Equal(double.NaN, Elementary.Log(Lane1.Of(double.NaN)).Value);
        Assert.Equal(double.NaN, Elementary.Exp(Lane1.Of(double.NaN)).Value);
        Assert.Equal(double.NaN, Elementary.Pow(Lane1.Of(-1), Lane1.Of(2)).Value);
        Assert.Equal(double.PositiveInfinity, Elementary.Pow(Lane1.Of(0), Lane1.Of(-2)).Value);
    }

    private static double WorstUlps(double from, double to, Func<double, double> own, Func<double, double> oracle)
    {
        var worst = 0.0;
        for (var i = 0; i < Points; i++)
        {
            var x = from + (to - from) * i / (Points - 1);
            worst = Math.Max(worst, Ulps(own(x), oracle(x)));
        }
        return worst;
    }

    private static double Ulps(double value, double expected)
    {
        if (value == expected)
            return 0;
        var size = Math.Abs(expected);
        return Math.Abs(value - expected) / (Math.BitIncrement(size) - size);
    }
}
