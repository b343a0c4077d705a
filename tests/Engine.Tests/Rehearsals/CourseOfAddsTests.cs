using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>Fillings, glazes, leftovers and doughs mixed twice along their course.</summary>
public class CourseOfAddsTests
{
    private const string Ring = """
        doughwright: 1
        title: Nut ring
        make: 1 ring of 900 g
        home:
          air: 21 C
          altitude: 5 m
          oven: fan
        parts:
          sponge:
            kind: preferment
            strong white flour: 120 g
            milk: 120 g
            fresh yeast: 15 g
          dough:
            strong white flour: 380 g
            sponge: 240 g
            milk: 100 g
            butter: 80 g, soft
            sugar: 60 g
            egg: 50 g
            salt: 8 g
          nuts:
            kind: filling
            hazelnuts: 150 g
            sugar: 60 g
            milk: 60 g
          glaze:
            kind: icing
            sugar: 100 g
            water: 20 g
        steps:
          sponge-mix:
            kind: mix
            of: sponge
            hands: 5 min
            vessel: glass bowl, 400 g
          ripen:
            kind: rest
            of: sponge
            ends: after 60 min
          autolyse:
            kind: mix
            of: dough
            hands: 6 min
            vessel: steel bowl, 500 g
          rest:
            kind: rest
            of: dough
            ends: after 20 min
          knead:
            kind: mix
            of: dough
            hands: 8 min
            vessel: steel bowl, 500 g
            order: salt, butter
          nuts-cook:
            kind: cook
            of: nuts
            hands: 5 min
            where: hob
          nuts-cool:
            kind: cool
            of: nuts
            vessel: steel bowl, 150 g
            cover: covered
            ends: at 30 C
          bulk:
            of: dough
            vessel: steel bowl, 500 g
            cover: covered
            ends: at 2 times its volume
            measured: 80 min
            cue: at the tape
          shape:
            of: dough
            hands: 15 min
          proof:
            of: dough
            cover: cloth
            measured: 50 min
            cue: springs back slowly
          bake:
            of: dough
            oven: 170 C fan
            measured: 35 min
            cue: brown
          cool:
            of: dough
            ends: after 30 min
          stir:
            kind: mix
            of: glaze
            hands: 3 min
          pour:
            kind: glaze
            of: glaze
            hands: 2 min
        """;

    private static readonly Rehearsal Rehearsal = Rehearser.Rehearse(RecipeText.Read(Ring).Recipe!, Larder.Shipped);
    private static readonly Course Course = Rehearsal.Course();

    private static Strand Of(string component) => Course.FindStrand(component)!;

    private static Stretch At(string component, string step) => Of(component).Stretches.Single(stretch => stretch.Step == step);

    [Fact]
    public void Ring_IsReadWholeAndKeepsTheLaws()
    {
        Assert.DoesNotContain(RecipeText.Read(Ring).Findings, finding => finding.Grade == Grade.Error);
        CourseLaws.Hold(Rehearsal);
    }

    [Fact]
    public void Filling_IsLaidInWhereTheDoughIsShaped()
    {
        Assert.Equal(("shape", "dough"), (Of("nuts").Joins, Of("nuts").Into));
        Assert.Equal(270, Of("nuts").Stretches[^1].Points[^1].Mass.Grams, 1e-9);
        Assert.Equal(918, At("dough", "bulk").Points[^1].Mass.Grams, 1e-9);
        Assert.Equal(918 + 270, At("dough", "shape").Points[^1].Mass.Grams, 1e-9);
        Assert.Equal(At("dough", "shape").Start.Minutes, Of("nuts").Stretches[^1].End.Minutes, 1e-6);
    }

    [Fact]
    public void Glaze_IsPouredOnAtItsOwnStepAndWaitsForIt()
    {
        Assert.Equal(("pour", "dough"), (Of("glaze").Joins, Of("glaze").Into));
        Assert.Equal(918 + 270, At("dough", "pour").Points[0].Mass.Grams, 1e-9);
        Assert.Equal(918 + 270 + 120, At("dough", "pour").Points[^1].Mass.Grams, 1e-9);
        Assert.Equal(At("dough", "pour").Start.Minutes, Of("glaze").Stretches[^1].End.Minutes, 1e-6);
    }

    [Fact]
    public void AfterTheBake_EveryStretchCoolsOnFromTheLast()
    {
        var after = Of("dough").Stretches.SkipWhile(stretch => stretch.Step != "bake").ToList();
        Assert.True(after.Count >= 3);
        Assert.All(after.Skip(1), stretch => Assert.Equal(stretch.Step is null || Rehearsal.FindStep(stretch.Step)!.Kind != StepKind.Cool, stretch.IsOnlyDrawn));
        Assert.All(after.Zip(after.Skip(1)), pair =>
            Assert.Equal(pair.First.Points[^1].Temperature!.Value.Celsius, pair.Second.Points[0].Temperature!.Value.Celsius, 0.05));
    }

    [Fact]
    public void PartOfASponge_LeavesTheRestBehind()
    {
        var points = Of("sponge").Stretches[^1].Points;
        Assert.Equal(255, points[^2].Mass.Grams, 1e-9);
        Assert.Equal(240, points[^1].Mass.Grams, 1e-9);
        Assert.Equal(points[^2].At, points[^1].At);
        Assert.Null(At("sponge", "ripen").Points[0].Volume);
    }

    [Fact]
    public void WhatIsAskedOfARipePart_IsWhatGoesIn()
    {
        var asked = Temperature.FromCelsius(14);
        var at = new Dictionary<string, Temperature> { ["sponge"] = asked };
        var cold = Rehearser.Rehearse(Rehearsal.Recipe, Larder.Shipped, new() { At = at });
        Assert.Equal(asked, cold.Course().FindStrand("sponge")!.Stretches[^1].Points[^1].Temperature);
        Assert.Equal(asked, cold.HeatOf("autolyse")!.Shares.Single(share => share.Line == "sponge").GoesIn);
        CourseLaws.Hold(cold);
    }

    [Fact]
    public void SecondMix_AddsWhatItsOrderNames()
    {
        Assert.Equal("autolyse", Of("sponge").Joins);
        Assert.Equal(830, At("dough", "rest").Points[^1].Mass.Grams, 1e-9);
        Assert.Equal(918, At("dough", "knead").Points[0].Mass.Grams, 1e-9);
        Assert.Equal(["butter", "salt"], Course.Entries.Single(entry => entry.Step == "knead").Lines);
        Assert.Equal(HeatGiver.Part, Rehearsal.HeatOf("knead")!.Shares[0].Giver);
    }

    [Fact]
    public void MakeupOfTheRing_LeavesFillingAndGlazeOut()
    {
        var makeup = Rehearsal.Formula.Makeup()!;
        Assert.Equal(918, makeup.Total.Mass.Grams, 1e-9);
        Assert.Equal(Rehearsal.Formula.Dough.Grams, makeup.Total.Mass.Grams, 1e-9);
        var sponge = makeup.Rows.Single(row => row.Line == "sponge");
        Assert.Equal(240, sponge.Mass.Grams, 1e-9);
        Assert.Equal(120 * 240 / 255.0, sponge.Flour.Grams, 1e-9);
    }
}
