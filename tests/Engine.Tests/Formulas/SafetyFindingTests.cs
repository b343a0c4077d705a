using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.Formulas.Swaps;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;

namespace Doughwright.Engine.Tests.Formulas;

/// <summary>What is said of honey, of keeping, of alcohol and of what raises a dough: where it speaks, and where it is silent.</summary>
public class SafetyFindingTests
{
    private static readonly Component Plain = Dough(Of("strong white flour", 500), Of("water", 320), Of("salt", 9), Of("instant yeast", 5));

    private static string[] Kinds(Recipe recipe) => [.. Balance(recipe).Findings.Select(finding => finding.Kind)];

    private static string[] Just(string? kind) => kind is null ? [] : [kind];

    private static KeepingAdvice Kept(string words, double hours) => new(words, Duration.FromHours(hours), Position.None);

    /// <summary>A dough that is baked, with a part that goes on before the bake or after it.</summary>
    private static Recipe Topped(Component part, bool after, params KeepingAdvice[] keeping)
    {
        var on = Step("on", StepKind.Finish, part.Id);
        var bake = Step("bake", StepKind.Bake);
        return Recipe(Plain, part) with { Steps = after ? [bake, on] : [on, bake], Keeping = keeping };
    }

    /// <summary>Honey is not given below one year, baked or not, whichever part holds it: from memory, as food authorities say. Once, though it is in two parts.</summary>
    [Fact]
    public void Honey_IsTold_OncePerRecipe()
    {
        var filling = Part("filling", ComponentKind.Filling, Of("honey", 20), Of("raisins", 40));
        var told = Assert.Single(Balance(Dough(Of("strong white flour", 500), Of("runny honey", 10)), filling).Findings, finding => finding.Kind == "honey-and-infants");
        Assert.True(told.Safety);
        Assert.Contains("honey-and-infants", Kinds(Recipe(Dough(Of("strong white flour", 500), Of("heather honey", 10)))));
        Assert.DoesNotContain("honey-and-infants", Kinds(Recipe(Plain, Part("melon", ComponentKind.Filling, Of("honeydew melon", 100)))));
    }

    [Fact]
    public void HoneyInTwoParts_IsToldOnceBySwap()
    {
        var sweet = Recipe(
            Dough(Of("strong white flour", 500), Of("water", 300), Of("sugar", 40), Of("salt", 9), Of("instant yeast", 5)),
            Part("filling", ComponentKind.Filling, Of("raisins", 100), Of("milk", 100), Of("sugar", 60)));
        Assert.Single(Swaps.Swaps.Of(sweet, "sugar=honey").Kinds(), "swap-brings-honey");
    }

    /// <summary>Two hours out of the fridge: advice of food authorities to homes. Three to four days in it: common practice, no source.</summary>
    [Theory]
    [InlineData("cream cheese", "on a plate at room temperature", 2, null)]
    [InlineData("cream cheese", "on a plate at room temperature", 3, "kept-warm-too-long")]
    [InlineData("cream cheese", "in the fridge", 96, null)]
    [InlineData("cream cheese", "in the fridge", 120, "kept-cold-too-long")]
    [InlineData("cream cheese", "frozen", 1440, null)]
    [InlineData("egg white", "in a tin", 48, "kept-warm-too-long")]
    [InlineData("pasteurised egg white", "in a tin", 1, null)]
    [InlineData("icing sugar", "in a tin", 48, null)]
    public void WhatGoesOnAfterTheBake_IsKeptNoLongerThanItBears(string name, string words, double hours, string? kind)
    {
        var part = Part("icing", ComponentKind.Icing, Of("icing sugar", 150), Of(name, 150));
        var told = Balance(Topped(part, after: true, Kept(words, hours))).Findings.Where(finding => finding.Kind.StartsWith("kept-", StringComparison.Ordinal)).ToArray();
        Assert.Equal(Just(kind), told.Select(finding => finding.Kind));
        Assert.All(told, finding => Assert.True(finding is { Safety: true, Grade: Grade.Warning }));
    }

    /// <summary>Baked in, a filling of soft cheese spoils still; one that is boiled with milk keeps as the bread does.</summary>
    [Fact]
    public void SoftCheeseThatIsBakedIn_IsKeptCold()
    {
        var days = Kept("in a bag at room temperature", 72);
        Assert.Contains("kept-warm-too-long", Kinds(Topped(Part("filling", ComponentKind.Filling, Of("cream cheese", 200), Of("sugar", 50)), after: false, days)));
        Assert.DoesNotContain("kept-warm-too-long", Kinds(Topped(Part("filling", ComponentKind.Filling, Of("poppy seeds", 150), Of("milk", 150)), after: false, days)));
    }

