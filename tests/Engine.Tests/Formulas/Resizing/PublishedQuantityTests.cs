using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;

namespace Doughwright.Engine.Tests.Formulas.Resizing;

/// <summary>
/// Figures of a published quantity recipe that is printed for 50 and for 100: Whole-Grain Dinner Rolls, USDA Recipe for Schools, on the pages of the
/// Institute of Child Nutrition (theicn.org), a work of the US government. Weights in ounces and pounds, spoons and cups as printed there; the grams
/// of a spoon do not matter, only that they follow.
/// </summary>
public class PublishedQuantityTests
{
    private static readonly Recipe Fifty = RecipeBuilder.Recipe(Dough(
        Measured("active dry yeast", 3, "tbsp", 28),
        Measured("water", 3, "cups", 711),
        Typed("wholemeal flour", "1 lb"),
        Typed("plain flour", "14 oz"),
        Typed("sugar", "8 oz"),
        Measured("salt", 2, "tsp", 12),
        Typed("egg", "4 oz"),
        Measured("sunflower oil", 4, "tsp", 18))) with
    {
        Make = new(50, "rolls", Grams(34)),
    };

    /// <summary>1 lb 12 oz of plain flour and 1/4 cup 2 tbsp (6 tbsp) of yeast, 1 qt 2 cups (6 cups) of water, 1 tbsp 1 tsp (4 tsp) of salt, 2 tbsp 2 tsp (8 tsp) of oil.</summary>
    [Fact]
    public void TheColumnFor100_FollowsFromThatFor50()
    {
        var hundred = Fifty.To(new ResizeWish.Pieces(100));
        Assert.Equal(
            ["6 tbsp", "6 cups", "2 lb", "1 lb 12 oz", "1 lb", "4 tsp", "8 oz", "8 tsp"],
            hundred.Lines.Select(line => line.Typed));
        Assert.Equal(
            [LineForm.Household, LineForm.Household, LineForm.Ounces, LineForm.Ounces, LineForm.Ounces, LineForm.Household, LineForm.Ounces, LineForm.Household],
            hundred.Lines.Select(line => line.Form));
        Assert.All(hundred.Lines, line => Assert.Equal(2 * line.Before.Grams, line.After.Grams, 1e-9));
    }

    [Fact]
    public void TheColumnFor50_FollowsFromThatFor100()
    {
        var hundred = Fifty.To(new ResizeWish.Pieces(100)).Recipe!;
        Assert.Equal(Fifty.Components[0].Lines.Select(line => line.Typed), hundred.To(new ResizeWish.Pieces(50)).Lines.Select(line => line.Typed));
    }

    private static Line Measured(string name, double amount, string unit, double grams) =>
        Of(name, grams) with { Typed = $"{amount} {unit}", Household = new(amount, unit) };

    private static Line Typed(string name, string typed) => Of(name, QuantityText.TryMass(typed).Value!.Value.Grams) with { Typed = typed };
}
