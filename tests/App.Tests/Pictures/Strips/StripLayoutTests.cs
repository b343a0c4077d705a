namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>No text over another, none outside, no mark over a text: for every recipe in every kitchen, both directions and both measures.</summary>
public class StripLayoutTests
{
    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void Labels_KeepApart(string recipe, string kitchen) => Assert.All(StripCases.Of(Rehearsed.Of(recipe, kitchen)), StripCases.KeepsApart);

    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void Labels_StayOffUprights(string recipe, string kitchen) => StripCases.StaysOffUprights(StripCases.Wide(Rehearsed.Of(recipe, kitchen)));

    /// <summary>With the marks of findings and without: what a mark takes away moves what comes after it.</summary>
    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void Labels_StayOffStrands(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        Assert.All(StripCases.Of(rehearsal).Select((strip, i) => (strip, i)), each => StripCases.StaysOffStrands(each.strip, wide: each.i % 2 == 0));
        StripCases.StaysOffStrands(StripCases.Wide(rehearsal), wide: true);
        StripCases.StaysOffStrands(StripCases.Tall(rehearsal), wide: false);
    }

    /// <summary>How warm a part is when it is taken up is among what a strip is drawn for.</summary>
    [Theory]
    [InlineData("home")]
    [InlineData("mountain")]
    [InlineData("winter-cottage")]
    public void APartThatRisesIntoAnother_StillSaysHowWarmItGoesIn(string kitchen)
    {
        var strip = StripCases.Wide(Rehearsed.Of("night-boat-rye", kitchen));
        Assert.Equal(2, strip.OfClass("key").Count(text => text.Value.EndsWith("°C", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void EveryMark_IsDrawnOnce(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        var numbers = StripCases.MarksOf(rehearsal).Select(mark => mark.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.All(StripCases.Of(rehearsal), strip => Assert.Equal(numbers, strip.NumbersOfMarks));
    }

    [Fact]
    public void LabelsThatLieOverEachOther_AreFound()
    {
        var strip = new DrawnStrip("""<svg viewBox="0 0 100 50"><text class="sv" x="10" y="20">one</text><text class="sh" x="20" y="22">two</text></svg>""");
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => StripCases.KeepsApart(strip));
        var outside = new DrawnStrip("""<svg viewBox="0 0 100 50"><text class="sv" x="90" y="20">long words</text></svg>""");
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => StripCases.KeepsApart(outside));
        var crossed = new DrawnStrip("""<svg viewBox="0 0 100 50"><path class="strand" d="M0 40L40 0L44 0L4 40Z"/><text class="sv" x="10" y="20">one</text></svg>""");
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => StripCases.StaysOffStrands(crossed, wide: true));
    }

    /// <summary>What a reader of the rolls cannot do without stands on the wide strip.</summary>
    [Fact]
    public void TheRolls_SayWhatMatters()
    {
        var says = StripCases.Wide(Rehearsed.Of("potato-rolls")).Says;
        Assert.All(
            ["Potato", "Scald", "Straight in, 461\u00a0g", "Mix", "Bulk", "1\u00a0h 45\u00a0min", "Shape", "Final proof", "Bake", "Cool", "×2", "Fold", "Wash", "10 rolls", "Hands", "48\u00a0min", "Hob and oven", "170\u00a0°C fan", "at the tape on the bowl: 3:47\u00a0to\u00a04:14"],
            word => Assert.Contains(word, says, StringComparison.Ordinal));
    }

    /// <summary>A final proof is over when the dough says so: its growth is nowhere a goal.</summary>
    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void OneGrowthAtMost_AndOnlyOfABulk(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        var bulks = rehearsal.Steps.Count(step => step.Kind == Engine.Recipes.StepKind.Bulk);
        Assert.InRange(StripCases.Wide(rehearsal).Texts.Count(text => text.Text.StartsWith('×')), 0, bulks);
    }
}
