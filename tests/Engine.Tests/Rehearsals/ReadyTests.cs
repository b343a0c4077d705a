using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Readying;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>"Ready at seven": every answer, put into the recipe by hand, comes out at that hour.</summary>
public class ReadyTests
{
    private static readonly Recipe Rolls = RecipeText.Read(Texts.PotatoRolls).Recipe!;

    private static double HomeMinutes(Recipe recipe) => Rehearser.Rehearse(recipe, Larder.Shipped).Total!.Value.Likely.Minutes;

    [Theory]
    [InlineData(-60)]
    [InlineData(-20)]
    [InlineData(45)]
    [InlineData(240)]
    public void EveryWayThatReaches_TakesTheTimeAskedFor(double longer)
    {
        var wanted = HomeMinutes(Rolls) + longer;
        var answer = Ask(Rolls, wanted);
        Assert.Equal([ReadyLever.Yeast, ReadyLever.Water, ReadyLever.Both], answer.Ways.Select(way => way.Lever));
        Assert.Null(answer.Ways[0].Obstacle);
        Assert.All(answer.Ways.Where(way => way.Obstacle is null), way => Assert.Equal(wanted, way.Rehearsal!.Total!.Value.Likely.Minutes, 0.5));
        Assert.Equal(longer < 0, answer.Ways[0].Doses.Single() is var dose && dose.Now > dose.Was);
    }

    /// <summary>The recipe with the dose written into it, and nothing else of the answer, is rehearsed to the same hour by the ordinary way.</summary>
    [Fact]
    public void Dose_WrittenIntoTheRecipe_ComesToThatHour()
    {
        var wanted = HomeMinutes(Rolls) + 120;
        var dose = Ask(Rolls, wanted).Ways[0].Doses.Single();
        var dosed = Rolls with
        {
            Components = [.. Rolls.Components.Select(part => part.Id != dose.Component ? part : part with
            {
                Lines = [.. part.Lines.Select(line => line.Id == dose.Line ? line with { Mass = dose.Now } : line)],
            })],
        };
        Assert.Equal(wanted, Rehearser.RehearseSwapped(Rolls, dosed, Larder.Shipped).Total!.Value.Likely.Minutes, 0.5);
    }

    /// <summary>Up to 3 % of fresh yeast twice the yeast is twice as fast, so the time of the rises halves (source: dose-rule), where nothing else changes.</summary>
    [Fact]
    public void DoseAndTime_GoTogetherAsTheTradeRuleSays()
    {
        var recipe = RecipeText.Read(Lean).Recipe!;
        var written = Rehearser.Rehearse(recipe, Larder.Shipped);
        var rises = written.FindStep("bulk")!.Time!.Value.Likely.Minutes + written.FindStep("proof")!.Time!.Value.Likely.Minutes;
        var dose = Ask(recipe, written.Total!.Value.Likely.Minutes - (rises / 2)).Ways[0].Doses.Single();
        Assert.InRange(dose.Now / dose.Was, 1.8, 2.4);
    }

    [Fact]
    public void Both_TakesLessOfEach()
    {
        var answer = Ask(Rolls, HomeMinutes(Rolls) - 20);
        var (yeast, both) = (answer.Ways[0].Doses.Single(), answer.Ways[2].Doses.Single());
        Assert.Equal(Math.Sqrt(yeast.Now / yeast.Was), both.Now / both.Was, 1e-9);
        Assert.NotNull(answer.Ways[2].Water);
    }

    [Fact]
    public void WhatIsOutOfReach_IsToldWithWhatIsNot()
    {
        var soon = Ask(Rolls, 30).Ways[0];
        Assert.Equal(ReadyObstacle.OutOfReach, soon.Obstacle);
        Assert.InRange(soon.Soonest!.Value.Minutes, 60, HomeMinutes(Rolls));
        Assert.True(soon.Latest is not { } latest || latest.Minutes > HomeMinutes(Rolls));
        Assert.Empty(soon.Doses);
        Assert.Null(soon.Rehearsal);
    }

    [Fact]
    public void ADoughOfSourdough_HasNoYeastToWeigh_AndMayHaveItsWaterMoved()
    {
        var rye = RecipeText.Read(Texts.Read("demo/recipes/night-boat-rye.yaml")).Recipe!;
        var answer = Ask(rye, HomeMinutes(rye) + 10);
        Assert.Equal(ReadyObstacle.NoYeastInDough, answer.Ways[0].Obstacle);
        Assert.Equal(ReadyObstacle.NoYeastInDough, answer.Ways[2].Obstacle);
        Assert.True(answer.Ways[1].Obstacle is null && answer.Ways[1].Water!.Now < answer.Ways[1].Water!.Lines[0].Was);
    }

