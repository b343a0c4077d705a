using CsCheck;
using Doughwright.Engine.Quantities;
using UnitsNet.Units;

namespace Doughwright.Engine.Tests.Quantities;

public class QuantityTextTests
{
    /// <summary>
    /// Exact definitions; pound and ounce as printed in reference/units.md section 1 (read there), inch (from memory there).
    /// </summary>
    [Theory]
    [InlineData("1 lb", 453.59237)]
    [InlineData("1 oz", 28.349523125)]
    [InlineData("16 oz", 453.59237)]
    [InlineData("1 lb 4 oz", 566.9904625)]
    [InlineData("2.5lb", 1133.980925)]
    [InlineData("0.1 kg", 100)]
    [InlineData("500 mg", 0.5)]
    [InlineData("1,200 g", 1200)]
    [InlineData("1,234,567.5 g", 1234567.5)]
    [InlineData("80 g", 80)]
    [InlineData(" 80\u00a0g ", 80)]
    public void Mass_IsReadExactly(string text, double grams) => Assert.Equal(grams, QuantityText.TryMass(text).Value!.Value.Grams);

    [Theory]
    [InlineData("21 C", 21)]
    [InlineData("17C", 17)]
    [InlineData("21 °C", 21)]
    [InlineData("21 ° C", 21)]
    [InlineData("77 F", 25)]
    [InlineData("-40 F", -40)]
    [InlineData("\u22125 C", -5)]
    [InlineData("63°F", 17.22222222222222)]
    [InlineData("375 F", 190.55555555555554)]
    public void Temperature_IsReadExactly(string text, double celsius) =>
        Assert.Equal(celsius, QuantityText.TryTemperature(text).Value!.Value.Celsius, 1e-14 * Math.Abs(celsius));

    [Theory]
    [InlineData("105 min", 105)]
    [InlineData("1 h 45 min", 105)]
    [InlineData("1h45min", 105)]
    [InlineData("90 s", 1.5)]
    [InlineData("2 d", 2880)]
    [InlineData("1 d 2 h 3 min 30 s", 1563.5)]
    [InlineData("0.1 min", 0.1)]
    [InlineData("1.75 h", 105)]
    public void Duration_IsReadExactly(string text, double minutes) =>
        Assert.Equal(minutes, QuantityText.TryDuration(text).Value!.Value.Minutes);

    [Theory]
    [InlineData("1 cm", 0.01)]
    [InlineData("6 mm", 0.006)]
    [InlineData("1,200 m", 1200)]
    [InlineData("1200m", 1200)]
    [InlineData("-430 m", -430)]
    [InlineData("1 in", 0.0254)]
    [InlineData("3937 ft", 1199.9976)]
    [InlineData("1 ft 6 in", 0.4572)]
    public void Length_IsReadExactly(string text, double metres) => Assert.Equal(metres, QuantityText.TryLength(text).Value!.Value.Metres);

    [Theory]
    [InlineData("12.5 %", 12.5)]
    [InlineData("0%", 0)]
    public void Percent_IsReadExactly(string text, double percent) =>
        Assert.Equal(percent, QuantityText.TryPercent(text).Value!.Value.Value);

