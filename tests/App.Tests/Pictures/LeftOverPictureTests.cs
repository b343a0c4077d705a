using System.Globalization;
using System.Xml.Linq;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Swaps;

namespace Doughwright.App.Tests.Pictures;

/// <summary>What a swap leaves over, drawn.</summary>
public class LeftOverPictureTests
{
    [Fact]
    public void Bars_AreAsLongAsWhatTheyShow_EachToItsSide()
    {
        var bars = Bars(Residual(3, -1.5, 0.75, 0));
        Assert.Equal(3, bars.Length);
        var zero = bars[0].Left;
        Assert.Equal(zero, bars[1].Left + bars[1].Width, 0.15);
        Assert.Equal(zero, bars[2].Left, 0.15);
        Assert.Equal(bars[0].Width / 2, bars[1].Width, 0.15);
        Assert.Equal(bars[0].Width / 4, bars[2].Width, 0.15);
    }

    [Fact]
    public void Little_LooksLittle() => Assert.True(Bars(Residual(0.2, 0, 0, 0))[0].Width < Bars(Residual(2, 0, 0, 0))[0].Width / 5);

    [Theory]
    [InlineData(0.0, false)]
    [InlineData(0.04, false)]
    [InlineData(-0.05, true)]
    public void NoPicture_WhereNothingIsLeft(double water, bool drawn) => Assert.Equal(drawn, LeftOverPicture.SaysMore(Residual(water, 0, 0, 0)));

    [Fact]
    public void WhatIsNotKnown_HasNoBar_AndSaysSo()
    {
        var picture = XElement.Parse(LeftOverPicture.Draw(new(null, Percent.FromValue(1), null, Percent.FromValue(1), null), "Dough", PictureSamples.Metric, "l"));
        Assert.Equal(2, picture.Descendants().Count(part => part.Name.LocalName == "rect"));
        Assert.Equal(2, picture.Descendants().Count(part => part.Name.LocalName == "text" && part.Value == "not known"));
    }

    /// <summary>At the larger type of a phone, with the longest figures.</summary>
    [Theory]
    [InlineData(12.5, -12.5)]
    [InlineData(-60, 60)]
    [InlineData(0.1, -0.1)]
    public void Words_StayInThePicture_AndApart(double water, double fat)
    {
        var picture = XElement.Parse(LeftOverPicture.Draw(Residual(water, -water, fat, 0), "Dough", PictureSamples.Metric, "l"));
        var rows = picture.Descendants().Where(part => part.Name.LocalName == "text").GroupBy(part => (string)part.Attribute("y")!);
        foreach (var row in rows)
        {
            var spans = row.Select(Span).OrderBy(span => span.Left).ToArray();
            Assert.All(spans, span => Assert.InRange(span.Left, 0, span.Right));
            Assert.All(spans, span => Assert.InRange(span.Right, 0, 520));
            Assert.All(spans.Zip(spans.Skip(1)), pair => Assert.True(pair.First.Right < pair.Second.Left));
        }
    }

    private static (double Left, double Right) Span(XElement text)
    {
        var lettering = (string?)text.Attribute("class") switch { "hr" => Lettering.Axis, "dt" => Lettering.Figure, _ => Lettering.Name };
        var (x, width) = (Number(text, "x"), lettering.WidthOf(text.Value));
        return (string?)text.Attribute("text-anchor") == "end" ? (x - width, x) : (x, x + width);
    }

    private static (double Left, double Width)[] Bars(SwapResidual residual) =>
    [
        .. XElement.Parse(LeftOverPicture.Draw(residual, "Dough", PictureSamples.Metric, "l")).Descendants()
            .Where(part => part.Name.LocalName == "rect")
            .Select(part => (Number(part, "x"), Number(part, "width"))),
    ];

    private static SwapResidual Residual(double water, double sugar, double fat, double salt) =>
        new(null, Percent.FromValue(water), Percent.FromValue(sugar), Percent.FromValue(fat), Percent.FromValue(salt));

    private static double Number(XElement part, string name) => double.Parse((string)part.Attribute(name)!, CultureInfo.InvariantCulture);
}
