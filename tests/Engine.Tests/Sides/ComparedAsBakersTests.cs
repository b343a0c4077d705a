using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Engine.Sides;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Sides;

/// <summary>Two recipes as a baker compares them: shares of all flour, and what becomes of them in a kitchen.</summary>
public class ComparedAsBakersTests
{
    private static Recipe Read(params ReadOnlySpan<(string Was, string Now)> changes)
    {
        var text = Texts.PotatoRolls;
        foreach (var (was, now) in changes)
        {
            Assert.Contains(was, text, StringComparison.Ordinal);
            text = text.Replace(was, now, StringComparison.Ordinal);
        }

        return RecipeText.Read(text).Recipe!;
    }

    private static readonly Recipe Rolls = Read();

    private static IReadOnlyList<RecipeDifference> From(Recipe changed) => RecipeDifferences.Between(Rolls, changed, Larder.Shipped);

    /// <summary>All flour is 80 + 320 = 400 g, so 30 g of sugar are 7.5 % and 40 g are 10 % (by hand).</summary>
    [Fact]
    public void Sugar_IsToldInPercentOfAllFlour()
    {
        var difference = Assert.Single(From(Read(("sugar: 30 g", "sugar: 40 g"))));
        Assert.Equal((Aspect.Amount, "dough", "sugar"), (difference.Aspect, difference.Part, difference.Line));
        Assert.Equal(7.5, difference.FirstNumber!.Value.Value, 12);
        Assert.Equal(SideUnit.Percent, difference.FirstNumber.Value.Unit);
        Assert.Equal(2.5, difference.By!.Value, 12);
    }

    [Fact]
    public void TwiceEverything_IsOneDifference()
    {
        var twice = Rolls with
        {
            Components = [.. Rolls.Components.Select(part => part with
            {
                Lines = [.. part.Lines.Select(line => line.Mass is { } mass ? line with { Mass = 2 * mass, Typed = FormattableString.Invariant($"{2 * mass.Grams} g") } : line)],
            })],
        };
        var difference = Assert.Single(From(twice));
        Assert.Equal(Aspect.Scale, difference.Aspect);
        Assert.Equal(difference.FirstNumber!.Value.Value, difference.By!.Value, 9);
    }

    /// <summary>Weighed again on a scale of whole grams, three quarters of 30 g are 23 g: no other share to a baker, and the size is one difference.</summary>
    [Fact]
    public void AnotherSize_WeighedOnTheScale_IsOneDifference()
    {
        var smaller = Rolls with
        {
            Components = [.. Rolls.Components.Select(part => part with
            {
                Lines = [.. part.Lines.Select(line => line.Mass is { } mass && Math.Round(0.75 * mass.Grams, MidpointRounding.AwayFromZero) is var grams
                    ? line with { Mass = Engine.Quantities.Mass.FromGrams(grams), Typed = FormattableString.Invariant($"{grams} g") }
                    : line)],
            })],
        };
        Assert.Equal([Aspect.Scale], From(smaller).Select(difference => difference.Aspect));
        Assert.Equal(Rolls.Components.SelectMany(part => part.Lines).Select(line => line.Typed), RecipeDifferences.Take(Rolls, smaller, From(smaller)[0])!.Components.SelectMany(part => part.Lines).Select(line => line.Typed));
    }

    [Fact]
    public void WarmthStepsAndCues_AreToldAsTheyStand()
    {
        var changed = Read(("ends: at 28 C\n    measured: 95 min", "ends: at 24 C\n    measured: 95 min"), ("cue: golden all over", "cue: dark all over"), ("    fold: at 45 min, 2 min by hand\n", ""));
        Assert.Equal([(Aspect.End, "mash"), (Aspect.Folds, "bulk"), (Aspect.Cue, "bake")], From(changed).Select(difference => (difference.Aspect, difference.Step!)));
        Assert.Equal(-4, From(changed)[0].By!.Value, 12);
    }

    [Fact]
    public void OneThingTakenOver_LeavesTheOthers()
    {
        var changed = Read(("sugar: 30 g", "sugar: 40 g"), ("cue: golden all over", "cue: dark all over"));
        var taken = RecipeDifferences.Take(Rolls, changed, From(changed).Single(difference => difference.Aspect == Aspect.Amount))!;
        Assert.Equal([Aspect.Cue], From(taken).Select(difference => difference.Aspect));
    }

    [Fact]
    public void PartStillUsed_IsNotTakenAway()
    {
        var without = Rolls with
        {
            Components = [.. Rolls.Components.Where(part => part.Id != "scald").Select(part => part with { Lines = [.. part.Lines.Where(line => line.Uses != "scald")] })],
            Steps = [.. Rolls.Steps.Where(step => step.Component != "scald")],
        };
        var difference = RecipeDifferences.Between(without, Rolls, Larder.Shipped).Single(one => one.Aspect == Aspect.Part);
        Assert.Null(RecipeDifferences.Take(without, Rolls, difference));
    }

    private static Consequences Come(Recipe first, Recipe second, Tested by) =>
        Consequences.Between(Formula.Balance(first, Larder.Shipped), Formula.Balance(second, Larder.Shipped), Larder.Shipped, first.Home, by);

    [Fact]
    public void EachByItsOwn_ComesToItsOwnRehearsal()
    {
        var changed = Read(("measured: 105 min", "measured: 120 min"), ("sugar: 30 g", "sugar: 40 g"));
        var come = Come(Rolls, changed, Tested.Each);
        Assert.Equal(105, come.Find(FigureKind.Minutes, "bulk")!.First!.Value, 6);
        Assert.Equal(120, come.Find(FigureKind.Minutes, "bulk")!.Second!.Value, 6);
        Assert.Equal(Rehearser.Rehearse(changed, Larder.Shipped).Total!.Value.Likely.Minutes, come.Find(FigureKind.Total)!.Second!.Value, 9);
    }

    [Fact]
    public void ARecipeAndItself_ComeToTheSame() => Assert.All(Come(Rolls, Read(), Tested.First).Run, difference => Assert.Equal(0, difference.By ?? 0, 3));

    /// <summary>Twice the sugar binds water, so the dough rises more slowly. The text still carries the time of the dough that was baked.</summary>
    [Fact]
    public void WhatWasNotBakedSince_GoesByTheEarlierOne()
    {
        var sweeter = Read(("sugar: 30 g", "sugar: 60 g"));
        Assert.Equal(Tested.First, TestedSide.Of(Rolls, sweeter, Tested.First));
        Assert.Equal(Tested.Each, TestedSide.Of(Rolls, Read(("measured: 105 min", "measured: 120 min")), Tested.First));
        Assert.Equal(0, Come(Rolls, sweeter, Tested.Each).Find(FigureKind.Minutes, "bulk")!.By!.Value, 6);
        var moved = Come(Rolls, sweeter, Tested.First).Find(FigureKind.Minutes, "bulk")!;
        Assert.Equal(105, moved.First!.Value, 6);
        Assert.True(moved.By > 5, $"{moved.By}");
    }

    [Fact]
    public void SidesTurned_TurnTheSigns()
    {
        var sweeter = Read(("sugar: 30 g", "sugar: 60 g"), ("altitude: 5 m", "altitude: 5 m"));
        var (there, back) = (Come(Rolls, sweeter, Tested.First), Come(sweeter, Rolls, Tested.Second));
        Assert.All(there.Run, difference => Assert.Equal(-difference.By, back.Find(difference.Figure.Kind, difference.Figure.Of)!.By));
        Assert.All(there.Formulas, difference => Assert.Equal(-difference.By, back.Formulas.Single(other => other.Figure == difference.Figure).By));
    }
}
