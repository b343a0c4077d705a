using BenchmarkDotNet.Attributes;
using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Bench;

/// <summary>
/// The kernels of a rehearsal with 32 lanes: 100 steps of heat in a ball of 16 shells, 100 steps of a rise, one bake until the core is done.
/// The peer is the same kernel with plain doubles.
/// </summary>
[BenchmarkCategory("kernels")]
public class KernelProbe
{
    private const int LaneCount = 32;
    private const int Steps = 100;

    private readonly ConductionGrid grid = new(BodyShape.Sphere, Length.FromMillimetres(50), 16);
    private readonly double[] air = Every(21, Steps);
    private readonly double[] mean = new double[Steps * LaneCount];
    private readonly ConductionLanes heat = new()
    {
        Conductivity = Every(0.4, LaneCount),
        HeatCapacity = Every(3e6, LaneCount),
        Coefficient = [.. Enumerable.Range(0, LaneCount).Select(lane => 6 + (lane * 0.1))],
        StartCelsius = Every(5, LaneCount),
    };

    private readonly RiseParameters parameters = RiseParameters.Draw(new(), LaneCount, dimension => Draws.Normal(dimension, LaneCount));
    private readonly RiseDough dough;
    private readonly double[] warmth = Every(25, Steps * LaneCount);
    private readonly RadialLanes oven = RadialPiece.Lanes(
    [
        .. Enumerable.Range(0, LaneCount).Select(lane => new RadialPiece
        {
            Dough = new(0.75, 1600, 1.6, 1220, 0.47),
            Mass = Mass.FromGrams(90),
            CubicMetres = 90 * 2.6e-6,
            Form = RadialForm.Ball,
            Start = Temperature.FromCelsius(26),
            Pressure = Pressure.FromPascals(101325),
            Effectiveness = BakeLaws.Effectiveness.Central,
            Skin = BakeLaws.Skin.Central,
            Oven = BakeLaws.Oven(OvenMode.Fan, 170),
            Transfer = 0.8 + (lane * 0.01),
        }),
    ]);

    private readonly RadialGrid shells = RadialBake.WorkingGrid(3);
    private readonly BakeClock clock = RadialBake.ClockFor(Mass.FromGrams(90), 4);

    public KernelProbe() => dough = RiseDough.Of(
        new()
        {
            Flour = Mass.FromGrams(400),
            Water = Mass.FromGrams(270),
            Salt = Mass.FromGrams(7),
            Sugar = Mass.FromGrams(33),
            FreshYeast = Mass.FromGrams(12),
            Fat = Mass.FromGrams(45),
            OtherSolids = Mass.FromGrams(25),
        },
        parameters);

    [Params("heat", "heat with butter", "rise", "bake")]
    public string Kernel { get; set; } = "heat";

    [Benchmark(Baseline = true, Description = "1 lane")]
    public double One() => Lanes.AtWidth(1, Run);

    [Benchmark(Description = "2 lanes")]
    public double Two() => Lanes.AtWidth(2, Run);

    [Benchmark(Description = "4 lanes")]
    public double Four() => Lanes.AtWidth(4, Run);

    [Benchmark(Description = "8 lanes")]
    public double Eight() => Lanes.AtWidth(8, Run);

    private double Run() => Kernel switch
    {
        "heat" => Heat(heat),
        "heat with butter" => Heat(heat with { MeltingHeat = Every(4e7, LaneCount) }),
        "rise" => Rise(),
        _ => RadialBake.UntilDone(shells, clock, oven, Every(93, LaneCount)).Loss[0],
    };

    private double Heat(ConductionLanes lanes)
    {
        ConductionRun.Start(grid, lanes, Duration.FromMinutes(2)).Advance(air, mean);
        return mean[^1];
    }

    private double Rise()
    {
        var state = new RiseState(dough, parameters, Every(1, LaneCount), Every(101325, LaneCount), Every(25, LaneCount));
        state.Begin(RiseStage.ToGrowth(Every(100, LaneCount)));
        state.Advance(warmth, Duration.FromMinutes(2));
        return state.Growth[0];
    }

    private static double[] Every(double value, int count) => [.. Enumerable.Repeat(value, count)];
}
