using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Tests.Ingredients;

/// <summary>What says that it is free of something, or only stands for it, is never read as that very thing: people are hurt by it.</summary>
public class ExclusionTests
{
    public static TheoryData<string> Phrases =>
    [
        "gluten-free flour", "gluten free bread flour", "Gluten-Free Plain Flour", "glutenfree flour", "flour, gluten free", "flour free from gluten", "wheat-free flour",
        "vegan butter", "plant butter", "plant-based butter", "dairy free butter", "dairy-free milk", "lactose free milk", "lactose-free cream", "non-dairy milk",
        "vegan cream cheese", "butter alternative", "butter substitute", "milk alternative", "milk substitute", "egg substitute", "egg replacer", "egg-free mayonnaise",
        "vegan egg", "eggless custard", "nut free milk chocolate", "nut-free marzipan", "peanut free butter", "vegan honey", "sugar substitute", "soya free margarine",
        "salt substitute", "plant milk", "no egg pasta", "flour without gluten", "vegan white chocolate", "dairyfree yogurt", "imitation butter",
    ];

    [Theory]
    [MemberData(nameof(Phrases))]
    public void Find_WhatExcludesSomething_IsNotKnown(string phrase)
    {
        var match = Larder.Shipped.Find(phrase, []);
        Assert.Equal((MatchKind.Unknown, null), (match.Kind, match.Ingredient));
        Assert.Empty(match.Candidates);
        Assert.Empty(match.Nearest);
        Assert.Empty(Larder.Shipped.Search(phrase));
    }

    [Theory]
    [InlineData("flour", "gluten free")]
    [InlineData("plain flour", "gluten-free, sifted")]
    [InlineData("butter", "vegan")]
    [InlineData("butter", "plant-based")]
    [InlineData("milk", "lactose free")]
    [InlineData("milk chocolate", "dairy free")]
    public void Find_ConditionThatExcludes_IsNotKnown(string name, string condition) =>
        Assert.Null(Larder.Shipped.Find(name, [condition]).Ingredient);

    [Theory]
    [InlineData("aluminium-free baking powder", "baking-powder-phosphate")]
    [InlineData("fat-free yogurt", "yogurt-skim")]
    [InlineData("fat free Greek yogurt", "yogurt-greek-nonfat")]
    [InlineData("non-fat dry milk", "milk-powder-skim")]
    [InlineData("free-range eggs", "egg-whole")]
    [InlineData("oat milk", "oat-milk")]
    public void Find_RowThatBearsTheName_IsFound(string name, string id) => Assert.Equal(id, Larder.Shipped.Find(name, []).Ingredient?.Id);

    [Fact]
    public void Find_OwnRow_MustSayWhatItExcludes()
    {
        var butter = Larder.Shipped.WithId("butter-unsalted")!;
        var spread = Larder.Shipped.With([butter with { Id = "own-butter", Name = "butter" }, butter with { Id = "own-spread", Name = "vegan butter" }]);
        Assert.Equal("own-butter", spread.Find("butter", []).Ingredient?.Id);
        Assert.Equal("own-spread", spread.Find("vegan butter", []).Ingredient?.Id);
        Assert.Null(spread.Find("butter", ["dairy-free"]).Ingredient);
    }
}
