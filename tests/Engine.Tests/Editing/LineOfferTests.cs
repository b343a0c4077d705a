using Doughwright.Engine.Editing;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Editing;

/// <summary>What a list under a line offers is what the line would be.</summary>
public class LineOfferTests
{
    private static readonly Recipe Rolls = RecipeText.Read(Texts.PotatoRolls).Recipe!;

    public static TheoryData<string> Typed => ["30 g sunf", "bu", "butter 50 g", "oliv 5 %", "sug", "2 tbsp hon", "60 g rye", "15 g pota", "cinn 2 g, ground", "m"];

    [Theory]
    [MemberData(nameof(Typed))]
    public void Offer_IsUnderstoodOnceItIsTaken_AndBringsWhatItSays(string typed)
    {
        var offers = LineOffers.For(Rolls, "dough", typed);
        Assert.NotEmpty(offers);
        foreach (var offer in offers.Where(offer => offer is { IsThere: false, Line: not null }))
        {
            var done = Assert.IsType<EditedText.Changed>(Editor.Carry(Texts.PotatoRolls, recipe => LineEdits.Add(recipe, "dough", offer.Typed)));
            var added = Formula.Balance(RecipeText.Read(done.Text).Recipe!, Larder.Shipped).FindComponent("dough")!.Lines[^1];
            Assert.Equal(offer.Line!.Mass.Grams, added.Mass.Grams, 9);
            Assert.Equal(offer.Ingredient?.Id, added.Ingredient?.Id);
        }
    }

    /// <summary>A name that is typed in full is offered, however little of it is typed yet.</summary>
    [Theory]
    [InlineData("sunflower oil")]
    [InlineData("dark rye flour")]
    [InlineData("honey")]
    [InlineData("whole milk")]
    public void Name_IsOfferedFromItsFourthLetterOn(string name)
    {
        for (var letters = 4; letters <= name.Length; letters++)
        {
            var row = Larder.Shipped.Find(name, []).Ingredient!;
            var found = LineOffers.For(Rolls, "wash", $"30 g {name[..letters].Trim()}", most: letters < 8 ? 40 : 6);
            Assert.Contains(found, offer => offer.Ingredient?.Id == row.Id);
        }
    }

    [Fact]
    public void AmountThatStandsInFront_StaysThere_AndSoDoesWhatFollowsTheComma()
    {
        Assert.StartsWith("30 g honey", LineOffers.For(Rolls, "dough", "30 g hone")[0].Typed, StringComparison.Ordinal);
        Assert.StartsWith("honey 30 g", LineOffers.For(Rolls, "dough", "hone 30 g")[0].Typed, StringComparison.Ordinal);
        Assert.EndsWith(", soft", LineOffers.For(Rolls, "wash", "30 g butte, soft")[0].Typed, StringComparison.Ordinal);
    }

    [Fact]
    public void Part_IsOffered_UnlessItWouldGoIntoItself()
    {
        var offer = LineOffers.For(Rolls, "wash", "sca")[0];
        Assert.Equal(("scald", "scald"), (offer.Part, offer.Typed));
        Assert.Equal(180, offer.Line!.Mass.Grams, 9);
        Assert.DoesNotContain(LineOffers.For(Rolls, "scald", "dou"), one => one.Part == "dough");
    }

    [Fact]
    public void LineThatIsThere_IsSaid_WithWhatItWeighs()
    {
        var offer = LineOffers.For(Rolls, "dough", "60 g butter")[0];
        Assert.True(offer.IsThere);
        Assert.Equal(50, offer.Line!.Mass.Grams, 9);
    }

    [Theory]
    [InlineData("")]
    [InlineData("30 g")]
    [InlineData("30 g ")]
    [InlineData("qqqzzz")]
    [InlineData(", , ,")]
    public void NothingOfAName_OffersNothing(string typed) => Assert.Empty(LineOffers.For(Rolls, "dough", typed));

    [Fact]
    public void NothingIsTakenUnasked_WhateverIsTyped() => CsCheck.Check.Sample(CsCheck.Gen.String, typed =>
    {
        var offers = LineOffers.For(Rolls, "dough", typed);
        Assert.All(offers, offer => Assert.NotEmpty(offer.Typed));
    }, iter: 300);
}
