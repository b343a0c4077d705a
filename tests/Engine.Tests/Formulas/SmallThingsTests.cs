using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Formulas;

/// <summary>A pinch of something unknown, spoons, parted eggs and two kinds of one thing.</summary>
public class SmallThingsTests
{
    private static Formula Of(string lines, string more = "") => Formula.Balance(
        RecipeText.Read($"doughwright: 1\ntitle: Small\nregion: US\nhome:\n  air: 21 C\n{more}parts:\n  dough:\n    strong white flour: 500 g\n    water: 300 g\n    {lines.Replace("; ", "\n    ", StringComparison.Ordinal)}\n").Recipe!,
        Larder.Shipped);

    private const string Spice = "own:\n  harbour spice:\n    counts as: flavour\n";

    [Fact]
    public void AnUnknownPinch_LeavesTwoEndsThatItsWeightIsApart()
    {
        var (plain, spiced) = (Of("sugar: 40 g"), Of("sugar: 40 g; harbour spice: 4 g", Spice));
        Assert.Null(spiced.Percent.TrueSugar);
        Assert.Equal(plain.Sugar.Total!.Value.Grams, spiced.Sugar.AtLeast.Grams, 1e-9);
        Assert.Equal(plain.Sugar.Total!.Value.Grams + 4, spiced.Sugar.AtMost!.Value.Grams, 1e-9);
        Assert.Equal(plain.Sugar.Total!.Value.Grams, plain.Sugar.AtMost!.Value.Grams, 1e-9);
    }

    [Fact]
    public void ADoseMeasuredByTheSpoon_DoesNotLieOnTheScale()
    {
        Assert.DoesNotContain(Of("instant yeast: 1/8 tsp; salt: 1/4 tsp").Findings, finding => finding.Kind == "dose-below-scale");
        Assert.Contains(Of("instant yeast: 0.4 g").Findings, finding => finding.Kind == "dose-below-scale");
    }

    [Theory]
    [InlineData("egg: 4 large; egg yolk: 2 large", 6, 2, 0)]
    [InlineData("egg: 2 large; egg yolk: 1 large; egg white: 3 large", 5, 0, 2)]
    [InlineData("egg: 1 large; egg yolk: 1 large; egg white: 1 large", 2, 0, 0)]
    [InlineData("egg: 55 g; egg yolk: 17 g", 2, 1, 0)]
    [InlineData("egg: 60 g; egg yolk: 17 g", 3, 1, 0)]
    public void PartedEggs_AreBoughtWithTheWholeOnes(string lines, int all, int yolks, int whites) =>
        Assert.Equal(new EggsToBuy(all, yolks, whites), Assert.Single(Of(lines).Buy, item => item.Eggs is not null).Eggs);

    [Fact]
    public void WholeEggsAlone_NeedNoCount() => Assert.All(Of("egg: 2 large").Buy, item => Assert.Null(item.Eggs));

    [Theory]
    [InlineData("salt: 9 g; flaky salt: 2 g", "salt", "flaky salt")]
    [InlineData("caster sugar: 60 g; pearl sugar: 20 g", "caster sugar", "pearl sugar")]
    [InlineData("olive oil: 20 g; extra virgin olive oil: 10 g", "olive oil", "extra virgin olive oil")]
    public void ASpecialKind_IsBoughtApart(string lines, string plain, string special)
    {
        var formula = Of(lines);
        Assert.Single(formula.Buy, item => item.Name == plain);
        Assert.Single(formula.Buy, item => item.Name == special);
    }

    /// <summary>One name, singular or plural, is one thing, and so is what is counted.</summary>
    [Theory]
    [InlineData("walnut: 30 g; walnuts: 20 g", 50)]
    [InlineData("large egg: 55 g; egg: 50 g", 105)]
    public void OneThing_IsBoughtOnce(string lines, double grams) => Assert.Single(Of(lines).Buy, item => item.Used == Mass.FromGrams(grams));

    /// <summary>The heat of 3 g in 203 g moves that of the whole by less than 1.2 %. Source: small-unknowns.</summary>
    [Theory]
    [InlineData(3, false)]
    [InlineData(40, true)]
    public void AFillingWithAPinchOfTheUnknown_KeepsItsHeat(int grams, bool told)
    {
        var text = $"""
            doughwright: 1
            title: Filled
            home:
              air: 21 C
            own:
              harbour spice:
                counts as: flavour
            parts:
              dough:
                strong white flour: 500 g
                water: 320 g, at 28 C
                salt: 9 g
                instant yeast: 5 g
              filling:
                butter: 100 g, soft
                sugar: 100 g
                harbour spice: {grams} g
            steps:
              mix:
                of: dough
                way: by hand
                hands: 10 min
                measured: 26 C
              bulk:
                of: dough
                cover: covered
                ends: doubled
                measured: 100 min
                cue: at the tape
              stir:
                kind: prepare
                of: filling
                hands: 5 min
              fill:
                kind: shape
                of: dough
                hands: 5 min
              proof:
                of: dough
                cover: cloth
                measured: 60 min
                cue: springs back
              bake:
                of: dough
                oven: 180 C fan
                measured: 30 min
                cue: brown

            """;
        var rehearsal = Rehearser.Rehearse(RecipeText.Read(text).Recipe!, Larder.Shipped);
        Assert.Equal(told, rehearsal.Findings.Any(finding => finding.Kind == "filling-heat-not-known"));
    }
}
