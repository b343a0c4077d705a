using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;

namespace Doughwright.Engine.Tests.Formulas;

/// <summary>The formula against figures from outside.</summary>
public class PublishedFormulaTests
{
    /// <summary>Poolish baguette of a published course (masses read, totals computed from them): tests the arithmetic.</summary>
    [Fact]
    public void Poolish_GivesThePublishedTotals()
    {
        var formula = Balance(
            Part("poolish", ComponentKind.Preferment, Of("strong white flour", 468), Of("water", 468), Of("instant yeast", 0.3)),
            Dough(Of("strong white flour", 900), Of("water", 468), Of("instant yeast", 9), Of("salt", 27), AllOf("poolish")));
        Assert.Equal(1368, formula.Flour.Grams, 1e-9);
        Assert.Equal(34.21, formula.Percent.PrefermentedFlour!.Value.Value, 0.005);
        Assert.Equal(68.42, formula.Percent.Hydration!.Value.Value, 0.005);
        Assert.Equal(1.974, formula.Percent.Salt!.Value.Value, 0.0005);
        Assert.Equal(9.3, formula.Yeast!.Instant.Grams, 0.005);
        // 104 % is printed to whole numbers, without the 0.3 g of yeast.
        Assert.Equal(104, formula.The("dough").The("poolish").Percent!.Value.Value, 0.5);
        Assert.Equal(3, formula.The("dough").The("salt").Percent!.Value.Value, 1e-9);
        Assert.Equal(100, formula.The("poolish").The("water").Percent!.Value.Value, 1e-9);
    }

    /// <summary>
    /// Brioche of a professional handbook (formula read): flour 100, milk 20, fresh yeast 5, eggs 50, sugar 5, salt 2, butter 70.
    /// True water without that of the yeast: 66.5 % with egg at 75.33 and butter at 16 % water; 68.3 % with the shipped table (both computed from those waters).
    /// </summary>
    [Theory]
    [InlineData(75.33, 16, 66.5)]
    [InlineData(76.15, 17.94, 68.3)]
    public void Brioche_TrueWater_BelongsToItsComposition(double eggWater, double butterWater, double expected)
    {
        var shipped = Tsv.Embedded("larder.tsv");
        static string Cell(double value) => FormattableString.Invariant($"\t{value}\t");
        var larder = Larder.Load(
            shipped.Replace(Cell(76.15), Cell(eggWater)).Replace(Cell(17.94), Cell(butterWater)),
            Tsv.Embedded("names.tsv"),
            Tsv.Embedded("preparation.tsv"));
        var formula = Formula.Balance(Recipe(Brioche), larder);
        var water = formula.Water.Shares.Where(share => share.Name is "milk" or "egg" or "butter").Sum(share => share.Mass!.Value.Grams);
        Assert.Equal(expected, water / formula.Flour.Grams * 100, 0.05);
    }

    /// <summary>Trade rule 100 : 40 : 33 (read): 30 g fresh are 12.0 g active dry and 9.9 g instant.</summary>
    [Fact]
    public void Yeast_Equivalents_FollowTheTradeRule()
    {
        var yeast = YeastEquivalents.FromFresh(Grams(30));
        Assert.Equal(12.0, yeast.ActiveDry.Grams, 0.05);
        Assert.Equal(9.9, yeast.Instant.Grams, 0.05);
        Assert.All(Enum.GetValues<YeastKind>(), kind => Assert.Equal(30, YeastEquivalents.ToFresh(In(yeast, kind), kind).Grams, 1e-9));
    }

    /// <summary>The true formula of the potato rolls, figures given with the recipe (computed from the source's table).</summary>
    [Fact]
    public void PotatoRolls_TrueFormula()
    {
        var formula = Balance(PotatoRolls.Sound);
        var percent = formula.Percent;
        Assert.Equal(801, formula.Dough.Grams, 1e-9);
        Assert.Equal(400, formula.Flour.Grams, 1e-9);
        Assert.Equal(25.0, percent.Hydration!.Value.Value, 0.05);
        Assert.Equal(67.8, percent.TrueWater!.Value.Value, 0.05);
        Assert.Equal(20.0, percent.ScaldedFlour!.Value.Value, 0.05);
        Assert.Equal(7.5, percent.Sugar!.Value.Value, 0.05);
        Assert.Equal(8.2, percent.TrueSugar!.Value.Value, 0.05);
        Assert.Equal(12.5, percent.Fat!.Value.Value, 0.05);
        Assert.Equal(1.75, percent.Salt!.Value.Value, 0.005);
        Assert.Equal(12.1, formula.Yeast!.Fresh.Grams, 0.05);
        Assert.Equal(4.8, formula.Yeast.ActiveDry.Grams, 0.05);
        Assert.Equal(4, formula.Yeast.Instant.Grams, 1e-9);
    }

    [Theory]
    [InlineData("scald", "water", 100.0)]
    [InlineData("potato", "potato", 123.9)]
    [InlineData("dough", "egg", 38.1)]
    [InlineData("dough", "butter", 9.0)]
    [InlineData("dough", "instant-yeast", 0.2)]
    public void PotatoRolls_WaterBudget(string component, string line, double grams)
    {
        var share = Balance(PotatoRolls.Sound).Water.Shares.Single(share => (share.Component, share.Line) == (component, line));
        Assert.Equal(grams, share.Mass!.Value.Grams, 0.05);
    }

    private static Component Brioche => Dough(
        Of("strong white flour", 100),
        Of("milk", 20),
        Of("fresh yeast", 5),
        Of("egg", 50),
        Of("sugar", 5),
        Of("salt", 2),
        Of("butter", 70));

    private static Mass In(YeastEquivalents yeast, YeastKind kind) => kind switch
    {
        YeastKind.Fresh => yeast.Fresh,
        YeastKind.ActiveDry => yeast.ActiveDry,
        _ => yeast.Instant,
    };
}
