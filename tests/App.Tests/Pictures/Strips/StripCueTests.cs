using System.Text.RegularExpressions;
using Doughwright.Publishing.Pictures.Strips.Labels;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>A cue stands there whole or not at all: half of "puffed up, not doubled" says something else. No figure is cut off, and no range is without its cue.</summary>
public partial class StripCueTests
{
    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void EveryCue_IsWhole_WithItsTimes(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        var plan = Plan.Of(rehearsal, rehearsal.Course());
        var words = new StripWords(plan, StripCases.Metric);
        DrawnStrip[] wide = [StripCases.Wide(rehearsal), StripCases.Of(rehearsal).First()];
        DrawnStrip[] tall = [StripCases.Tall(rehearsal), StripCases.Of(rehearsal).ElementAt(1)];
        Assert.All(CombMarks.Ending(WideLayout.Of(plan, null)), step => Assert.All(wide, strip => Assert.Contains(Cue(words, step), strip.Paragraphs)));
        Assert.All(plan.Steps.Where(step => step is { Start: >= 0, EndsByCue: true }), step => Assert.All(tall, strip => Assert.Contains(Cue(words, step), strip.Paragraphs)));
        Assert.All(wide.Concat(tall), strip => Assert.DoesNotContain(strip.OfClass("cue"), text => BareRange().IsMatch(text.Value) && !strip.Paragraphs.Any(told => told != text.Value && told.EndsWith(text.Value, StringComparison.Ordinal))));
    }

    /// <summary>A cue stands beside its comb or under it, in the order of time on every line.</summary>
    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void ACue_StandsAtItsComb(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        var layout = WideLayout.Of(Plan.Of(rehearsal, rehearsal.Course()), null);
        var strip = StripCases.Wide(rehearsal);
        foreach (var step in CombMarks.Ending(layout))
        {
            var (low, _, high) = CombMarks.Places(layout.Frame, step);
            var range = new StripWords(layout.Plan, StripCases.Metric).EndRange(step);
            var last = Assert.Single(strip.OfClass("cue"), text => text.Value.EndsWith(range, StringComparison.Ordinal));

            // A cue in several lines is held at one place.
            var lines = strip.OfClass("cue").Where(text => text.Attribute("x")!.Value == last.Attribute("x")!.Value).Select(text => text.Value).ToHashSet();
            var boxes = strip.Texts.Where(text => lines.Contains(text.Text)).Select(text => text.Box).ToList();
            Assert.True(boxes.Min(box => box.Left) <= high + 9 && boxes.Max(box => box.Right) >= low - 9, $"The cue of {step.Id} stands at {boxes[0]}, its comb from {low} to {high}.");
        }
    }

    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void NoFigure_IsCutOff(string recipe, string kitchen) => Assert.All(StripCases.Of(Rehearsed.Of(recipe, kitchen)), strip =>
        Assert.DoesNotContain(strip.Texts, text => text.Text.EndsWith('…') && text.Text.Any(char.IsDigit)));

    [Fact]
    public void ACueTooLongForThePhone_IsCutAtAComma_AndKeepsItsTimes()
    {
        var recipe = Rehearsed.Of("potato-rolls").Recipe;
        var cue = string.Join(", ", Enumerable.Range(0, 12).Select(i => $"puffed up, not doubled {(char)('a' + (i % 26))}"));
        var rehearsal = Rehearsed.In(recipe with { Steps = [.. recipe.Steps.Select(step => step with { Cue = cue })] });
        var tall = StripCases.Tall(rehearsal);
        StripCases.KeepsApart(tall);
        var told = string.Join(' ', tall.OfClass("cue").Select(text => text.Value));
        Assert.True(Ends().Count(told) == 2, told);
        Assert.DoesNotContain("…", string.Concat(StripCases.Wide(rehearsal).OfClass("cue").Select(text => text.Value)), StringComparison.Ordinal);
        Assert.Equal(2, told.Count(letter => letter == '…'));
    }

    private static string Cue(StripWords words, PlannedStep step) => words.Cue(step) is { } cue ? words.CueWithRange(cue, step) : words.EndRange(step);

    [GeneratedRegex(@"(?:up|not doubled [a-z])…: \d:\d\d\u00a0to\u00a0\d:\d\d")]
    private static partial Regex Ends();

    [GeneratedRegex(@"^\d+:\d\d\s")]
    private static partial Regex BareRange();
}
