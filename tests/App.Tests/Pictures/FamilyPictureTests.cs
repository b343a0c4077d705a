using Doughwright.Publishing.Pictures.Family;

namespace Doughwright.App.Tests.Pictures;

/// <summary>The family line: a laid rope with a bar for each kept state, and a yarn for each offshoot.</summary>
public class FamilyPictureTests
{
    private static readonly FamilyLine Rolls = new(
        "Potato rolls",
        [
            new("5 October", "first bake", false), new("12 October", "tight crumb", false), new("26 October", "dark crust", true),
            new("9 November", "came out right", false), new("12 November", "as it is now", true),
        ],
        [new("Seed rolls", "40 g sunflower seed", 3), new("Potato tin loaf", "Make: one loaf", 1.5)]);

    [Theory]
    [InlineData("wide")]
    [InlineData("tall")]
    public void Line_IsAsApproved(string which)
    {
        var svg = which == "wide" ? FamilyPicture.Wide(Rolls, PictureSamples.Metric, "f") : FamilyPicture.Tall(Rolls, PictureSamples.Metric, "f");
        Golden.Check("picture-family-" + which, new Drawn(svg).Root.ToString().ReplaceLineEndings("\n") + "\n");
    }

    [Fact]
    public void EveryKeptState_HasItsBar_AndThePickedOnesAreYours()
    {
        foreach (var drawn in new[] { new Drawn(FamilyPicture.Wide(Rolls, PictureSamples.Metric, "f")), new Drawn(FamilyPicture.Tall(Rolls, PictureSamples.Metric, "f")) })
        {
            Assert.Equal(3, drawn.OfClass("knot").Count(knot => knot.Attribute("class")!.Value == "knot"));
            Assert.Equal(2, drawn.OfClass("pickd").Count());
            // Two strands for the rope and two for each offshoot.
            Assert.Equal(2, drawn.OfClass("yarn").Count());
            Assert.Equal(4, drawn.OfClass("offshoot").Count());
            Assert.Equal("Family line of Potato rolls", drawn.Title);
            Assert.Equal(
                "States in order: 5 October (first bake), 12 October (tight crumb), 26 October (dark crust), 9 November (came out right) and 12 November (as it is now). "
                    + "Seed rolls leaves at 9 November. Potato tin loaf leaves after 12 October.",
                drawn.Description);
        }
    }

    /// <summary>However many were kept, no name is laid over another, and those that the page is about have theirs.</summary>
    [Fact]
    public void ManyStates_KeepTheNamesOfThePicked()
    {
        var many = Rolls with { Knots = [.. Enumerable.Range(1, 60).Select(day => new FamilyKnot($"{day} March", "a long name that was given to it", day is 7 or 60))] };
        var drawn = new Drawn(FamilyPicture.Wide(many, PictureSamples.Metric, "f"));
        Assert.Equal(60, drawn.OfClass("knot").Count());
        string[] texts = [.. drawn.All("text").Select(text => text.Value)];
        Assert.Contains("7 March", texts);
        Assert.Contains("60 March", texts);
        Assert.InRange(texts.Count(text => text.EndsWith("March", StringComparison.Ordinal)), 4, 20);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.25, 1)]
    [InlineData(0.5, 0)]
    [InlineData(0.75, -1)]
    [InlineData(3.25, 1)]
    public void Wave_GoesOnceRound(double turns, double height) => Assert.Equal(height, Yarn.Wave(turns), 12);

    [Fact]
    public void NamesOfAnyOrigin_AreText()
    {
        var harm = new FamilyLine("<script>", [new("<b>", "</svg><script>alert(1)</script>", true)], [new("\"><img>", "&", 0)]);
        foreach (var svg in new[] { FamilyPicture.Wide(harm, PictureSamples.Metric, "f"), FamilyPicture.Tall(harm, PictureSamples.Metric, "f") })
        {
            Assert.DoesNotContain("<script>", svg, StringComparison.Ordinal);
            Assert.DoesNotContain("<img>", svg, StringComparison.Ordinal);
        }
    }
}
