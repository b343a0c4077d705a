using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Strips.Geometry;
using Doughwright.Publishing.Pictures.Strips.Labels;
using Doughwright.Publishing.Pictures.Strips.Plans;
using Picture = Doughwright.Publishing.Pictures.Strips.Strips;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>Thickness is mass, places are minutes, and long waits are folded.</summary>
public class StripGeometryTests
{
    /// <summary>Half a unit in the last place of every figure in the markup, of four figures.</summary>
    private const double Drawn = 0.25;

    /// <summary>461 + 180 + 160 = 801, measured in the picture: nose, both strands, dough.</summary>
    [Theory]
    [InlineData("home", true)]
    [InlineData("home", false)]
    [InlineData("mountain", true)]
    [InlineData("mountain", false)]
    public void Strands_AddUpToTheDough(string kitchen, bool wide)
    {
        var rehearsal = Rehearsed.Of("potato-rolls", kitchen);
        var plan = Plan.Of(rehearsal, rehearsal.Course());
        var layout = wide ? WideLayout.Of(plan, null) : TallLayout.Of(plan, TallItems.Of(plan, new(plan, StripCases.Metric)).Sum(item => item.Height));
        var strip = wide ? StripCases.Wide(rehearsal) : StripCases.Tall(rehearsal);
        var mix = plan.Mix!;
        var (before, start, end) = (layout.Frame.Time.Place(mix.Start - 25), layout.Frame.Time.Place(mix.Start), layout.Frame.Time.Place(mix.EndOrStart + 1));
        // The last rectangles and bands of a strip are its rails; strands are those that end with the mix.
        var bands = strip.OfClass("strand").Where(path => !DrawnStrip.Classes(path).Contains("core")).Where(path => Covers(path, before, wide) && Covers(path, start + 1, wide)).ToArray();
        Assert.Equal(2, bands.Length);
        var core = strip.OfClass("core").First();
        var parts = bands.Sum(band => DrawnStrip.Thickness(band, before, wide)) + DrawnStrip.Thickness(core, start, wide);
        Assert.Equal(DrawnStrip.Thickness(core, end, wide), parts, Drawn);
        Assert.Equal(801 * layout.Frame.PerGram, parts, Drawn);
    }

    /// <summary>Drawn as high as the house wants it: doubled, the dough of any recipe stands 100 to 130 high, and 80 to 95 in the tall strip.</summary>
    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void DoubledDough_HasItsHeight(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        var plan = Plan.Of(rehearsal, rehearsal.Course());
        Assert.InRange(2 * plan.DoughGrams * WideLayout.Of(plan, null).Frame.PerGram, 100, 130);

        // What hangs over the risen dough takes some of the narrow picture's breadth.
        var hangsOver = plan.Body is { } body && plan.Strands.Any(strand => strand.JoinStart > body.Start);
        Assert.InRange(2 * plan.DoughGrams * TallLayout.Of(plan, 0).Frame.PerGram, hangsOver ? 60 : 80, 95);
    }

    [Fact]
    public void Places_GoBothWays_AndOnwards()
    {
        var scale = new TimeScale(6, 2, [new(30, 700), new(900, 1500)]);
        var before = double.NegativeInfinity;
        for (var minute = -20.0; minute < 2000; minute += 7.3)
        {
            var place = scale.Place(minute);
            Assert.True(place > before);
            Assert.Equal(minute, scale.Minute(place), 1e-6);
            before = place;
        }

        Assert.Equal(6 + 60, scale.Place(30));
        Assert.Equal(6 + 60 + FoldedWait.Drawn, scale.Place(700));
        Assert.Equal(scale.Place(700) + 400 + FoldedWait.Drawn, scale.Place(1500));
    }

    [Theory]
    [InlineData("potato-rolls", 0)]
    [InlineData("tin-loaf", 0)]
    [InlineData("hearth-loaf", 1)]
    [InlineData("country-loaf", 1)]
    public void OnlyALongDay_IsFolded(string recipe, int folds)
    {
        var rehearsal = Rehearsed.Of(recipe);
        var plan = Plan.Of(rehearsal, rehearsal.Course());
        var waits = LongWaits.Of(plan);
        Assert.Equal(folds, waits.Count);
        Assert.Equal(2 * folds, StripCases.Wide(rehearsal).OfClass("fold").Count());
        Assert.Equal(2 * folds, StripCases.Tall(rehearsal).OfClass("fold").Count());
        Assert.All(waits, wait => Assert.DoesNotContain(plan.Steps, step => (step.Start > wait.From && step.Start < wait.To) || (step.End > wait.From && step.End < wait.To)));
        Assert.All(waits, wait => Assert.Contains(StripCases.Metric.Text(Duration.FromMinutes(wait.Minutes)), StripCases.Wide(rehearsal).Says, StringComparison.Ordinal));
    }

    /// <summary>Two strips on one span have the same minute at the same place.</summary>
    [Fact]
    public void TwoStrips_ShareOneScale()
    {
        var (home, cottage) = (Rehearsed.Of("potato-rolls"), Rehearsed.Of("potato-rolls", "winter-cottage"));
        var span = Duration.FromMinutes(Math.Max(Span(home).Minutes, Span(cottage).Minutes));
        var (one, other) = (Picture.Places(home, home.Course(), span), Picture.Places(cottage, cottage.Course(), span));
        Assert.All(Enumerable.Range(0, 400), minute => Assert.Equal(one(minute), other(minute), 1e-9));
        Assert.Equal(6 + (1106 * 60 / (span.Minutes + 11)), one(60), 1e-9);
        static Duration Span(Engine.Rehearsals.Rehearsal rehearsal) => Picture.Span(rehearsal, rehearsal.Course());
    }

    [Fact]
    public void SpanThatIsTooShort_IsRefused()
    {
        var rehearsal = Rehearsed.Of("potato-rolls");
        Assert.Throws<ArgumentOutOfRangeException>(() => Picture.Wide(rehearsal, rehearsal.Course(), StripCases.Metric, new() { Id = "w", Span = Duration.FromMinutes(200) }));
    }

    [Fact]
    public void ThinnedLine_StaysWhereItWas()
    {
        var line = Enumerable.Range(0, 1000).Select(i => ((double)i, 40 * Math.Sin(i / 60.0))).ToArray();
        var thin = Thinning.Of(line);
        Assert.InRange(thin.Count, 3, 150);
        Assert.All(line, point =>
        {
            var after = Math.Min(Math.Max(1, thin.FindIndex(kept => kept.X >= point.Item1)), thin.Count - 1);
            var (a, b) = (thin[after - 1], thin[after]);
            Assert.Equal(point.Item2, a.Y + ((b.Y - a.Y) * (point.Item1 - a.X) / (b.X - a.X)), 2 * Thinning.Tolerance);
        });
    }

    private static bool Covers(System.Xml.Linq.XElement path, double place, bool wide)
    {
        var along = DrawnStrip.Points(path).Select(point => wide ? point.X : point.Y).ToArray();
        return along.Min() < place && place < along.Max();
    }
}
