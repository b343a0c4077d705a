using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>
/// A night in the fridge. Four texts [read: bakers' dictionary, a compendium, a professional handbook, a home baker's page; fermentation reference
/// sheet 6, S35 to S38]: at 1.7 to 5 °C yeast nearly stands still, but a dough goes on while it cools; a 0.85 kg ball takes about 4 h to 8 °C in its
/// middle, and most of the night's rise happens in those hours. The sheet's own model gives 1.2 to 2 times for time constants of 1 to 3 h.
/// </summary>
public class RetardTests(ITestOutputHelper output)
{
    private static string Text(double grams, string make, string retard, string vessel = "steel bowl, 500 g", string shapeFirst = "") => FormattableString.Invariant($"""
        doughwright: 1
        title: Overnight dough
        make: {make}
        home:
          air: 25 C
          fridge: 4 C
        parts:
          dough:
            strong white flour: {grams / 1.67:F1} g
            water: {grams / 1.67 * 0.65:F1} g, at 24 C
            salt: {grams / 1.67 * 0.02:F1} g
            instant yeast: {grams / 1.67 * 0.005:F2} g
        steps:
          mix:
            of: dough
            hands: 10 min
            way: by hand
            measured: 25 C
          bulk:
            of: dough
            vessel: {vessel}
            cover: covered
            ends: at 1.15 times its volume
            measured: 45 min
            cue: a few bubbles
        {shapeFirst}
          retard:
            kind: rest
            of: dough
            where: fridge
            vessel: {vessel}
            cover: covered
            ends: after {retard}
          last:
            kind: bulk
            of: dough
            cover: covered
            ends: by its cue, about 60 min
            cue: risen
        """);

    private const string Shaped = """
          shape:
            of: dough
            hands: 5 min
        """;

    private static RehearsedStep Retard(string text, Kitchen? kitchen = null) =>
        Rehearser.Rehearse(RecipeText.Read(text).Recipe!, Larder.Shipped, kitchen is null ? null : new() { Kitchen = kitchen }).FindStep("retard")!;

    private static double Rise(string text) => Retard(text).Growth!.Value;

    private static double Part(RehearsedStep step, string kind) => step.Why().Parts.Single(part => part.Kind == kind).Value!.Value;

    [Theory]
    [InlineData(850, "12 h")]
    [InlineData(850, "16 h")]
    [InlineData(1500, "12 h")]
    public void ANightAtFourDegrees_RisesOneAndAFifthToTwice(double grams, string time)
    {
        var step = Retard(Text(grams, FormattableString.Invariant($"1 loaf of {grams} g"), time));
        var (from, to) = (Part(step, "rises-from"), Part(step, "rises-to"));
        output.WriteLine($"{grams} g, {time}: {from:F2} to {to:F2}, {to / from:F2} times");
        Assert.InRange(to / from, 1.2, 2.0);
    }

    /// <summary>Most of a night's rise is over when the middle is cold.</summary>
    [Fact]
    public void MostOfTheRise_IsInTheFirstHours()
    {
        double At(string time) => Rise(Text(850, "1 loaf of 850 g", time));
        var start = Part(Retard(Text(850, "1 loaf of 850 g", "4 h")), "rises-from");
        Assert.InRange((At("4 h") - start) / (At("12 h") - start), 0.5, 0.95);
    }

    /// <summary>Larger is slower cold and rises more; small pieces on a tray hardly rise; flat dough least of all. Order is all that is asked.</summary>
    [Fact]
    public void Size_AndShape_AndContainer_Tell()
    {
        double[] rises =
        [
            // Pieces begin again after shaping, so each is told against its own start.
            Of(Text(900, "12 flatbreads of 75 g", "12 h", shapeFirst: Shaped)),
            Of(Text(900, "12 rolls of 75 g", "12 h", shapeFirst: Shaped)),
            Of(Text(900, "1 loaf of 900 g", "12 h")),
            Of(Text(4000, "1 loaf of 4000 g", "12 h")),
        ];
        output.WriteLine(string.Join(", ", rises.Select(rise => rise.ToString("F3", System.Globalization.CultureInfo.InvariantCulture))));
        Assert.Equal(rises.Order(), rises);

        static double Of(string text)
        {
            var step = Retard(text);
            return Part(step, "rises-to") / Part(step, "rises-from");
        }
    }

    /// <summary>A large dough is still warm inside after three hours in the fridge, a small one is not.</summary>
    [Fact]
    public void TheMiddle_LagsBehindTheOutside()
    {
        var (large, small) = (Retard(Text(4000, "1 loaf of 4000 g", "3 h")), Retard(Text(900, "12 rolls of 75 g", "3 h", shapeFirst: Shaped)));
        Assert.True(Part(large, "innermost-shell-ends") > Part(large, "outermost-shell-ends") + 4);
        Assert.True(Part(small, "innermost-shell-ends") < 6);
    }

    [Fact]
    public void AWarmerFridge_RisesMore()
    {
        var text = Text(850, "1 loaf of 850 g", "12 h");
        double In(double fridge) => Retard(text, new() { Air = AirProfile.Constant(Bake.Celsius(25)), Fridge = Bake.Celsius(fridge) }).Growth!.Value;
        Assert.True(In(8) > In(5) && In(5) > In(2));
    }

    /// <summary>Cold water takes heat far sooner than the air of the same room.</summary>
    [Fact]
    public void ABath_CoolsSoonerThanTheRoom()
    {
        static double Minutes(string where) => Rehearser.Rehearse(RecipeText.Read($"""
            doughwright: 1
            title: Mash
            make: 1 loaf of 500 g
            home:
              air: 20 C
              tap: 12 C
            parts:
              mash:
                kind: puree
                potato: 400 g, boiled, peeled, mashed
              dough:
                strong white flour: 300 g
                mash: all of it
                water: 60 g
                salt: 6 g
                instant yeast: 3 g
            steps:
              boil:
                kind: cook
                of: mash
                where: hob
                ends: after 20 min
              cool:
                of: mash
                where: {where}
                vessel: steel bowl, 400 g
                cover: covered
                ends: at 25 C
              mix:
                of: dough
                hands: 10 min
                way: by hand
            """).Recipe!, Larder.Shipped, new() { Kitchen = new() { Air = AirProfile.Constant(Bake.Celsius(20)), Tap = Bake.Celsius(12), Altitude = Length.FromMetres(1) } })
            .FindStep("cool")!.Time!.Value.Likely.Minutes;
        Assert.InRange(Minutes("bath"), 5, 0.5 * Minutes("room"));
    }
}
