using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;

namespace Doughwright.Engine.Tests.Formulas;

/// <summary>Each kind of finding of a formula: a recipe where it speaks, and one where it is silent.</summary>
public class FormulaFindingTests
{
    private static Line Flour => Of("strong white flour", 500);

    private static string[] Kinds(params Component[] components) => [.. Balance(components).Findings.Select(finding => finding.Kind)];

    [Theory]
    [InlineData("xyzzy", "ingredient-not-known-at-all")]
    [InlineData("buttr", "ingredient-not-known")]
    [InlineData("rye flour", "ingredient-not-clear")]
    [InlineData("virgin oil", "ingredient-read-as")]
    [InlineData("potato", "raw-or-cooked-not-said")]
    public void Names(string name, string kind)
    {
        Assert.Contains(kind, Kinds(Dough(Flour, Of(name, 10))));
        Assert.DoesNotContain(kind, Kinds(Dough(Flour, Of("boiled potato", 10))));
    }

    [Fact]
    public void MassMissingOrBelowZero()
    {
        var found = Kinds(Dough(Flour, Of("water", 1) with { Mass = null }, Of("milk", -5)));
        Assert.Contains("mass-not-said", found);
        Assert.Contains("mass-below-zero", found);
        Assert.DoesNotContain("mass-below-zero", Kinds(Dough(Flour, Of("water", 0))));
    }

    [Fact]
    public void PartMissing()
    {
        Assert.Contains("component-missing", Kinds(Dough(Flour, AllOf("scald"))));
        Assert.DoesNotContain("component-missing", Kinds(Scald, Dough(Flour, AllOf("scald"))));
    }

    [Fact]
    public void PartsInACircle()
    {
        Component[] circle =
        [
            Part("a", ComponentKind.Soaker, Of("water", 1), AllOf("b")),
            Part("b", ComponentKind.Soaker, AllOf("a")),
            Dough(Flour, AllOf("a"), AllOf("dough")),
        ];
        Assert.Equal(2, Kinds(circle).Count(kind => kind == "component-circle"));
        Assert.Equal(501, Balance(circle).Dough.Grams, 1e-9);
    }

    [Fact]
    public void PartNotUsed_LeftOver_TooSmall()
    {
        Assert.Contains("component-not-used", Kinds(Scald, Dough(Flour)));
        Assert.Contains("component-left-over", Kinds(Scald, Dough(Flour, PartOf("scald", 100))));
        Assert.Contains("component-too-small", Kinds(Scald, Dough(Flour, PartOf("scald", 300))));
        Assert.DoesNotContain(Kinds(Scald, Dough(Flour, AllOf("scald"))), kind => kind.StartsWith("component", StringComparison.Ordinal));
    }

