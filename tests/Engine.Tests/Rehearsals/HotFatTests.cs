using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>At 2,500 m water boils at 91.6 °C; what has no water in it goes in as hot as the author says.</summary>
public class HotFatTests
{
    private const string Text = """
        doughwright: 1
        title: Loaf with hot oil
        make: 1 loaf of 850 g
        home:
          air: 22 C
          altitude: 2500 m
        parts:
          dough:
            strong white flour: 500 g
            water: 310 g, at 99 C
            olive oil: 30 g, at 99 C
            salt: 10 g
            instant yeast: 4 g
        steps:
          mix:
            of: dough
            hands: 8 min
            vessel: steel bowl, 500 g
        """;

    [Fact]
    public void OnlyWhatIsWatery_GoesInNoHotterThanItBoils()
    {
        var heat = Rehearser.Rehearse(RecipeText.Read(Text).Recipe!, Larder.Shipped).HeatOf("mix")!;
        double GoesIn(string line) => heat.Shares.Single(share => share.Line == line).GoesIn!.Value.Celsius;
        Assert.Equal(99, GoesIn("olive-oil"), 1e-9);
        Assert.Equal(91.6, GoesIn("water"), 0.1);
    }
}
