using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals.Differences;

/// <summary>What moved the figures of the potato rolls.</summary>
public class MoverTests
{
    private static readonly Formula Rolls = Formula.Balance(RecipeText.Read(Texts.PotatoRolls).Recipe!, Larder.Shipped);

    private static readonly Kitchen Home = Rolls.Recipe.Home;

    private static readonly Kitchen Cottage = KitchenText.Read(Texts.Read("demo/kitchens/winter-cottage.yaml")).Kitchen!;

    private static readonly Request Kept = new() { Kitchen = Cottage, Dough = Temperature.FromCelsius(26), Free = ["potato", "scald"] };

    private static RehearsalDifferences Between(Request first, Request second) => RehearsalDifferences.Between(Rolls, Larder.Shipped, first, second);

    private static RehearsalDifferences To(Kitchen kitchen) => Between(Request.Home, new() { Kitchen = kitchen });

    private static Move[] MovesOf(Difference? difference) => [.. difference!.Parts.SelectMany(part => part.Moves)];

    [Fact]
    public void OneProperty_MovesAlone()
    {
        Assert.Equal([new(Mover.Height, Direction.More)], MovesOf(To(Home with { Altitude = Length.FromMetres(1200) }).Find(FigureKind.Minutes, "bulk")));
        Assert.Equal([new(Mover.Height, Direction.More)], MovesOf(To(Home with { Altitude = Length.FromMetres(1200) }).Find(FigureKind.Boils)));
        Assert.Equal([new(Mover.Oven, Direction.Less)], MovesOf(To(Home with { Oven = OvenMode.Static }).Find(FigureKind.Dial, "bake")));
        Assert.Equal([new(Mover.Room, Direction.Less)], MovesOf(To(Home with { Air = AirProfile.Constant(Temperature.FromCelsius(17)) }).Find(FigureKind.Minutes, "bulk")));
    }

    /// <summary>The shelf follows the room where nothing else is said of it, and then the room has moved both.</summary>
    [Fact]
    public void Shelf_GoesWithTheRoom_WhereItIsAsWarm()
    {
        var colder = Home with { Air = AirProfile.Constant(Temperature.FromCelsius(17)) };
        Assert.Equal([Mover.Room], MovesOf(To(colder with { Ingredients = Temperature.FromCelsius(17) }).Find(FigureKind.Mixed, "dough")).Select(move => move.Mover));
        var shelf = To(colder with { Ingredients = Temperature.FromCelsius(21) }).Find(FigureKind.Mixed, "dough")!;
        Assert.Contains(new Move(Mover.Shelf, Direction.More), MovesOf(shelf));
    }

    /// <summary>A dough kept as warm as at home is told of as one that is kept: nobody loses an hour to a room and wins it back by warm parts.</summary>
    [Fact]
    public void KeptDough_IsKeptFirst_AndGivenUpLast()
    {
        var there = Between(Request.Home, Kept).Find(FigureKind.Minutes, "bulk")!;
        var back = Between(Kept, Request.Home).Find(FigureKind.Minutes, "bulk")!;
        Assert.Equal([Mover.Room, Mover.Height], MovesOf(there).Select(move => move.Mover).Where(mover => mover != Mover.Warmth));
        Assert.All(there.Parts, part => Assert.InRange(Math.Abs(part.By), 0, 30));
        Assert.All(back.Parts, part => Assert.InRange(Math.Abs(part.By), 0, 30));
        Assert.True(there.Parts.Single(part => part.Moves[0].Mover == Mover.Room).By > 0);
        Assert.True(there.Parts.Single(part => part.Moves[0].Mover == Mover.Height).By < 0);
    }

    /// <summary>How warm the parts go in is an answer to the whole kitchen, so all that asks for another warmth has its part in it.</summary>
    [Fact]
    public void FreeParts_GoInWarmer_ForAColderRoom()
    {
        var scald = Between(Request.Home, Kept).Find(FigureKind.GoesIn, Request.LineOf("dough", "scald"))!;
        Assert.InRange(scald.By!.Value, 2, 10);
        Assert.Equal(scald.By.Value, scald.Parts.Sum(part => part.By), 1e-9);
        Assert.True(scald.Parts.Single(part => part.Moves[0].Mover == Mover.Room).By > 0.8 * scald.By.Value);
    }

    [Fact]
    public void StepThatNeverEnds_IsSaidToNeverEnd()
    {
        var hot = To(Home with { Air = AirProfile.Constant(Temperature.FromCelsius(34)) });
        var never = hot.All.Where(difference => difference.SecondUnknown == Unknown.NeverEnds).ToList();
        Assert.NotEmpty(never);
        Assert.All(never, difference => Assert.Equal(FigureKind.Minutes, difference.Figure.Kind));
        Assert.Equal(Unknown.NotKnown, hot.Find(FigureKind.Total)!.SecondUnknown);
    }

    /// <summary>Where the room alone would leave no end, and the rest of the kitchen gives it back, the two have moved it together.</summary>
    [Fact]
    public void WhatCannotBeToldHalfWay_IsMovedTogether()
    {
        var frosty = Home with
        {
            Air = AirProfile.Of([(Duration.Zero, Temperature.FromCelsius(21)), (Duration.FromMinutes(200), Temperature.FromCelsius(0))]),
            ProofingPlace = Temperature.FromCelsius(26),
        };
        var proof = To(frosty).Find(FigureKind.Minutes, "proof")!;
        var together = proof.Parts.Single(part => part.Moves.Count > 1);
        Assert.Equal([Mover.Room, Mover.ProofingPlace], together.Moves.Select(move => move.Mover));
        Assert.Equal(proof.By!.Value, proof.Parts.Sum(part => part.By), 1e-9);
    }
}
