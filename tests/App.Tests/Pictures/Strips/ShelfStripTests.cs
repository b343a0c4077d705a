using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Picture = Doughwright.Publishing.Pictures.Strips.Strips;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>Rows of the shelf: one clock, every row ends at the right edge.</summary>
public class ShelfStripTests
{
    private const double Width = 690;

    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void EveryRow_EndsAtTheRightEdge(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        var row = Draw(rehearsal, hours: 24);
        var places = row.OfClass("strand").SelectMany(DrawnStrip.Points).Select(point => point.X).ToArray();
        if (rehearsal.Total is not { } total)
        {
            Assert.Empty(places);
            Assert.Empty(row.OfClass("hand"));
            return;
        }

        var start = Width - (total.Likely.Minutes * Width / (24 * 60));
        Assert.Equal(Width, places.Max(), 0.06);
        Assert.InRange(places.Min(), start - 0.06, start + (total.Likely.Minutes * Width / (24 * 60) / 2));
        Assert.All(row.OfClass("hand"), hand => Assert.InRange(DrawnStrip.At(hand, "x"), start - 0.06, Width));
    }

    [Fact]
    public void Hands_AreMarkedOneByOne()
    {
        // Peel, mash, scald, mix, fold, shape, brush.
        Assert.Equal(7, Draw(Rehearsed.Of("potato-rolls"), hours: 24).OfClass("hand").Count());
    }

    /// <summary>What began before the left edge is cut off there, not drawn beside the picture.</summary>
    [Fact]
    public void WhatIsLongerThanTheShelf_IsCutOff()
    {
        var row = Draw(Rehearsed.Of("hearth-loaf"), hours: 10);
        Assert.All(row.OfClass("strand").SelectMany(DrawnStrip.Points), point => Assert.InRange(point.X, -0.06, Width + 0.06));
        Assert.Contains(row.OfClass("strand").SelectMany(DrawnStrip.Points), point => point.X < 0.06);
    }

    [Fact]
    public void Nights_LieWhereTheyAre()
    {
        Assert.Empty(Draw(Rehearsed.Of("tin-loaf"), hours: 23).OfClass("night"));
        var night = Assert.Single(Nights(23).OfClass("night"));
        Assert.Equal(Width - (17.5 * Width / 23), DrawnStrip.At(night, "x"), 0.06);
        Assert.Equal(7.5 * Width / 23, DrawnStrip.At(night, "width"), 0.11);
        // A night that is half over at the left edge is drawn from there.
        var half = Assert.Single(Nights(12).OfClass("night"));
        Assert.Equal(0, DrawnStrip.At(half, "x"));
    }

    /// <summary>Nobody has seen how high a poolish stands, so its row says that it is drawn without gas.</summary>
    [Fact]
    public void RiseThatIsNotKnown_IsSaid()
    {
        Assert.Contains("not known, so it is drawn without gas: poolish", Draw(Rehearsed.Of("hearth-loaf"), hours: 24).Root.ToString(), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("without gas", Draw(Rehearsed.Of("potato-rolls"), hours: 24).Root.ToString(), StringComparison.Ordinal);
    }

    /// <summary>On one scale the heaviest row fills its height, and no row leaves it.</summary>
    [Fact]
    public void OneScale_FitsEveryRow()
    {
        var rehearsals = Rehearsed.Recipes.Select(recipe => Rehearsed.Of(recipe)).ToArray();
        var scale = Picture.MiniScale(rehearsals.Select(rehearsal => (rehearsal, rehearsal.Course())));
        var tops = rehearsals.Select(rehearsal => Draw(rehearsal, 24, scale).OfClass("strand").SelectMany(DrawnStrip.Points).Min(point => point.Y)).ToArray();
        Assert.All(tops, top => Assert.InRange(top, 0, 46));
        Assert.InRange(tops.Min(), 0, 12);
    }

    [Theory]
    [InlineData(23, 16)]
    [InlineData(8, 16)]
    [InlineData(48, 7)]
    public void Clock_StandsOverItsHours(int span, int ready)
    {
        var axis = new DrawnStrip(Picture.Axis(new() { Span = Duration.FromHours(span), ReadyAt = Duration.FromHours(ready) }, StripCases.Metric));
        Assert.Equal("true", axis.Root.Attribute("aria-hidden")!.Value);
        Assert.InRange(axis.Texts.Count(), 3, 14);
        Assert.All(axis.OfClass("hr"), figure =>
        {
            var clock = DrawnStrip.Number(figure.Value.Split(':')[0]);
            var beforeReady = (Width - DrawnStrip.At(figure, "x")) / Width * span;
            Assert.Equal(0, Math.IEEERemainder(ready - clock - beforeReady, 24), 0.01);
        });
        StripCases.KeepsApart(axis);
    }

    private static DrawnStrip Draw(Rehearsal rehearsal, int hours, double scale = 0.0205) => new(Picture.Mini(rehearsal, rehearsal.Course(), StripCases.Metric, new()
    {
        Id = "m",
        Span = Duration.FromHours(hours),
        PixelsPerGram = scale,
    }));

    private static DrawnStrip Nights(int hours) => new(Picture.Nights([new(Duration.FromHours(17.5), Duration.FromHours(10))], Duration.FromHours(hours)));
}
