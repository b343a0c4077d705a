using Doughwright.App.Desk.Asking;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Desk.Asking;

/// <summary>What the desk does for a person who changes the kitchen.</summary>
public sealed class KeepingTests : IDisposable
{
    private readonly Bench bench = new();

    public void Dispose() => bench.Dispose();

    [Fact]
    public void AnotherKitchen_KeepsTheDoughOfHome()
    {
        var keeping = Keep("?kitchen=winter-cottage");
        Assert.Equal(KeepState.Kept, keeping.State);
        Assert.Equal("?kitchen=winter-cottage&dough=26C&free=scald,potato", keeping.Question.Query());
    }

    [Fact]
    public void WhatAPersonAskedForThemselves_StaysAskedFor() =>
        Assert.Equal("?kitchen=winter-cottage&dough=25C&free=potato", Keep("?kitchen=winter-cottage&dough=25C&free=potato").Question.Query());

    [Fact]
    public void Home_DropsIt() => Assert.Equal("?measures=us", Keep("?dough=26C&free=potato&as-written&measures=us").Question.Query());

    [Fact]
    public void AsWritten_KeepsNothing()
    {
        var keeping = Keep("?kitchen=winter-cottage&dough=26C&free=scald,potato&as-written");
        Assert.Equal(KeepState.AsWritten, keeping.State);
        Assert.Equal("?kitchen=winter-cottage&as-written", keeping.Question.Query());
    }

    [Fact]
    public void WithoutAnythingFree_TheRecipeStaysAsWritten()
    {
        var recipe = RecipeText.Read(string.Join('\n',
            "doughwright: 1", "title: Short", "home:", "  air: 21 C", "parts:", "  dough:", "    strong white flour: 400 g", "    butter: 200 g", "    egg: 100 g",
            "    instant yeast: 4 g", "steps:", "  mix:", "    of: dough", "    hands: 5 min", "    way: by hand", "    vessel: steel bowl, 500 g", "")).Recipe!;
        Assert.Equal(KeepState.NothingFree, Keep("?air=10C", recipe).State);
        Assert.Equal("?air=10C", Keep("?air=10C", recipe).Question.Query());
    }

    [Fact]
    public void WhatIsNotOffered_IsNotKept()
    {
        var keeping = Keep("?air=-5C");
        Assert.Contains(keeping.State, new[] { KeepState.NotAdvised, KeepState.OutOfReach });
        Assert.False(keeping.Question.Has(Question.Dough));
    }

    private Keeping Keep(string query, Recipe? recipe = null)
    {
        recipe ??= Bench.Rolls;
        return Keeping.Of(Question.Of(query), bench.Reader(recipe), Formula.Balance(recipe, Larder.Shipped), Rehearser.Rehearse(recipe, Larder.Shipped));
    }
}
