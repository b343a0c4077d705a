using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Wording;

public class LiveProseTests
{
    private static string Said(string prose, MeasureSystem measures = MeasureSystem.Metric) =>
        LiveProse.Of(prose, "bulk", Rehearser.Rehearse(Samples.Recipe, Larder.Shipped), new(Words.Shipped, measures)).Replace('\u00a0', ' ');

    [Theory]
    [InlineData("Let it double, about [bulk time].", "Let it double, about 1 h 45 min.")]
    [InlineData("Fold once, [fold after] in; the dough has [dough temperature].", "Fold once, 45 min in; the dough has 26 °C.")]
    [InlineData("[butter] of butter, oven at [oven], [pieces] rolls.", "50 g of butter, oven at 170 °C fan, 10 rolls.")]
    [InlineData("[sic] <b>[bulk time]</b>", "[sic] <b>1 h 45 min</b>")]
    public void Names_BecomeValues_AndAllElseStays(string prose, string said) => Assert.Equal(said, Said(prose));

    [Theory]
    [InlineData("[dough temperature]", "79 °F")]
    [InlineData("[oven]", "340 °F fan")]
    public void Values_AreInTheMeasuresOfTheReader(string prose, string said) => Assert.Equal(said, Said(prose, MeasureSystem.Us));
}
