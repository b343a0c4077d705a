using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>A dough that is mixed twice: flour and water, a rest, then the rest of it.</summary>
public class TwoMixesTests
{
    private const string Text = """
        doughwright: 1
        title: Soaked loaf
        make: 1 loaf of 850 g
        home:
          air: 22 C
        parts:
          dough:
            strong white flour: 500 g
            water: 340 g
            salt: 10 g
            instant yeast: 4 g
        steps:
          stir:
            kind: mix
            of: dough
            hands: 3 min
            vessel: steel bowl, 500 g
            order: strong white flour, water
          soak:
            kind: rest
            of: dough
            where: fridge
            cover: covered
            vessel: steel bowl, 500 g
            ends: after 12 h
          mix:
            of: dough
            hands: 8 min
            vessel: steel bowl, 500 g
            order: salt, instant yeast
        """;

    [Fact]
    public void OrdersOfBothMixes_TogetherLeaveNothingOut() => Assert.Empty(RecipeText.Read(Text).Findings);

    [Fact]
    public void LineInNoOrder_IsToldOnce() => Assert.Single(
        RecipeText.Read(Text.Replace("order: salt, instant yeast", "order: salt", StringComparison.Ordinal)).Findings,
        finding => finding.Kind == "order-leaves-out");

    /// <summary>After a night in the fridge at 5 °C the dough is mixed cold, not as warm as its ingredients on the shelf.</summary>
    [Fact]
    public void SecondMix_GoesOnWithTheColdDough()
    {
        var rehearsal = Rehearser.Rehearse(RecipeText.Read(Text).Recipe!, Larder.Shipped);
        Assert.InRange(rehearsal.FindStep("soak")!.EndTemperature!.Value.Celsius, 5, 5.5);
        Assert.InRange(rehearsal.FindStep("mix")!.EndTemperature!.Value.Celsius, 6, 8);
    }
}
