using CsCheck;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>A step done in another way that the author measured gives at home what was measured in that way.</summary>
public class VariantLawTests
{
    private static readonly Recipe Rolls = RecipeText.Read(Texts.Read("tests/data/texts/potato-rolls-variants.yaml")).Recipe!;

    private static Rehearsal With(Recipe recipe, params (string Step, string Variant)[] variants) =>
        Rehearser.Rehearse(recipe, Larder.Shipped, new() { Variants = variants.ToDictionary(pair => pair.Step, pair => pair.Variant) });

    /// <summary>Every variant of the text that was measured in the author's own room.</summary>
    public static TheoryData<string, string> Measured => new(
        from step in Rolls.Steps
        from variant in step.Variants
        where variant.Step.Measured is { Air: null }
        select (step.Id, variant.Id));

    [Fact]
    public void Text_HasVariantsOfManyKinds() => Assert.True(Measured.Count >= 5);

    [Theory]
    [MemberData(nameof(Measured))]
    public void MeasuredVariant_AtHome_IsWhatWasMeasured(string step, string variant)
    {
        var measured = Rolls.FindStep(step)!.FindVariant(variant)!.Step.Measured!;
        var rehearsal = With(Rolls, (step, variant));
        var rehearsed = rehearsal.FindStep(step)!;
        Assert.Equal(variant, rehearsed.Variant);
        Assert.Equal(measured.Time!.Value.Minutes, rehearsed.Time!.Value.Likely.Minutes, 1e-6);
        if (measured.Temperature is { } temperature)
        {
            Assert.Equal(temperature.Celsius, rehearsed.EndTemperature!.Value.Celsius, 1e-6);
        }
    }

    /// <summary>But for an oven that is heated to another dial.</summary>
    [Theory]
    [MemberData(nameof(Measured))]
    public void WhatIsBeforeAVariant_StaysAsMeasured(string step, string variant)
    {
        var rehearsal = With(Rolls, (step, variant));
        var home = Rehearser.Rehearse(Rolls, Larder.Shipped);
        foreach (var (here, there) in rehearsal.Steps.Zip(home.Steps).TakeWhile(pair => pair.First.Id != step).Where(pair => !pair.First.IsAdded))
        {
            Assert.Equal(there.Basis, here.Basis);
            Assert.Equal(there.Time, here.Time);
            Assert.Equal(there.EndTemperature, here.EndTemperature);
        }
    }

    [Theory]
    [MemberData(nameof(Measured))]
    public void MeasuredVariant_ByTheOtherWayThroughTheModels_IsTheSame(string step, string variant)
    {
        var measured = Rolls.FindStep(step)!.FindVariant(variant)!.Step.Measured!;
        var request = new Request
        {
            Variants = new Dictionary<string, string> { [step] = variant },
            Kitchen = Rolls.Home with { Scale = Mass.FromGrams(2) },
        };
        var rehearsed = Rehearser.Rehearse(Rolls, Larder.Shipped, request).FindStep(step)!;
        Assert.Equal(measured.Time!.Value.Minutes, rehearsed.Time!.Value.Likely.Minutes, 1e-3);
    }

    [Fact]
    public void WarmerDoughOfAVariant_RisesFaster_AndIsNotCalledMeasured()
    {
        var bulk = With(Rolls, ("mix", "machine")).FindStep("bulk")!;
        Assert.Equal(Basis.Computed, bulk.Basis);
        Assert.True(bulk.Time!.Value.Likely.Minutes < 105);
    }

    [Fact]
    public void VariantWithFewerOrOtherFolds_HasThem()
    {
        Assert.Empty(With(Rolls, ("bulk", "no-fold")).FindStep("bulk")!.Events);
        Assert.Equal([30, 60], With(Rolls, ("bulk", "two-folds")).FindStep("bulk")!.Events.Select(fold => fold.After.Likely.Minutes));
    }

    /// <summary>84 min in a room of 24 °C are more in the author's own room of 21 °C, and less than the 105 min of the cooler dough say.</summary>
    [Fact]
    public void MeasuredInAWarmerRoom_IsLongerInTheAuthorsOwn()
    {
        var bulk = Rolls.FindStep("bulk")!;
        var recipe = Rolls with { Steps = [.. Rolls.Steps.Select(step => step == bulk ? bulk.FindVariant("by-the-stove")!.Step : step)] };
        var rehearsed = Rehearser.Rehearse(recipe, Larder.Shipped).FindStep("bulk")!;
        Assert.Equal(Basis.Computed, rehearsed.Basis);
        Assert.InRange(rehearsed.Time!.Value.Likely.Minutes, 85, 110);
    }

    [Fact]
    public void MeasuredInTheAuthorsOwnRoom_SaidOrNot_IsTheSame()
    {
        var text = Texts.PotatoRolls;
        var said = text.Replace("105 min on 9 November", "105 min on 9 November, in a room of 21 C");
        Assert.NotEqual(text, said);
        string Told(string written) => Picture.Of(Rehearser.Rehearse(RecipeText.Read(written).Recipe!, Larder.Shipped));
        Assert.Equal(Told(text), Told(said));
    }

    [Fact]
    public void VariantNobodyHas_ChangesNothing_ButTheNameOfHome() => Assert.Equal(
        Rehearser.Rehearse(Rolls, Larder.Shipped).Steps.Select(step => step.Time),
        With(Rolls, ("bulk", "nobody-has-it")).Steps.Select(step => step.Time));

    /// <summary>Any bake, its bulk and its proof said again with times of their own.</summary>
    [Fact]
    public void AnyMeasuredVariant_AtHome_IsWhatWasMeasured() => Bake.Any.Sample(
        bake =>
        {
            var recipe = bake.Recipe;
            foreach (var id in (string[])["bulk", "proof", "bake"])
            {
                var step = recipe.FindStep(id)!;
                var minutes = (step.Measured?.Time?.Minutes ?? 100) * 1.1;
                var other = step with { Measured = new(Duration.FromMinutes(minutes), null, null, 1), Cover = Cover.Open };
                var offered = recipe with
                {
                    Steps = [.. recipe.Steps.Select(one => one.Id == id ? step with { Variants = [new("other", other)] } : one)],
                };
                Assert.Equal(minutes, With(offered, (id, "other")).FindStep(id)!.Time!.Value.Likely.Minutes, 1e-6);
            }
        },
        iter: 15);
}
