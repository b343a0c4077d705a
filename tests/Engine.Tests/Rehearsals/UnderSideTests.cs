using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Shapes;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>How much of each form lies, from the geometry of its body.</summary>
public class UnderSideTests
{
    private static readonly VesselSize Tin = new(Length.FromMillimetres(250), Length.FromMillimetres(110), null, null);

    /// <summary>A dome as a cylinder of nine tenths of its radius and its volume: h = (2/3)/0.81 of the radius, so 0.9/2(0.9 + 0.823). A disc twelve times as wide as high: 6/2(6 + 1).</summary>
    [Theory]
    [InlineData("Ball", 0.2612)]
    [InlineData("Boule", 0.2612)]
    [InlineData("Flat", 0.4286)]
    [InlineData("Spiral", 0.25)]
    [InlineData("Ring", 0.25)]
    [InlineData("Baguette", 0.2439)]
    [InlineData("Batard", 0.2083)]
    public void Share_FollowsFromTheForm(string shape, double share)
    {
        var form = PieceForms.Of(Enum.Parse<PieceShape>(shape), 1e-3);
        Assert.Equal(share, UnderSide.Share(form), 1e-4);
        Assert.Equal((share, 0), (Math.Round(UnderSide.Shut(form, BakedOn.Tray), 4), UnderSide.Shut(form, BakedOn.Rack)));
    }

    /// <summary>25 x 11 x 10 cm: 275 cm² of 1,270 lie, and as much is open on top. A sheet as wide as long, 50 cm and 2 cm high: 1/2(1 + 4/50).</summary>
    [Fact]
    public void Share_OfWhatFillsTinOrTray_IsItsFloor()
    {
        var loaf = PieceForms.Of(PieceShape.TinLoaf, 0.25 * 0.11 * 0.10, vessel: Tin);
        Assert.Equal(275.0 / 1270, UnderSide.Share(loaf), 1e-9);
        Assert.Equal(995.0 / 1270, UnderSide.Shut(loaf, BakedOn.Rack), 1e-9);
        var sheet = PieceForms.Of(PieceShape.Sheet, 0.25 * 0.02, depth: Length.FromMillimetres(20));
        Assert.Equal(1 / (2 * (1 + (4.0 / 50))), UnderSide.Share(sheet), 1e-9);
        Assert.Equal(UnderSide.Share(sheet), UnderSide.Shut(sheet, BakedOn.Rack), 1e-9);
    }

    /// <summary>What rises gets rounder; it never lies on more of itself than before.</summary>
    [Theory]
    [InlineData("Batard")]
    [InlineData("Baguette")]
    [InlineData("Sheet")]
    [InlineData("TinLoaf")]
    [InlineData("Flat")]
    public void Share_OfWhatHasRisen_IsNotMore(string shape)
    {
        double Share(double growth) => UnderSide.Share(PieceForms.Of(Enum.Parse<PieceShape>(shape), 1e-3, growth));
        Assert.True(Share(3) < Share(1));
        Assert.InRange(Share(3), 0.05, 0.5);
    }
}
