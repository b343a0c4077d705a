using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Notes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Notes;

/// <summary>What a note says inside a recipe: its values and pictures, and in words why one is not there.</summary>
public class NoteTellerTests
{
    private static readonly Rehearsal Home = Rehearser.Rehearse(Samples.Recipe, Larder.Shipped);

    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    private static ToldNote Tell(string prose, string? step, Rehearsal here) =>
        NoteTeller.OnTheDesk(here, Voice).Tell(NoteText.Read("# T\n\n" + prose).Note, "t", step, "n");

    private static string Said(string prose, string? step = "proof", Rehearsal? here = null) =>
        string.Concat(Assert.IsType<ToldBlock.Words>(Assert.Single(Tell(prose, step, here ?? Home).Blocks)).Pieces.Select(piece => piece.Text)).Replace('\u00a0', ' ');

    [Theory]
    [InlineData("[this step]: [this time], [this cue].", "proof", "Final proof: 1 h 10 min, springs back slowly, trembles when the tray is shaken.")]
    [InlineData("[this part] [this weight] at [this part temperature], then [this temperature]", "scald", "Scald 180 g at 73 °C, then 28 °C")]
    [InlineData("[this time] and [bulk time]", "bulk", "1 h 45 min and 1 h 45 min")]
    public void Names_BecomeTheValuesOfTheStep(string prose, string step, string said) => Assert.Equal(said, Said(prose, step));

    /// <summary>60 degrees Celsius are 140 degrees Fahrenheit (NIST SP 811, B.8).</summary>
    [Fact]
    public void AFixedTemperature_StandsInTheMeasuresOfTheReader()
    {
        Assert.Equal("Near 60 °C", Said("Near [60 C]"));
        var us = NoteTeller.OnTheDesk(Home, new(Words.Shipped, MeasureSystem.Us)).Tell(NoteText.Read("# T\n\nNear [60 C]").Note, "t", null, "n");
        Assert.Equal("Near 140 °F", string.Concat(Assert.IsType<ToldBlock.Words>(Assert.Single(us.Blocks)).Pieces.Select(piece => piece.Text)).Replace('\u00a0', ' '));
    }

    [Fact]
    public void WhatTheRecipeDoesNotHave_IsSaidWithTheReason()
    {
        Assert.Equal("(not worked out here, because nothing in this recipe is called “poolish time”)", Said("[poolish time]"));
        Assert.Equal("(not worked out here, because “this time” has a value only at a step that links to this note)", Said("[this time]", null));
        Assert.Equal("(not worked out here, because the step does not say what is seen when it is done)", Said("[this cue]", "shape"));
    }

    /// <summary>A step that never ends in a cold room has no time, and a part with an unknown weight no weight.</summary>
    [Fact]
    public void WhatIsNotKnown_IsSaidWithTheReason()
    {
        var cold = Rehearser.Rehearse(Samples.Recipe, Larder.Shipped, new() { Kitchen = Samples.Recipe.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(30)) } });
        Assert.Contains("because the step never ends in this kitchen", Said("[this time]", "mash", cold), StringComparison.Ordinal);
        var blank = Samples.Recipe with { Components = [.. Samples.Recipe.Components.Select(known => known.Id == "wash" ? known with { Lines = [.. known.Lines.Select(line => line with { Mass = null })] } : known)] };
        Assert.Contains("because a weight in it is not known", Said("[this weight]", "brush", Rehearser.Rehearse(blank, Larder.Shipped)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rise", "proof", 1)]
    [InlineData("rise", "scald", 1)]
    [InlineData("heat", "bake", 1)]
    [InlineData("balance", null, 1)]
    [InlineData("strip", null, 2)]
    public void Pictures_AreThoseOfTheRecipe(string what, string? step, int count)
    {
        var picture = Assert.IsType<ToldBlock.Picture>(Assert.Single(Tell($"[picture: {what}]", step, Home).Blocks));
        Assert.Equal(count, picture.Svg.Count);
        Assert.All(picture.Svg, svg => Assert.Contains("<title id=\"n-0", svg, StringComparison.Ordinal));
        Assert.NotEmpty(picture.Caption);
    }

    /// <summary>A picture of nothing is no picture: the note says what is missing.</summary>
    [Theory]
    [InlineData("rise")]
    [InlineData("heat")]
    [InlineData("strip")]
    public void WhatCannotBeDrawn_IsSaid(string what)
    {
        var bare = Rehearser.Rehearse(Samples.Recipe with { Steps = [] }, Larder.Shipped);
        Assert.StartsWith("No picture", Assert.IsType<ToldBlock.Absent>(Assert.Single(Tell($"[picture: {what}]", null, bare).Blocks)).Said, StringComparison.Ordinal);
    }

    [Fact]
    public void ANoteThatIsTooLong_IsSaidToBe() =>
        Assert.IsType<ToldBlock.Absent>(Assert.Single(NoteTeller.OnTheDesk(Home, Voice).Tell(null, "long", "mix", "n").Blocks));
}
