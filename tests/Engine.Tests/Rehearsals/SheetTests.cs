using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>A piece warms by its shape. That a thin thing is warm sooner than a thick one of the same weight needs no source.</summary>
public class SheetTests
{
    private static Rehearsal Of(string make, string vessel = "", string bake = "", string flour = "strong white flour") => Rehearser.Rehearse(
        RecipeText.Read($"""
            doughwright: 1
            title: Cold dough
            make: {make}
            home:
              air: 26 C
              fridge: 4 C
            parts:
              dough:
                {flour}: 500 g
                water: 350 g, at 22 C
                salt: 10 g
                instant yeast: 3 g
            steps:
              mix:
                of: dough
                hands: 10 min
                way: by hand
              bulk:
                of: dough
                cover: covered
                ends: at 1.6 times its volume
                measured: 70 min
                cue: at the tape
              chill:
                kind: rest
                of: dough
                where: fridge
                cover: covered
                ends: after 12 h
              shape:
                of: dough
                hands: 10 min
              proof:
                of: dough
                cover: cloth
                {vessel}
                measured: 60 min
                cue: springs back slowly
              bake:
                of: dough
                oven: 220 C fan
                {bake}
                ends: core at 96 C
                cue: brown
            """).Recipe!,
        Larder.Shipped);

    private static double EndOfProof(string make, string vessel = "") => Of(make, vessel).FindStep("proof")!.EndTemperature!.Value.Celsius;

    [Fact]
    public void ASheet_WarmsSoonerThanALoaf_WithoutADepthWritten()
    {
        var loaf = EndOfProof("1 loaf of 860 g");
        var sheet = EndOfProof("1 sheet of 860 g");
        Assert.True(sheet > loaf + 4, $"{sheet} against {loaf}");
        // 760 cm³ on 40 by 30 cm lie 6 mm deep, and in a tray of 20 by 20 cm 19 mm.
        Assert.True(EndOfProof("1 sheet of 860 g", "vessel: tray, 40 x 30 cm") > EndOfProof("1 sheet of 860 g", "vessel: tray, 20 x 20 cm"));
        Assert.Equal(EndOfProof("1 loaf of 860 g"), EndOfProof("1 loaf of 860 g", "vessel: tray, 40 x 30 cm"), 1e-9);
    }

    [Fact]
    public void ThinPieces_WarmSoonerThanThickOnesOfOneWeight()
    {
        double[] ends = [EndOfProof("2 loaves of 430 g"), EndOfProof("2 rings of 430 g"), EndOfProof("2 baguettes of 430 g"), EndOfProof("2 flatbreads of 430 g")];
        Assert.Equal(ends.Order(), ends);
    }

    [Theory]
    [InlineData("vessel: steel tin, 500 g, 28 x 12 x 9 cm", null)]
    [InlineData("vessel: steel tin, 500 g, 20 x 10 x 8 cm", "tin-too-small")]
    [InlineData("vessel: steel tin, 500 g, 30 x 16 x 10 cm", "tin-too-large")]
    public void ATin_IsHeldAgainstTheTradesRoom(string vessel, string? told) => Assert.Equal(
        told is null ? [] : [told],
        Of("1 loaf of 860 g", vessel).Findings.Select(finding => finding.Kind).Where(kind => kind.StartsWith("tin-too", StringComparison.Ordinal)));

    [Theory]
    [InlineData("vessel: tray, 40 x 35 cm", 12, false)]
    [InlineData("vessel: tray, 20 x 20 cm", 12, true)]
    public void ATray_IsHeldAgainstTheRisenPieces(string vessel, int pieces, bool told) => Assert.Equal(
        told, Of($"{pieces} rolls of 70 g", vessel, "trays: 1").Findings.Any(finding => finding.Kind == "tray-too-small"));

    /// <summary>Side by side they lose their sides to each other, and warm later.</summary>
    [Fact]
    public void PiecesThatTouch_WarmLater()
    {
        double End(string tray) => Of("12 rolls of 70 g", tray, "trays: 1").FindStep("proof")!.EndTemperature!.Value.Celsius;
        Assert.True(End("vessel: tray, 24 x 20 cm") < End("vessel: tray, 60 x 45 cm") - 1);
        Assert.Equal(End("vessel: tray, 60 x 45 cm"), End("vessel: tray"), 1e-9);
    }

    /// <summary>860 g of dough just mixed take about 0.76 l, at 1.6 times 1.2 l, and more in the fridge.</summary>
    [Theory]
    [InlineData("1 l", true)]
    [InlineData("3 l", false)]
    public void ABowlThatIsTooSmall_IsTold(string bowl, bool told)
    {
        var text = RecipeText.Read($"""
            doughwright: 1
            title: Bowl of dough
            make: 1 loaf of 860 g
            home:
              air: 22 C
            parts:
              dough:
                strong white flour: 500 g
                water: 350 g, at 22 C
                salt: 10 g
                instant yeast: 3 g
            steps:
              mix:
                of: dough
                hands: 10 min
                way: by hand
              bulk:
                of: dough
                vessel: steel bowl, 500 g, {bowl}
                cover: covered
                ends: at 1.6 times its volume
                measured: 70 min
                cue: at the tape
            """);
        Assert.Equal(told, Rehearser.Rehearse(text.Recipe!, Larder.Shipped).Findings.Any(finding => finding is { Kind: "bowl-too-small", Place: "steps.bulk" }));
    }
}
