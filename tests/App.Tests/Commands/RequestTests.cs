using Doughwright.App.Commands;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Commands;

/// <summary>What is typed arrives at the rehearsal as typed.</summary>
public class RequestTests
{
    private static Request Asked(params string[] arguments)
    {
        var options = new Options();
        var given = new Given(options.Parse(["rehearse", "x", .. arguments]), new(new(Words.Shipped, MeasureSystem.Metric)));
        var request = RequestOptions.Read(given, options, Samples.Recipe, null);
        Assert.Equal([], given.Faults.All);
        return request;
    }

    [Fact]
    public void At_IsByLine_AndCanBeGivenAgain()
    {
        var at = Asked("--at", "scald=17C", "--at", "instant yeast=-18C").At;
        Assert.Equal(17, at["scald"].Celsius);
        Assert.Equal(-18, at["instant-yeast"].Celsius);
        Assert.Equal(2, at.Count);
    }

    [Theory]
    [InlineData("scald=none", null, null, false)]
    [InlineData("scald=steel:150g", VesselMaterial.Steel, 150.0, false)]
    [InlineData("scald=glass:350g,warmed", VesselMaterial.Glass, 350.0, true)]
    public void Bowl_IsByStep(string typed, VesselMaterial? material, double? grams, bool warmed)
    {
        var bowl = Asked("--bowl", typed).Bowls["scald"];
        Assert.Equal((material, grams, warmed), (bowl.Material, bowl.Mass?.Grams, bowl.Warmed));
        Assert.Equal(material is null, bowl.IsNone);
    }

    [Fact]
    public void Bowl_KeepsTheShapeThatIsWritten() => Assert.Equal(VesselShape.Tray, Asked("--bowl", "mash=aluminium:400g").Bowls["mash"].Shape);

    [Theory]
    [InlineData("mix=machine", MixingWay.Machine)]
    [InlineData("mix=hand", MixingWay.ByHand)]
    [InlineData("Mix by hand=food-processor", MixingWay.FoodProcessor)]
    public void Variant_IsByStep_IdOrName(string typed, MixingWay way) => Assert.Equal(way, Asked("--variant", typed).Ways["mix"]);

    [Theory]
    [InlineData("mix=machine", "machine")]
    [InlineData("mix=Mix by machine", "machine")]
    [InlineData("bulk=no fold", "no-fold")]
    public void Variant_ThatTheTextHas_IsTaken(string typed, string id)
    {
        var (request, faults) = AskedOfVariants(typed);
        Assert.Empty(faults);
        Assert.Equal(id, Assert.Single(request.Variants).Value);
        Assert.Empty(request.Ways);
    }

    [Theory]
    [InlineData("bulk=no folds", "no-fold")]
    [InlineData("mix=with the feet", "food-processor")]
    [InlineData("cool=slowly", "bake")]
    public void Variant_ThatTheStepHasNot_NamesThoseItHas(string typed, string named)
    {
        var fault = Assert.Single(AskedOfVariants(typed).Faults);
        Assert.Contains(named, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WayWithoutAVariant_IsTakenAsBefore() => Assert.Equal(MixingWay.ByHand, AskedOfVariants("mix=hand").Request.Ways["mix"]);

    private static (Request Request, IReadOnlyList<Fault> Faults) AskedOfVariants(string typed)
    {
        var recipe = RecipeText.Read(File.ReadAllText(House.PathTo("tests", "data", "texts", "potato-rolls-variants.yaml"))).Recipe!;
        var options = new Options();
        var given = new Given(options.Parse(["rehearse", "x", "--variant", typed]), new(new(Words.Shipped, MeasureSystem.Metric)));
        return (RequestOptions.Read(given, options, recipe, null), given.Faults.All);
    }

    [Fact]
    public void Weighed_IsRawThenCooked()
    {
        var weighed = Asked("--weighed", "potato=200g:170g").Weighed["potato"];
        Assert.Equal((200, 170), (weighed.RawPeeled.Grams, weighed.Cooked.Grams));
    }

    [Fact]
    public void DoughAndFree_GoTogether()
    {
        var request = Asked("--dough", "26C", "--free", "potato,scald", "--pour", "93C");
        Assert.Equal(26, request.Dough!.Value.Celsius);
        Assert.Equal(["potato", "scald"], request.Free);
        Assert.Equal(93, request.Pour!.Value.Celsius);
    }

    [Fact]
    public void NothingAsked_IsHome()
    {
        var request = Asked();
        Assert.Null(request.Kitchen);
        Assert.Null(request.Dough);
        Assert.Equal([0, 0, 0, 0, 0], new[] { request.At.Count, request.Bowls.Count, request.Ways.Count, request.Weighed.Count, request.Free.Count });
    }
}