    [Theory]
    [InlineData("", QuantityFault.Empty, "", null)]
    [InlineData("some", QuantityFault.NumberMissing, "some", null)]
    [InlineData("010 g", QuantityFault.LeadingZero, "010", "10 g")]
    [InlineData("007.5 g", QuantityFault.LeadingZero, "007.5", "7.5 g")]
    [InlineData("00 g", QuantityFault.LeadingZero, "00", "0 g")]
    [InlineData("7,5 g", QuantityFault.DecimalComma, "7,5", "7.5 g")]
    [InlineData("1.200,5 g", QuantityFault.DecimalComma, "1.200,5", null)]
    [InlineData("1,2000 g", QuantityFault.DecimalComma, "1,2000", "1.2000 g")]
    [InlineData("12:30", QuantityFault.ClockTime, "12:30", null)]
    [InlineData("12:30 h", QuantityFault.ClockTime, "12:30 h", null)]
    [InlineData("1/2 lb", QuantityFault.Fraction, "1/2 lb", null)]
    [InlineData("1 ½ lb", QuantityFault.Fraction, "1 ½ lb", null)]
    [InlineData("1e3 g", QuantityFault.NumberNotPlain, "1e3 g", null)]
    [InlineData("+5 g", QuantityFault.NumberNotPlain, "+5 g", null)]
    [InlineData(".5 g", QuantityFault.NumberNotPlain, ".5", "0.5 g")]
    [InlineData("5. g", QuantityFault.NumberNotPlain, "5.", "5 g")]
    [InlineData("1234567890123 g", QuantityFault.TooManyDigits, "1234567890123", null)]
    [InlineData("9999999999 kg", QuantityFault.TooManyDigits, "9999999999 kg", null)]
    [InlineData("999999999999 lb", QuantityFault.TooManyDigits, "999999999999 lb", null)]
    [InlineData("7", QuantityFault.UnitMissing, "7", null)]
    [InlineData("7 gr", QuantityFault.UnitUnknown, "gr", "7 g")]
    [InlineData("7 G", QuantityFault.UnitUnknown, "G", "7 g")]
    [InlineData("7 handfuls", QuantityFault.UnitUnknown, "handfuls", null)]
    [InlineData("7 minutes", QuantityFault.UnitUnknown, "minutes", null)]
    [InlineData("7 cm", QuantityFault.UnitOfAnotherKind, "cm", null)]
    [InlineData("-50 g", QuantityFault.Negative, "-50 g", null)]
    [InlineData("7 g or so", QuantityFault.MoreThanAQuantity, "or so", null)]
    [InlineData("4 oz 1 lb", QuantityFault.MoreThanAQuantity, "1 lb", null)]
    [InlineData("1 lb 20 g", QuantityFault.MoreThanAQuantity, "20 g", null)]
    [InlineData("NaN g", QuantityFault.NumberMissing, "NaN g", null)]
    public void WhatIsNoMass_HasOneReason(string text, QuantityFault fault, string piece, string? offer)
    {
        var parsed = QuantityText.TryMass(text);
        Assert.Null(parsed.Value);
        Assert.Equal((fault, piece, offer), (parsed.Fault, parsed.Piece, parsed.Offer));
    }

    [Theory]
    [InlineData("-")]
    [InlineData("\u2212")]
    [InlineData("- ")]
    [InlineData("--")]
    [InlineData("+")]
    [InlineData(".")]
    [InlineData("-.")]
    [InlineData(",")]
    [InlineData("-,")]
    [InlineData("- C")]
    [InlineData("-g")]
    [InlineData("C")]
    [InlineData("°")]
    [InlineData("%")]
    [InlineData("--5 C")]
    [InlineData("\u00a0")]
    public void SignsWithoutANumber_AreNoQuantity(string text)
    {
        Assert.False(QuantityText.TryMass(text).Ok);
        Assert.False(QuantityText.TryTemperature(text).Ok);
        Assert.False(QuantityText.TryDuration(text).Ok);
        Assert.False(QuantityText.TryLength(text).Ok);
        Assert.False(QuantityText.TryPercent(text).Ok);
        Assert.False(QuantityText.TryNumber(text).Ok);
        Assert.False(QuantityText.TryCount(text).Ok);
    }

    [Theory]
    [InlineData("24", 24, null)]
    [InlineData("1,000", 1000, null)]
    [InlineData("024", null, QuantityFault.LeadingZero)]
    [InlineData("2.5", null, QuantityFault.NotWhole)]
    [InlineData("24 rolls", null, QuantityFault.MoreThanAQuantity)]
    [InlineData("-1", null, QuantityFault.Negative)]
    [InlineData("9999999", null, QuantityFault.TooManyDigits)]
    public void Count_IsBare(string text, int? count, QuantityFault? fault) =>
        Assert.Equal((count, fault), (QuantityText.TryCount(text).Value, QuantityText.TryCount(text).Fault));

