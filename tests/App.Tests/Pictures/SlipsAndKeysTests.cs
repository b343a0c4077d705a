using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Keys;
using Doughwright.Publishing.Pictures.Slips;

namespace Doughwright.App.Tests.Pictures;

public class SlipsAndKeysTests
{
    [Fact]
    public void Slips_LieOnTheScaleOfTheStrips()
    {
        var (home, away) = (DemoRuns.Of("potato-rolls", "home"), DemoRuns.Of("potato-rolls", "mountain"));
        var drawn = new Drawn(SlipsPicture.Draw(home, away, "Ropewalk", "Mountain", PictureSamples.Metric, "s", Duration.FromMinutes(553)));
        var mix = (From: home.FindStep("mix")!.Start!.Value.Minutes, To: away.FindStep("mix")!.Start!.Value.Minutes);
        var wanted = $"M{Svg.Number(6 + (mix.From * 2))} 4L{Svg.Number(6 + (mix.From * 2))} 10L{Svg.Number(6 + (mix.To * 2))} 64L{Svg.Number(6 + (mix.To * 2))} 70";
        Assert.Contains(wanted, drawn.OfClass("slip").Select(slip => slip.Attribute("d")!.Value));
        Assert.Contains("Mix", drawn.Description, StringComparison.Ordinal);
        Assert.Contains("Ready", drawn.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Slips_FollowAFoldedStrip()
    {
        var run = DemoRuns.Of("potato-rolls", "home");
        var drawn = new Drawn(SlipsPicture.Draw(run, run, "a", "b", PictureSamples.Metric, "s", minutes => 100 + (minutes / 10), minutes => 100 + (minutes / 10)));
        Assert.All(drawn.OfClass("slip"), slip => Assert.Matches(@"^M(\d+(\.\d)?) 4L\1 10L\1 64L\1 70$", slip.Attribute("d")!.Value));
        Assert.All(drawn.Texts, text => Assert.EndsWith("same", text, StringComparison.Ordinal));
    }

    [Fact]
    public void WarmthKey_GoesFromColdToHot()
    {
        var key = WarmthKey.Of(PictureSamples.Metric);
        Assert.Equal(("4\u00a0°C", "220\u00a0°C"), (key.Coldest, key.Hottest));
        Assert.Equal(15, key.Chips.Distinct().Count());
        Assert.Equal("39\u00a0°F", WarmthKey.Of(PictureSamples.Us).Coldest);
    }

    [Fact]
    public void Marks_DifferByShape_AndCarryTheirNumber()
    {
        var marks = Enum.GetValues<MarkShape>().Select(shape => FindingMark.Draw(shape, 12)).ToList();
        Assert.Equal(4, marks.Distinct().Count());
        Assert.All(marks, mark => Assert.Equal("12", new Drawn(mark).Root.Value));
    }
}