    /// <summary>Garlic under oil out of the fridge grows the germ of botulism: advice of food authorities to homes, from memory.</summary>
    [Theory]
    [InlineData("garlic oil at room temperature", 336, "garlic-oil-kept-warm")]
    [InlineData("garlic oil in the fridge", 336, "garlic-oil-kept-cold")]
    [InlineData("garlic oil in the fridge", 48, null)]
    [InlineData("in a bag at room temperature", 48, null)]
    public void GarlicInOil_IsNotKept(string words, double hours, string? kind)
    {
        var told = Kinds(Recipe(Plain) with { Keeping = [Kept(words, hours)] }).Where(found => found.StartsWith("garlic-", StringComparison.Ordinal));
        Assert.Equal(Just(kind), told);
    }

    [Fact]
    public void GarlicOilBrushedOnAfterTheBake_IsNotKeptWithTheBread()
    {
        var oil = Part("oil", ComponentKind.Topping, Of("olive oil", 50), Of("garlic", 10));
        Assert.Contains("garlic-oil-kept-warm", Kinds(Topped(oil, after: true, Kept("in a bag", 48))));
        Assert.DoesNotContain("garlic-oil-kept-warm", Kinds(Topped(oil, after: false, Kept("in a bag", 48))));
        Assert.DoesNotContain("garlic-oil-kept-warm", Kinds(Topped(Part("oil", ComponentKind.Topping, Of("olive oil", 50), Of("garlic powder", 10)), after: true, Kept("in a bag", 48))));
    }

    /// <summary>By mass of water and alcohol: beer holds 4.1 %, white wine 10.6 %, spirit 33.4 % (USDA SR28). That a dough with beer rises is common practice.</summary>
    [Theory]
    [InlineData("vodka", "alcohol-stops-yeast")]
    [InlineData("white wine", "alcohol-stops-yeast")]
    [InlineData("beer", null)]
    [InlineData("water", null)]
    public void AlcoholAsTheLiquid_IsTold(string liquid, string? kind)
    {
        var told = Kinds(Recipe(Dough(Of("strong white flour", 500), Of(liquid, 350), Of("salt", 9), Of("instant yeast", 5))))
            .Where(found => found.StartsWith("alcohol-", StringComparison.Ordinal));
        Assert.Equal(Just(kind), told);
    }

    [Fact]
    public void AlcoholThatASwapBrings_IsTold()
    {
        Assert.Contains("alcohol-stops-yeast", Swaps.Swaps.Of(Recipe(Plain), "water=white wine").Kinds());
        Assert.DoesNotContain("alcohol-stops-yeast", Swaps.Swaps.Of(Recipe(Plain), "water=milk").Kinds());
    }

    [Theory]
    [InlineData("sponge", "strong white flour", "yeast-missing-in-preferment")]
    [InlineData("levain", "strong white flour", null)]
    [InlineData("sponge", "self-raising flour", "powder-does-not-wait")]
    public void NothingThatMakesItRise_IsNamed(string preferment, string flour, string? kind)
    {
        var recipe = Recipe(
            Part(preferment, ComponentKind.Preferment, Of("strong white flour", 100), Of("water", 100)),
            Dough(Of(flour, 400), AllOf(preferment), Of("water", 220), Of("salt", 9))) with
        { Steps = [Step("bulk", StepKind.Bulk)] };
        var told = Kinds(recipe).Where(found => found.StartsWith("yeast-", StringComparison.Ordinal) || found.StartsWith("powder-", StringComparison.Ordinal));
        Assert.Equal(Just(kind), told);
    }

    [Theory]
    [InlineData("self-raising flour", true)]
    [InlineData("baking powder", true)]
    [InlineData("milk powder", false)]
    public void ARaisingAgentBesideYeast_IsTold(string name, bool speaks) => Assert.Equal(
        speaks, Kinds(Recipe(Dough(Of("strong white flour", 400), Of(name, 20), Of("water", 250), Of("salt", 9), Of("instant yeast", 5)))).Contains("raised-twice"));

    /// <summary>What cannot be weighed is no nought: no total is judged without it.</summary>
    [Fact]
    public void AMassThatIsNotKnown_IsNotJudgedAsNought()
    {
        var cups = Of("water", 1) with { Mass = null, Household = new(2, "bucket"), Typed = "2 buckets" };
        var recipe = Recipe(Dough(Of("strong white flour", 500), cups)) with { Make = new(1, "loaf", Grams(820)) };
        Assert.False(Balance(recipe).IsMassKnown);
        Assert.DoesNotContain("make-differs", Kinds(recipe));
        var yeast = Of("instant yeast", 1) with { Mass = null, Household = new(2, "bucket"), Typed = "2 buckets" };
        Assert.Null(Balance(Dough(Of("strong white flour", 500), Of("water", 320), yeast)).Percent.FreshYeast);
    }

    [Theory]
    [InlineData("kosher salt", true, true)]
    [InlineData("salt", true, false)]
    [InlineData("kosher salt", false, false)]
    public void CoarseSaltByTheSpoon_IsTold(string name, bool spoon, bool speaks)
    {
        var salt = Of(name, 12) with { Household = spoon ? new(2, "tsp") : null };
        Assert.Equal(speaks, Kinds(Recipe(Dough(Of("strong white flour", 500), Of("water", 320), salt))).Contains("salt-crystals-differ"));
    }
}
