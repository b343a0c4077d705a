using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

/// <summary>A body whose lanes each have air of their own.</summary>
public class AirOfEachLaneTests
{
    private const int Lanes = 5;
    private const int Steps = 12;

    private static ConductionRun Start(int lanes, int width) => ConductionRun.Start(
        new(BodyShape.Sphere, Length.FromMetres(0.06), 8),
        new()
        {
            Conductivity = [.. Enumerable.Repeat(0.4, lanes)],
            HeatCapacity = [.. Enumerable.Repeat(3.1e6, lanes)],
            Coefficient = [.. Enumerable.Repeat(8.0, lanes)],
            StartCelsius = [.. Enumerable.Repeat(25.0, lanes)],
        },
        Duration.FromMinutes(5),
        width);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(8)]
    public void EveryLane_GoesAsItWouldAlone(int width)
    {
        var airs = Enumerable.Range(0, Steps * Lanes).Select(i => 15.0 + (i % 7) + (i % Lanes)).ToArray();
        var together = new double[Steps * Lanes];
        Start(Lanes, width).AdvanceEach(airs, together);
        for (var lane = 0; lane < Lanes; lane++)
        {
            var alone = new double[Steps];
            Start(1, 1).Advance([.. Enumerable.Range(0, Steps).Select(step => airs[(step * Lanes) + lane])], alone);
            Assert.Equal(alone, Enumerable.Range(0, Steps).Select(step => together[(step * Lanes) + lane]));
        }
    }
}