    /// <summary>A small dose is told with what the kitchen's scale makes of it.</summary>
    [Fact]
    public void Dose_IsToldAsTheScaleShowsIt_WithTheTimeItThenTakes()
    {
        var way = Ask(Rolls, HomeMinutes(Rolls) + 90).Ways[0];
        var dose = way.Doses.Single();
        Assert.Equal(Math.Round(dose.Now.Grams, MidpointRounding.AwayFromZero), dose.Weighed.Grams, 1e-9);
        Assert.Equal(dose.Weighed < dose.Now, way.AsWeighed!.Value > way.Rehearsal!.Total!.Value.Likely);
    }

    [Fact]
    public void Moves_AreTheRises_AndNothingThatDoesNotHangOnThem()
    {
        var moved = Ask(Rolls, HomeMinutes(Rolls) + 60).Ways[0].Moves.Select(move => move.Step).ToList();
        Assert.Contains("bulk", moved);
        Assert.Contains("proof", moved);
        Assert.DoesNotContain("scald", moved);
        Assert.DoesNotContain("boil", moved);
    }

    [Fact]
    public void InAnotherKitchen_TheAnswerIsForThatKitchen()
    {
        var cold = new Request { Kitchen = KitchenText.Read(Texts.Read("demo/kitchens/winter-cottage.yaml")).Kitchen };
        var wanted = HomeMinutes(Rolls);
        var answer = Ready.Answer(Rolls, Larder.Shipped, cold, Duration.FromMinutes(wanted));
        Assert.Equal(wanted, answer.Ways[0].Rehearsal!.Total!.Value.Likely.Minutes, 0.5);
        Assert.True(answer.Ways[0].Doses.Single() is var dose && dose.Now > dose.Was);
    }

    [Fact]
    public void WhereTheRecipeHasNoTime_NothingIsAnswered()
    {
        var recipe = RecipeText.Read(Lean.Replace("strong white flour", "moon dust", StringComparison.Ordinal)).Recipe!;
        Assert.All(Ask(recipe, 300).Ways, way => Assert.NotNull(way.Obstacle));
    }

    [Fact]
    public void Search_WhereTheTimeJumps_SaysSoWithBothSides()
    {
        double Jumps(double x) => x < 0.4 ? 300 - x : 100 - (50 * x);
        Assert.Equal(new(null, 80, 299.6, IsJump: true), Rounded(ReadySearch.Find(Jumps, 0, 1, 150)));
        Assert.Equal(0.8, ReadySearch.Find(Jumps, 0, 1, 60).At!.Value, 0.01);
        Assert.Equal(new(null, 50, 300, IsJump: false), Rounded(ReadySearch.Find(Jumps, 0, 1, 320)));
        Assert.Null(ReadySearch.Find(_ => double.PositiveInfinity, 0, 1, 320).At);
    }

    private static ReadyPlace Rounded(ReadyPlace place) => place with { Quick = Math.Round(place.Quick, 3), Slow = Math.Round(place.Slow, 3) };

    [Fact]
    public void ADoughWithoutWater_HasTheWarmthOfItsWarmPartsMoved()
    {
        var water = Ask(Rolls, HomeMinutes(Rolls) + 5).Ways[1].Water!;
        Assert.Equal(["scald", "potato"], water.Lines.Select(line => line.Line));
        Assert.True(water.Now < water.Lines.Max(line => line.Was));
    }

    [Fact]
    public void WaterThatIsPoured_IsWhatIsMoved()
    {
        var water = Ask(RecipeText.Read(Lean).Recipe!, HomeMinutes(RecipeText.Read(Lean).Recipe!) + 10).Ways[1].Water!;
        Assert.Equal("water", Assert.Single(water.Lines).Line);
        Assert.True(water.Now < water.Lines[0].Was && water.Dough!.Value.Likely < Temperature.FromCelsius(25));
    }

    private static ReadyAnswer Ask(Recipe recipe, double minutes) => Ready.Answer(recipe, Larder.Shipped, Request.Home, Duration.FromMinutes(minutes));

    private const string Lean = """
        doughwright: 1
        title: Lean loaf
        home:
          air: 25 C
        parts:
          dough:
            strong white flour: 500 g
            water: 325 g
            salt: 10 g
            instant yeast: 1.6 g
        steps:
          mix:
            of: dough
            hands: 5 min
            vessel: none
            measured: 25 C
          bulk:
            of: dough
            cover: covered
            ends: doubled
            measured: 200 min
            cue: at the tape
          proof:
            of: dough
            cover: cloth
            measured: 100 min
            cue: springs back
        """;
}
