using Doughwright.App.Desk.Drafting.Views;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>The lists under a line and under words say what they would put there.</summary>
public class OfferViewTests
{
    private static readonly Recipe Rolls = RecipeText.Read(File.ReadAllText(House.PathTo("demo", "recipes", "potato-rolls.yaml"))).Recipe!;

    private static Voice Voice => new(Words.Shipped, MeasureSystem.Metric);

    [Fact]
    public void Row_SaysWhatTheLineWouldBring()
    {
        var rows = OfferView.All(Rolls, "dough", "32 g sunflower oil", Voice);
        // 32 g on the 320 g of flour of this part.
        Assert.Contains(rows, row => row is { Name: "sunflower oil", Typed: "32 g sunflower oil" } && row.Brings.StartsWith("10.0\u00a0%, fat 32\u00a0g", StringComparison.Ordinal));
    }

    [Fact]
    public void RowWithoutAnAmount_SaysWhatAHundredGramsHold() =>
        Assert.StartsWith("in 100 g fat ", OfferView.All(Rolls, "wash", "butter", Voice)[0].Brings, StringComparison.Ordinal);

    [Fact]
    public void LastRow_TakesWhatTheLarderDoesNotKnow()
    {
        var last = OfferView.All(Rolls, "dough", "30 g harbour dust", Voice)[^1];
        Assert.Null(last.Typed);
        Assert.NotEmpty(last.Brings);
        Assert.All(OfferView.All(Rolls, "dough", "32 g sunflower oil", Voice), row => Assert.NotNull(row.Typed));
    }

    [Theory]
    [InlineData("Cover it, about ", "Cover it, about [", "")]
    [InlineData("about [bul", "about [bulk", "bulk")]
    [InlineData("about [ and more", "about [b and more", "b")]
    [InlineData("about [bulk time", "about [bulk time]", null)]
    [InlineData("no bracket", "no bracket.", null)]
    [InlineData("[bulk time] then", "[bulk time] then ", null)]
    [InlineData("[\n", "[\nx", null)]
    public void OpenBracket_IsFoundWhereTheCaretIs(string before, string typed, string? asked) => Assert.Equal(asked, LiveOfferView.Asked(before, typed));

    [Fact]
    public void LiveValue_IsOfferedWithWhatItReads_AndItsNameReadsThat()
    {
        var atHome = Rehearser.Rehearse(Formula.Balance(Rolls, Larder.Shipped), Larder.Shipped, Request.Home, lanes: 1);
        var offers = LiveOfferView.All(Rolls, atHome, "bulk", "bulk", Voice);
        Assert.Contains(offers, offer => offer.Words == "bulk time");
        Assert.All(offers, offer => Assert.Equal(offer.Reads, LiveProse.Of($"[{offer.Words}]", "bulk", atHome, Voice)));
        Assert.All(LiveOfferView.All(Rolls, atHome, null, "", Voice), offer => Assert.Equal(offer.Reads, LiveProse.Of($"[{offer.Words}]", null, atHome, Voice)));
    }
}
