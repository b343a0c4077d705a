using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.Fermentation;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>
/// A dough in a cold kitchen cools while it rises. Its bulk is not the author's 105 min, and not that of a dough taken to be as cold as the
/// kitchen throughout. Times are expected from the model, not evidence.
/// </summary>
public class DriftTests
{
    private const double Home = 105;
    private static readonly Kitchen Cold = new() { Air = AirProfile.Constant(Bake.Celsius(17)) };

    private static double Bulk(Request request) => Rehearser.Rehearse(RecipeText.Read(Texts.PotatoRolls).Recipe!, Larder.Shipped, request)
        .FindStep("bulk")!.Time!.Value.Likely.Minutes;

    /// <summary>26 °C throughout at home and 17 °C throughout here: what a table of times by dough temperature does.</summary>
    private static double ByTheKitchenAlone()
    {
        var parameters = RiseParameters.Central(1, new());
        var dough = RollDough.Of(parameters);
        RiseHistory At(double celsius) => RiseHistory.Constant(Bake.Celsius(celsius), 1, Duration.FromHours(10), Duration.FromMinutes(2.5));
        var anchor = Rise.Anchor(dough, parameters, [RiseCase.SeaLevel], At(26), [Home], 2, RiseFolds.AtMinutes(1, 45));
        var state = new RiseState(dough, parameters, anchor.Scale, [RiseCase.SeaLevel], [17]);
        return Rise.TimeToGrowth(state, At(17), 2, anchor.Folds.Elsewhere())[0];
    }

    [Fact]
    public void DoughTakenAsColdAsTheKitchen_WouldBeFarSlower()
    {
        var wrong = ByTheKitchenAlone();
        Assert.Equal(226, wrong, 8.0);
        var asWritten = Bulk(new() { Kitchen = Cold });
        var cooled = new Dictionary<string, Temperature> { ["scald"] = Bake.Celsius(17), ["potato"] = Bake.Celsius(17) };
        var neglected = Bulk(new() { Kitchen = Cold, At = cooled });
        Assert.True(asWritten > 1.15 * Home);
        Assert.True(neglected > asWritten);
        Assert.True(wrong > 1.15 * neglected, $"{neglected} min against {wrong}");
        Assert.True(wrong > 1.5 * asWritten);
    }
}