    /// <summary>Oracle: a general units package (UnitsNet), which computes in doubles: 1e-12 relative is its own rounding.</summary>
    [Fact]
    public void Factors_AgreeWithAGeneralUnitsPackage() => Gen.Double[0.001, 9999].Select(value => Math.Round(value, 3)).Sample(value =>
    {
        var number = NumberText.Exact(value);
        Near(UnitsNet.Mass.From(value, MassUnit.Ounce).Grams, QuantityText.TryMass(number + " oz").Value!.Value.Grams);
        Near(UnitsNet.Mass.From(value, MassUnit.Pound).Grams, QuantityText.TryMass(number + " lb").Value!.Value.Grams);
        Near(UnitsNet.Mass.From(value, MassUnit.Milligram).Grams, QuantityText.TryMass(number + " mg").Value!.Value.Grams);
        Near(UnitsNet.Length.From(value, LengthUnit.Inch).Meters, QuantityText.TryLength(number + " in").Value!.Value.Metres);
        Near(UnitsNet.Length.From(value, LengthUnit.Foot).Meters, QuantityText.TryLength(number + " ft").Value!.Value.Metres);
        Near(UnitsNet.Volume.From(value, VolumeUnit.Milliliter).Liters, QuantityText.TryVolume(number + " ml").Value!.Value.Litres);
        Near(UnitsNet.Duration.From(value, DurationUnit.Day).Minutes, QuantityText.TryDuration(number + " d").Value!.Value.Minutes);
        Near(UnitsNet.Duration.From(value, DurationUnit.Second).Minutes, QuantityText.TryDuration(number + " s").Value!.Value.Minutes);
        Near(
            UnitsNet.Temperature.From(value, TemperatureUnit.DegreeFahrenheit).Kelvins,
            QuantityText.TryTemperature(number + " F").Value!.Value.Kelvins);
    });

    [Fact]
    public void ExactDigits_ReadBackToTheSameBits() => Gen.Double[-1e9, 1e9].Where(value => Math.Abs(value) > 1e-7).Sample(value =>
        Assert.Equal(value, QuantityText.TryTemperature(NumberText.Exact(value) + " C").Value!.Value.Celsius));

    [Theory]
    [InlineData(1e-5, "0.00001")]
    [InlineData(-1.5e-7, "-0.00000015")]
    [InlineData(1e21, "1000000000000000000000")]
    [InlineData(-0.0, "0")]
    [InlineData(1.23456789e-20, "0.000000000000000000012345")]
    [InlineData(-1e-60, "0")]
    public void ExactDigits_HaveNoExponent(double value, string text) => Assert.Equal(text, NumberText.Exact(value));

    [Fact]
    public void NoText_MakesTheReaderThrow() => Gen.String[Gen.Char[Letters], 0, 12].Sample(text =>
    {
        Assert.NotEqual(QuantityText.TryMass(text).Ok, QuantityText.TryMass(text).Fault is not null);
        Assert.NotEqual(QuantityText.TryTemperature(text).Ok, QuantityText.TryTemperature(text).Fault is not null);
        Assert.NotEqual(QuantityText.TryDuration(text).Ok, QuantityText.TryDuration(text).Fault is not null);
        Assert.NotEqual(QuantityText.TryLength(text).Ok, QuantityText.TryLength(text).Fault is not null);
        Assert.NotEqual(QuantityText.TryCount(text).Ok, QuantityText.TryCount(text).Fault is not null);
    });

    private const string Letters = "0123456789.,:-+/°½ eEgkCFmhinlboz%xé\u2212\u00a0";

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, 1e-12 * Math.Max(1, Math.Abs(expected)));
}