    [Fact]
    public void WashThatNoStepUses()
    {
        var recipe = PotatoRolls.Sound with { Steps = [.. PotatoRolls.Sound.Steps.Where(step => step.Id != "brush")] };
        Assert.Contains(Balance(recipe).Findings, finding => finding.Id == "component-without-step@parts.wash");
        Assert.DoesNotContain(Balance(PotatoRolls.Sound).Findings, finding => finding.Kind.StartsWith("component-", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1000, 10, 80, true)]
    [InlineData(801, 10, 80, false)]
    public void MadeAgainstAsked(double dough, int pieces, double each, bool speaks)
    {
        var recipe = Recipe(Dough(Of("strong white flour", dough))) with { Make = new(pieces, "rolls", Grams(each)) };
        Assert.Equal(speaks, Balance(recipe).Findings.Any(finding => finding.Kind == "make-differs"));
    }

    [Theory]
    [InlineData(0.3, true)]
    [InlineData(1.4, true)]
    [InlineData(4, false)]
    public void DoseBelowTheScale(double grams, bool speaks) =>
        Assert.Equal(speaks, Kinds(Dough(Flour, Of("instant yeast", grams))).Contains("dose-below-scale"));

    [Fact]
    public void YolkLeavesTheWhite()
    {
        var said = Balance(Dough(Flour, Of("egg yolk", 18))).Findings.Single(finding => finding.Kind == "egg-part-left-over");
        Assert.Equal(33, ((Mass)said.Arguments["left"]).Grams);
        Assert.DoesNotContain("egg-part-left-over", Kinds(Dough(Flour, Of("egg yolk", 17), Of("egg white", 30))));
    }

    [Theory]
    [InlineData(25, true)]
    [InlineData(75, true)]
    [InlineData(50, false)]
    [InlineData(104, false)]
    public void EggNotWhole(double grams, bool speaks) =>
        Assert.Equal(speaks, Kinds(Dough(Flour, Of("egg", grams))).Contains("egg-not-whole"));

    [Theory]
    [InlineData(5, "salt-low")]
    [InlineData(15, "salt-high")]
    [InlineData(9, null)]
    public void SaltWindow(double grams, string? kind) =>
        Assert.Equal(kind, Kinds(Dough(Flour, Of("salt", grams))).SingleOrDefault(found => found.StartsWith("salt-")));

    [Theory]
    [InlineData(200, "dough-dry")]
    [InlineData(480, "dough-wet")]
    [InlineData(350, null)]
    public void WaterWindow(double grams, string? kind) =>
        Assert.Equal(kind, Kinds(Dough(Flour, Of("water", grams))).SingleOrDefault(found => found.StartsWith("dough-")));

    [Fact]
    public void WaterWindow_SaysNothingAboutRye() =>
        Assert.DoesNotContain("dough-wet", Kinds(Dough(Of("wholemeal rye flour", 500), Of("water", 480))));

    [Fact]
    public void YeastThatIsNone()
    {
        Assert.Contains("yeast-not-known", Kinds(Dough(Flour, Of("honey", 5) with { CountsAs = "yeast" })));
        Assert.DoesNotContain("yeast-not-known", Kinds(Dough(Flour, Of("fresh yeast", 5))));
    }

    [Theory]
    [InlineData("instant yeast", 4000, true)]
    [InlineData("instant yeast", 151, true)]
    [InlineData("fresh yeast", 150, false)]
    [InlineData("instant yeast", 4, false)]
    public void YeastAboveThreeTenthsOfTheFlour(string name, double grams, bool speaks)
    {
        var said = Balance(Dough(Flour, Of(name, grams))).Findings.SingleOrDefault(finding => finding.Kind == "yeast-too-much");
        Assert.Equal(speaks ? $"Error parts.dough.{name.Replace(' ', '-')}" : null, said is null ? null : $"{said.Grade} {said.Place}");
    }

    [Fact]
    public void YeastStirredIntoWater_IsHeldAgainstTheFlourOfTheDough()
    {
        static Component Stirred(double grams) => Part("soaker", ComponentKind.Soaker, Of("water", 50), Of("fresh yeast", grams));
        Assert.DoesNotContain("yeast-too-much", Kinds(Stirred(20), Dough(Flour, AllOf("soaker"))));
        Assert.Contains("yeast-too-much", Kinds(Stirred(200), Dough(Flour, AllOf("soaker"))));
    }

    [Fact]
    public void RoleThatIsNone()
    {
        Assert.Contains("role-not-known", Kinds(Dough(Flour, Of("honey", 5) with { CountsAs = "3" })));
        Assert.DoesNotContain("role-not-known", Kinds(Dough(Flour, Of("honey", 5) with { CountsAs = " Liquid" })));
    }

    [Fact]
    public void WeighingThatCannotBe_OrIsOfNoUse()
    {
        Assert.Contains("weighing-not-possible", Balance(PotatoRolls.Weighed(200, 20)).Findings.Select(finding => finding.Kind));
        Assert.Contains("weighing-not-used", Kinds(Dough(Flour, Of("honey", 10) with { Weighed = new(Grams(2), Grams(1)) })));
        Assert.DoesNotContain(Balance(PotatoRolls.Weighed(200, 170)).Findings, finding => finding.Kind.StartsWith("weighing"));
    }

    [Fact]
    public void CookingChangeUnknown()
    {
        Assert.Contains("cooking-change-not-known", Kinds(Dough(Flour, Of("boiled carrot", 100))));
        Assert.DoesNotContain("cooking-change-not-known", Kinds(Dough(Flour, Of("boiled potato", 100))));
    }

    [Fact]
    public void Allergens_AreSafetyAndNameEveryPart()
    {
        var said = Balance(PotatoRolls.Sound).Findings.Single(finding => finding.Kind == "allergens");
        Assert.True(said.Safety);
        Assert.Equal("wheat (gluten), egg, milk", said.Arguments["allergens"]);
        Assert.Contains("allergens-by-label", Kinds(Dough(Of("dark chocolate", 5))));
        Assert.Contains("allergens-not-known", Kinds(Dough(Of("xyzzy", 5))));
        Assert.DoesNotContain("allergens", Kinds(Dough(Of("water", 5))));
    }

    [Fact]
    public void RawFlourAndEgg()
    {
        Assert.Contains("raw-flour-and-egg", Kinds(Dough(Flour, Of("egg", 50))));
        Assert.Contains("raw-flour", Kinds(Dough(Flour)));
        Assert.Contains("raw-egg", Kinds(Dough(Of("egg", 50))));
        Assert.DoesNotContain("raw-egg", Kinds(Dough(Of("water", 50))));
    }

    [Fact]
    public void BoilingLiquid()
    {
        Assert.Contains("boiling-liquid", Balance(PotatoRolls.Sound).Findings.Select(finding => finding.Kind));
        Assert.DoesNotContain("boiling-liquid", Kinds(Dough(Flour, Of("water", 300))));
    }

    private static Component Scald => Part("scald", ComponentKind.Scald, Of("strong white flour", 80), Of("water", 100));
}
