using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Quantities;

public class MixedNumberTests
{
    [Theory]
    [InlineData("1/4 cup", 0.25, " cup")]
    [InlineData("1 1/2 tsp", 1.5, " tsp")]
    [InlineData("¼ cup", 0.25, " cup")]
    [InlineData("1½ tsp", 1.5, " tsp")]
    [InlineData("1 ⅔ cups", 1 + (2 / 3.0), " cups")]
    [InlineData("2\u20443 cup", 2 / 3.0, " cup")]
    [InlineData("0.75 cup", 0.75, " cup")]
    [InlineData("2 tbsp", 2, " tbsp")]
    [InlineData("1,200 ml", 1200, " ml")]
    public void Number_IsReadFromTheFront(string text, double value, string rest)
    {
        Assert.True(MixedNumber.Lead(text) is var (read, length) && read == value && text[length..] == rest, $"{MixedNumber.Lead(text)}");
    }

    [Theory]
    [InlineData("cup")]
    [InlineData("")]
    [InlineData("0 cups")]
    [InlineData("3/2 cup")]
    [InlineData("1/0 cup")]
    [InlineData("1/20 cup")]
    [InlineData("1/4/2 cup")]
    [InlineData("01/4 cup")]
    [InlineData("1.5 1/2 cup")]
    [InlineData("1,5 cup")]
    [InlineData("11/")]
    public void WhatIsNotClear_IsNotANumber(string text) => Assert.Null(MixedNumber.Lead(text));

    [Theory]
    [InlineData("0.75 cup", "¾ cup")]
    [InlineData("3/4 cup, sifted", "¾ cup, sifted")]
    [InlineData("1 1/2 tsp", "1½ tsp")]
    [InlineData("2 tbsp", "2 tbsp")]
    [InlineData("0.3 cup", "0.3 cup")]
    [InlineData("4 oz", "4 oz")]
    public void EveryNumber_IsPrintedInOneStyle(string typed, string printed) => Assert.Equal(printed, MixedNumber.Printed(typed));
}
