using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Tests.Rehearsals.Sections;

/// <summary>A face over a section takes from an oven what the one surface along a radius takes from it.</summary>
public class SectionOvenTests
{
    [Theory]
    [InlineData("Fan", 170, 1, 25)]
    [InlineData("Fan", 170, 40, 90)]
    [InlineData("Static", 230, 1000, 150)]
    [InlineData("Static", 250, 300, 60)]
    public void Face_TakesWhatTheSurfaceAlongARadiusTakes(string mode, double celsius, double seconds, double surface)
    {
        var oven = Ovens.Of(Enum.Parse<OvenMode>(mode), celsius) with { Change = new(600, -30, 2000, 0.2) };
        var face = SectionOven.Face(oven).Scaled(1.2).HeatAt(seconds, surface);
        var lanes = RadialPiece.Lanes([Baking.Radial.Pieces.SmallLoaf with { Oven = oven, Transfer = 1.2 }]);
        var (coefficient, meets) = new OvenPack<Lane1>(lanes, 0).HeatAt(seconds, Lane1.Of(surface));
        Assert.Equal(coefficient.Value, face.Coefficient, 1e-9);
        Assert.Equal(meets.Value, face.Meets, 1e-9);
    }

    /// <summary>Black walls of 180 °C round a surface of 100 give 16.15 W/(m² K), of 220 °C round one of 120 19.99: thermal reference sheet 7.1, computed.</summary>
    [Theory]
    [InlineData(180, 100, 16.15)]
    [InlineData(220, 120, 19.99)]
    [InlineData(250, 150, 24.29)]
    public void Walls_ShineByTheFourthPower(double walls, double surface, double coefficient) =>
        Assert.Equal(coefficient, SectionOven.Face(new(walls, 0, 1)).HeatAt(0, surface).Coefficient, 0.006);

    /// <summary>When the door has just been shut the air is cooler than the walls, and a little later not.</summary>
    [Fact]
    public void Air_ComesBackAfterTheDoor()
    {
        var face = SectionOven.Face(Ovens.Of(OvenMode.Fan, 200));
        Assert.Equal((165, 200), (face.Air(0), face.Wall(0)));
        Assert.Equal(200, face.Air(600), 0.01);
    }
}
