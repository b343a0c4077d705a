using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>Whose oven it is, and what that does to the range of a bake in it.</summary>
public class OvenOffDialTests
{
    private static readonly Recipe Rolls = Taken.Recipe(Texts.PotatoRolls);

    /// <summary>The author's kitchen on a warmer day.</summary>
    private static readonly Kitchen Warmer = Rolls.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(23)) };

    [Theory]
    [InlineData("Attic, in July", OvenMode.Fan, true)]
    [InlineData("Attic", OvenMode.Fan, true)]
    [InlineData("Attic ,repainted", OvenMode.Fan, true)]
    [InlineData("Attic, in July", OvenMode.Static, false)]
    [InlineData("Attic two, in July", OvenMode.Fan, false)]
    [InlineData("Harbour", OvenMode.Fan, false)]
    [InlineData("", OvenMode.Fan, false)]
    public void Oven_IsTheAuthors_WhereThePlaceIs_AndItsKind(string name, OvenMode oven, bool isAuthors) =>
        Assert.Equal(isAuthors, AuthorsOven.IsIn(Warmer with { Name = name, Oven = oven }, Rolls.Home with { Name = "Attic, in March" }));

    /// <summary>The spread of an unknown oven is 8 K (oven-bias). Rolls at 170 °C whose surface stands near 100 °C take 8/70 more or less heat, so their minutes go apart.</summary>
    [Fact]
    public void AnothersOven_OfTheSameKind_WidensTheRange()
    {
        var (own, anothers) = (Range(Warmer), Range(Warmer with { Name = "Harbour" }));
        Assert.Equal(own.Likely, anothers.Likely);
        Assert.InRange((anothers.High!.Value - anothers.Low) / (own.High!.Value - own.Low), 1.15, 2.5);
    }

    [Theory]
    [InlineData("as its dial")]
    [InlineData("0 C hotter")]
    public void AnothersOven_ThatSomebodyMeasured_DoesNot(string runs)
    {
        var measured = KitchenText.Read(KitchenText.Write(Warmer with { Name = "Harbour" }).Replace("oven: fan", $"oven: fan\noven runs: {runs}", StringComparison.Ordinal)).Kitchen!;
        Assert.Equal(TemperatureDelta.Zero, measured.OvenTraits.OffDial);
        Assert.Equal(Range(Warmer), Range(measured));
        // What was measured is kept as such.
        Assert.Equal(measured, KitchenText.Read(KitchenText.Write(measured)).Kitchen);
    }

    /// <summary>5 K: the dial goes by steps of five.</summary>
    [Fact]
    public void AnothersOven_ThatRunsCool_IsSetHigher_AndKnown()
    {
        var cool = Warmer with { Name = "Harbour", OvenTraits = Warmer.OvenTraits with { OffDial = TemperatureDelta.FromKelvins(-5) } };
        Assert.Equal(175, Bake(cool).Dial!.Here.Celsius);
        Assert.Equal(Range(Warmer), Range(cool));
    }

    [Fact]
    public void Why_TellsOfAnOvenThatNobodyMeasured_AndOfNoOther()
    {
        bool Tells(Kitchen kitchen) => Bake(kitchen).Why().Parts.Any(part => part is { Kind: "oven-off-dial", Value: 8, Source: "oven-bias" });
        Assert.True(Tells(Warmer with { Name = "Harbour" }));
        Assert.False(Tells(Warmer));
        Assert.False(Tells(Warmer with { Name = "Harbour", OvenTraits = Warmer.OvenTraits with { OffDial = TemperatureDelta.Zero } }));
    }

    private static Estimate<Duration> Range(Kitchen kitchen) => Bake(kitchen).Time!.Value;

    private static RehearsedStep Bake(Kitchen kitchen) => Rehearser.Rehearse(Rolls, Larder.Shipped, Request.Home with { Kitchen = kitchen }).FindStep("bake")!;
}
