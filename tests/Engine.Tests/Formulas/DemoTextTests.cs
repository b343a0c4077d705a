using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Formulas;

/// <summary>From the text of the demo recipe to its formula and checks.</summary>
public class DemoTextTests
{
    [Fact]
    public void PotatoRolls_FromTheirText_GiveTheTrueFormulaAndOnlySafetyHints()
    {
        var recipe = RecipeText.Read(Texts.PotatoRolls).Recipe!;
        var formula = Formula.Balance(recipe, Larder.Shipped);
        Assert.Equal(67.8, formula.Percent.TrueWater!.Value.Value, 0.05);
        Assert.Equal(801, formula.Dough.Grams, 1e-9);
        Assert.All(formula.Findings, finding => Assert.Equal((Grade.Hint, true), (finding.Grade, finding.Safety)));
        Assert.Empty(RecipeChecks.Of(recipe));
    }
}
