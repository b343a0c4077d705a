using Doughwright.Engine.Kitchens;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Sizes of vessels: sides with the unit at the end, or a volume.</summary>
public class VesselSizeTextTests
{
    /// <summary>Volumes worked out by hand: 30 x 11 x 10 cm is 3.3 l; a quarter pi of 24 cm squared by 7 cm is 3.1667 l; 9 x 5 x 3 in is 135 cubic inches of 16.387064 ml.</summary>
    [Theory]
    [InlineData("30 x 11 x 10 cm", VesselShape.Tin, 3.3)]
    [InlineData("30x11x10cm", VesselShape.Tin, 3.3)]
    [InlineData("300 x 110 x 100 mm", VesselShape.Tin, 3.3)]
    [InlineData("24 x 7 cm", VesselShape.Tin, 3.16672)]
    [InlineData("9 x 5 x 3 in", VesselShape.Tin, 2.21225364)]
    [InlineData("3 l", VesselShape.Bowl, 3)]
    [InlineData("750 ml", VesselShape.Bowl, 0.75)]
    public void Size_HasItsVolume(string words, VesselShape shape, double litres) =>
        Assert.Equal(litres, VesselSizeText.Read(words, shape)!.Volume!.Value.Litres, 0.00001);

    [Fact]
    public void TwoSidesOfATray_AreItsFloor()
    {
        var tray = VesselSizeText.Read("40 x 30 cm", VesselShape.Tray)!;
        Assert.Equal(0.12, tray.Floor!.Value, 1e-12);
        Assert.Null(tray.Volume);
    }

    [Theory]
    [InlineData("30 x 11 x 10")]
    [InlineData("30 x 11 x 10 g")]
    [InlineData("30 x x 10 cm")]
    [InlineData("0 x 11 x 10 cm")]
    [InlineData("-3 x 11 x 10 cm")]
    [InlineData("1 x 2 x 3 x 4 cm")]
    [InlineData("30 cm")]
    [InlineData("0 l")]
    [InlineData("cm")]
    [InlineData("")]
    public void WhatIsNoSize_IsNone(string words) => Assert.Null(VesselSizeText.Read(words, VesselShape.Tin));

    [Theory]
    [InlineData("steel tin, 500 g, 30 x 11 x 10 cm")]
    [InlineData("steel bowl, 500 g, 3 l")]
    [InlineData("tin, 24 x 7 cm, warmed")]
    [InlineData("steel tray, 300 g, 40 x 30 cm")]
    [InlineData("tin, 9 x 5 x 3 in")]
    public void VesselInAText_KeepsItsSize(string vessel)
    {
        var text = $"doughwright: 1\ntitle: T\nhome:\n  air: 21 C\nparts:\n  dough:\n    strong white flour: 500 g\nsteps:\n  bulk:\n    of: dough\n    vessel: {vessel}\n";
        var reading = RecipeText.Read(text);
        Assert.True(reading.Understood);
        Assert.NotNull(reading.Recipe!.Steps[0].Vessel!.Size);
        Assert.Contains($"vessel: {vessel}\n", RecipeText.Write(reading.Recipe), StringComparison.Ordinal);
    }

    [Fact]
    public void BrokenSize_IsToldAtItsPlace()
    {
        var reading = RecipeText.Read("doughwright: 1\ntitle: T\nhome:\n  air: 21 C\nparts:\n  dough:\n    flour: 500 g\nsteps:\n  bulk:\n    of: dough\n    vessel: steel tin, 30 x 11\n");
        var finding = Assert.Single(reading.Findings, finding => finding.Kind == "size-not-understood");
        Assert.Equal(new(11, 24), finding.Position);
    }
}
