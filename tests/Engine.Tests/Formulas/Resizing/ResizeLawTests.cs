using CsCheck;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;

namespace Doughwright.Engine.Tests.Formulas.Resizing;

/// <summary>Laws that hold for every recipe and every size.</summary>
public class ResizeLawTests
{
    private static readonly Gen<double> Factor = Gen.Double[0.2, 8];

    [Fact]
    public void ByTwo_EveryWeightIsDoubled() => Sizes.OnTheScale.Sample(recipe =>
    {
        var resized = recipe.By(2);
        Assert.Equal(2, resized.Factor!.Value, 1e-12);
        Assert.All(resized.Lines, line => Assert.Equal(2 * line.Before.Grams, line.After.Grams));
    });

    /// <summary>There a line is off by up to one step, which the way back makes larger or smaller with everything else; then it is rounded again.</summary>
    [Fact]
    public void ThereAndBack_IsTheRecipeWithinTheScale() => Gen.Select(Sizes.OnTheScale, Factor).Sample((recipe, factor) =>
    {
        var there = recipe.By(factor);
        var back = there.Recipe!.By(1 / there.Factor!.Value);
        var drift = back.Factor!.Value * there.Factor.Value;
        Assert.Equal(1, drift, 1e-9);
        foreach (var (line, was) in back.Lines.Zip(there.Lines))
        {
            var step = Math.Max(there.Scale.Grams, Worst(there, was));
            Assert.InRange(line.After.Grams, was.Before.Grams - Slack(step), was.Before.Grams + Slack(step));
        }

        double Slack(double step) => (step / factor) + Math.Max(step, Few(there)) + 1e-6;
    });

    /// <summary>Percentages are those of the recipe before anything is rounded.</summary>
    [Fact]
    public void BeforeRounding_EveryPercentageIsUnchanged() => Gen.Select(Sizes.OnTheScale, Factor).Sample((recipe, factor) =>
    {
        var resized = recipe.By(factor);
        var exact = resized.Lines.ToDictionary(line => (line.Component, line.Line), line => line.Exact);
        var unrounded = Formula.Balance(
            recipe with
            {
                Components = [.. recipe.Components.Select(part => part with
                {
                    Lines = [.. part.Lines.Select(line => exact.TryGetValue((part.Id, line.Id), out var mass) ? line with { Mass = mass } : line)],
                })],
            },
            Larder.Shipped);
        foreach (var (now, was) in unrounded.Components.SelectMany(part => part.Lines).Zip(resized.Before.Components.SelectMany(part => part.Lines)))
        {
            Assert.Equal(was.Percent!.Value.Value, now.Percent!.Value.Value, 1e-9);
            Assert.Equal(was.OverallPercent!.Value.Value, now.OverallPercent!.Value.Value, 1e-9);
        }

        Assert.Equal(resized.Before.Percent.TrueWater!.Value.Value, unrounded.Percent.TrueWater!.Value.Value, 1e-9);
    });

    /// <summary>What is finer than the scale shows stands beside it; all else comes to the dough asked for, to half a step.</summary>
    [Fact]
    public void PartsOfTheDough_AddUpToTheDoughAskedFor() => Gen.Select(Sizes.OnTheScale, Gen.Int[400, 60_000]).Sample((recipe, grams) =>
    {
        var resized = recipe.To(new ResizeWish.Dough(Mass.FromGrams(grams)));
        var parts = resized.Lines.Where(line => line.Component is "scald" or "dough").ToList();
        Assert.Equal(parts.Sum(line => line.After.Grams), resized.After!.Dough.Grams, 1e-6);
        if (parts.Any(line => line.Exact.Grams >= 50))
        {
            Assert.Equal(grams, resized.After.Dough.Grams, 0.5 + 1e-6);
        }
    });

    [Fact]
    public void EveryLine_IsWithinTheScale_AndFewStepsAreRoundedToTheNearest() => Gen.Select(Sizes.OnTheScale, Factor).Sample((recipe, factor) =>
    {
        foreach (var line in recipe.By(factor).Lines)
        {
            Assert.True(line.After > Mass.Zero, line.Name);
            if (line.Form == LineForm.BelowScale)
            {
                Assert.InRange(Math.Abs(line.ErrorPercent!.Value.Value), 0, 5);
            }
            else if (line.Exact.Grams < 10)
            {
                Assert.InRange(Math.Abs(line.ErrorPercent!.Value.Value), 0, 10 + 1e-9);
            }
        }
    });

    /// <summary>What is written is what counts: the text of a line reads back to its mass.</summary>
    [Fact]
    public void Typed_SaysTheMass() => Gen.Select(RecipeGen.Recipe, Factor).Sample((recipe, factor) =>
    {
        var resized = recipe.To(new ResizeWish.HavePart(recipe.Components[0].Id, Mass.FromGrams(1000 * factor)));
        foreach (var line in resized.Lines.Where(line => line.Form is LineForm.Scale or LineForm.BelowScale or LineForm.Ounces))
        {
            Assert.Equal(line.After, QuantityText.TryMass(line.Typed).Value);
        }
    });

    /// <summary>Whatever a text can say can be resized or is refused; nothing is thrown, and no line is gone or below zero without a word.</summary>
    [Fact]
    public void AnyRecipe_IsResizedOrRefused() => Gen.Select(RecipeGen.Recipe, Gen.Int[1, 100_000], Gen.Int[0, 6]).Sample((recipe, number, which) =>
    {
        ResizeWish wish = which switch
        {
            0 => new ResizeWish.Pieces(number),
            1 => new ResizeWish.PieceMass(Mass.FromGrams(number)),
            2 => new ResizeWish.Dough(Mass.FromGrams(number)),
            3 => new ResizeWish.HavePart(recipe.Components[^1].Id, Mass.FromGrams(number)),
            4 => new ResizeWish.Trays(number),
            5 => new ResizeWish.Tin(new(null, null, null, Volume.FromLitres(number)), null),
            _ => new ResizeWish.HaveLine("old", Mass.FromGrams(number)),
        };
        var resized = recipe.To(wish);
        Assert.Equal(resized.Recipe is null, resized.Factor is null);
        if (resized.Recipe is null)
        {
            Assert.Contains(resized.Findings, finding => finding.Grade == Grade.Error);
        }

        Assert.All(resized.Lines, line => Assert.True(line.After > Mass.Zero || line.Before <= Mass.Zero, line.Name));
    }, iter: 300);

    /// <summary>The same size again is the same recipe, to the last word.</summary>
    [Fact]
    public void ByOne_IsTheRecipe() => Sizes.OnTheScale.Sample(recipe =>
    {
        var resized = recipe.To(new ResizeWish.Pieces(recipe.Make!.Pieces));
        Assert.Equal(Engine.TextForm.RecipeText.Write(recipe), Engine.TextForm.RecipeText.Write(resized.Recipe!));
        Assert.Empty(resized.Choices);
    });

    private static double Worst(Resized resized, ResizedLine line) => Math.Abs(resized.The(line.Component, line.Line).Error.Grams);

    /// <summary>Large lines carry what the small ones of the dough are rounded by: half a step of each.</summary>
    private static double Few(Resized resized) => resized.Lines.Count / 2.0 + 1;
}
