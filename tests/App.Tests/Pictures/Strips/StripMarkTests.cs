using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>A mark of a finding stands where its thing is; what has no time stands in a row of its own that says so.</summary>
public class StripMarkTests
{
    [Theory]
    [InlineData("potato-rolls", "winter-cottage", "steps.boil")]
    [InlineData("potato-rolls", "mountain", "steps.boil")]
    [InlineData("pilot-ring", "summer", "steps.butter")]
    [InlineData("night-boat-rye", "summer", "steps.wake")]
    public void AMark_StandsAtTheTimeOfItsStep(string recipe, string kitchen, string place)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        var layout = WideLayout.Of(Plan.Of(rehearsal, rehearsal.Course()), null);
        var strip = StripCases.Wide(rehearsal, [new(1, MarkShape.Note, ""), new(2, MarkShape.Note, ""), new(3, MarkShape.Note, place)]);
        var mark = strip.Marks.ElementAt(2);
        var start = layout.Frame.Time.Place(layout.Plan.Find(place["steps.".Length..])!.Start);

        // Within the width of a mark; or behind the step's own name, where that hangs from its upright.
        var name = strip.Texts.Where(text => text.Box.Left >= start && text.Box.Left < start + 6 && text.Box.Top < mark.Bottom && text.Box.Bottom > mark.Top).Select(text => text.Box.Right).DefaultIfEmpty(start).Max();
        Assert.InRange((mark.Left + mark.Right) / 2, start - 0.1, name + 24);
    }

    /// <summary>A finding of the poolish, which begins before the fold, stands before the fold.</summary>
    [Theory]
    [InlineData("home")]
    [InlineData("classroom")]
    [InlineData("mountain")]
    [InlineData("winter-cottage")]
    [InlineData("summer")]
    public void AMarkOfWhatBeginsBeforeAFold_StandsBeforeIt(string kitchen)
    {
        var rehearsal = Rehearsed.Of("hearth-loaf", kitchen);
        var strip = StripCases.Wide(rehearsal, [new(1, MarkShape.Risky, "parts.poolish.instant-yeast"), new(2, MarkShape.Note, ""), new(3, MarkShape.Note, "")]);
        var fold = strip.OfClass("fold").Select(slash => DrawnStrip.Points(slash).Min(point => point.X)).Min();
        Assert.InRange(strip.Marks.First().Right, 0, fold);
    }

    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void MarksOfTheWholeRecipe_StandUnderTheStrip_BehindTheirWords(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        StripMark[] marks = [new(1, MarkShape.Note, ""), new(2, MarkShape.Wrong, "home.oven"), new(3, MarkShape.Missing, "make")];
        var (plain, plainTall) = (StripCases.Wide(rehearsal), StripCases.Tall(rehearsal));
        foreach (var (strip, without) in new[] { (StripCases.Wide(rehearsal, marks), plain), (new(Doughwright.Publishing.Pictures.Strips.Strips.Tall(rehearsal, rehearsal.Course(), StripCases.Metric, new() { Id = "t", Marks = marks })), plainTall) })
        {
            var words = Assert.Single(strip.Texts, text => text.Text == "The whole recipe:").Box;
            Assert.Equal(3, strip.Marks.Count());
            Assert.All(strip.Marks, mark => Assert.True(mark.Top >= without.Height && mark.Left > words.Right && mark.Top < words.Bottom && mark.Bottom > words.Top, $"{mark} beside {words}"));
        }
    }

    /// <summary>What the strip cannot draw is no finding of the whole recipe.</summary>
    [Fact]
    public void MarksOfWhatHasNoTimeHere_SaySo()
    {
        var summer = Rehearsed.Of("potato-rolls", "summer");
        Assert.Null(summer.FindStep("mix")!.Start);
        var strip = StripCases.Wide(summer, [new(1, MarkShape.Risky, "steps.mix"), new(2, MarkShape.Note, "")]);
        var words = Assert.Single(strip.Texts, text => text.Text == "Not drawn here:").Box;
        Assert.InRange(strip.Marks.First().Left, words.Right, words.Right + 10);
        Assert.True(strip.Marks.Last().Right < words.Left);
    }

    /// <summary>On the phone a mark stands in the column of what is written, never among the heads of the columns.</summary>
    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void OnThePhone_NoMarkStandsAmongTheHeads(string recipe, string kitchen) =>
        Assert.All(StripCases.Of(Rehearsed.Of(recipe, kitchen)).Where((_, i) => i % 2 == 1), strip => Assert.All(strip.Marks, mark => Assert.True(mark.Top > TallLayout.Top - 8, $"{mark}")));
}
