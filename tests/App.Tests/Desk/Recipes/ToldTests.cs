using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>Sentences with figures in them.</summary>
public sealed class ToldTests
{
    private static readonly Voice Voice = new(
        new(new() { ["says"] = "{first} and {second}, then {first}.", ["holds"] = "It holds {told}.", ["drops"] = "One {gone}. Two {here}." }), MeasureSystem.Metric);

    [Fact]
    public void Figures_StandWhereTheirNamesStood()
    {
        var figure = new Fig("20 min", 20, "steps.bulk.minutes");
        var told = Told.Say(Voice, "says", ("first", figure), ("second", "words"));
        Assert.Equal("20 min and words, then 20 min.", told.Text);
        Assert.Equal(2, told.Pieces.OfType<Piece.Figure>().Count());
    }

    [Fact]
    public void Sentences_HoldSentences()
    {
        var inner = Told.Say(Voice, "says", ("first", new Fig("1")), ("second", new Piece.Cue("seen")));
        Assert.Equal("It holds 1 and seen, then 1..", Told.Say(Voice, "holds", ("told", inner)).Text);
    }

    [Fact]
    public void WhatIsEmpty_TakesItsSentenceWithIt_ButNothingToldDoesNot()
    {
        Assert.Equal("Two x.", Told.Say(Voice, "drops", ("gone", ""), ("here", "x")).Text);
        Assert.Equal("One . Two x.", Told.Say(Voice, "drops", ("gone", Told.Nothing), ("here", "x")).Text);
    }

    [Fact]
    public void AnAuthorsLetters_NeverPointIntoASentence() =>
        Assert.Equal("It holds \uFFFD0\uFFFD.", Told.Say(Voice, "holds", ("told", "\uE0000\uE001")).Text);
}
