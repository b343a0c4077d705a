using CsCheck;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

/// <summary>What must hold whatever the numbers are.</summary>
public class ConductionLawTests
{
    private static readonly Gen<ConductionLanes> AnyLanes =
        from lanes in Gen.Int[1, 19]
        from conductivity in Gen.Double[0.1, 1.0].Array[lanes]
        from capacity in Gen.Double[1e6, 4e6].Array[lanes]
        from coefficient in Gen.Double[0, 60].Array[lanes]
        from start in Gen.Double[-2, 98].Array[lanes]
        from melting in Gen.Double[0, 1e8].Array[lanes]
        from wall in Gen.Double[0, 2e4].Array[lanes]
        from wallStart in Gen.Double[0, 90].Array[lanes]
        select new ConductionLanes
        {
            Conductivity = conductivity,
            HeatCapacity = capacity,
            Coefficient = coefficient,
            StartCelsius = start,
            MeltingHeat = melting,
            WallCapacity = wall,
            WallStartCelsius = wallStart,
        };

    [Fact]
    public void Advance_KeepsEnergy_ToRounding() => Gen.Select(AnyLanes, Gen.Enum<BodyShape>(), Gen.Double[-5, 45].Array[60]).Sample(
        (lanes, shape, air) =>
        {
            var run = ConductionRun.Start(new(shape, Length.FromMillimetres(40), 20), lanes, Duration.FromMinutes(1));
            var start = Enumerable.Range(0, lanes.Count).Select(run.HeatContent).ToArray();
            run.Advance(air, []);
            for (var lane = 0; lane < lanes.Count; lane++)
            {
                var scale = Math.Max(Math.Abs(start[lane]), 1e7);
                Assert.Equal(0, (run.HeatContent(lane) - start[lane] - run.HeatReceived(lane)) / scale, 1e-12);
            }
        },
        iter: 200);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Advance_AtEveryWidth_GivesTheSameDigits(bool melts) => Gen.Select(AnyLanes, Gen.Double[-5, 45].Array[25]).Sample(
        (lanes, air) =>
        {
            double[] Digits(int width)
            {
                var digits = new double[3 * air.Length * lanes.Count];
                var part = digits.Length / 3;
                var run = ConductionRun.Start(
                    new(BodyShape.Sphere, Length.FromMillimetres(40), 12),
                    melts ? lanes : lanes with { MeltingHeat = null },
                    Duration.FromMinutes(2),
                    width);
                run.Advance(air, digits.AsSpan(0, part), digits.AsSpan(part, part), digits.AsSpan(2 * part));
                return digits;
            }

            var plain = Digits(1);
            Assert.Equal(plain, Digits(2));
            Assert.Equal(plain, Digits(4));
            Assert.Equal(plain, Digits(8));
        },
        iter: 100);

    [Fact]
    public void Advance_OfOneLane_DoesNotDependOnTheOthers() => AnyLanes.Sample(
        lanes =>
        {
            double[] Alone(double[] values) => [values[^1]];
            var grid = new ConductionGrid(BodyShape.Cylinder, Length.FromMillimetres(30), 10);
            var single = new ConductionLanes
            {
                Conductivity = Alone(lanes.Conductivity),
                HeatCapacity = Alone(lanes.HeatCapacity),
                Coefficient = Alone(lanes.Coefficient),
                StartCelsius = Alone(lanes.StartCelsius),
                MeltingHeat = Alone(lanes.MeltingHeat!),
                WallCapacity = Alone(lanes.WallCapacity!),
                WallStartCelsius = Alone(lanes.WallStartCelsius!),
            };
            double[] air = [.. Enumerable.Repeat(20.0, 30)];
            double[] together = new double[30 * lanes.Count], alone = new double[30];
            ConductionRun.Start(grid, lanes, Duration.FromMinutes(1)).Advance(air, together);
            ConductionRun.Start(grid, single, Duration.FromMinutes(1)).Advance(air, alone);
            Assert.Equal(alone, Enumerable.Range(0, 30).Select(step => together[(step * lanes.Count) + lanes.Count - 1]));
        },
        iter: 100);

    [Fact]
    public void Advance_InParts_GivesTheSameDigitsAsInOne() => AnyLanes.Sample(
        lanes =>
        {
            var grid = new ConductionGrid(BodyShape.Slab, Length.FromMillimetres(10), 10);
            double[] air = [.. Enumerable.Range(0, 20).Select(step => 20.0 + step)];
            double[] whole = new double[20 * lanes.Count], parts = new double[20 * lanes.Count];
            ConductionRun.Start(grid, lanes, Duration.FromMinutes(1)).Advance(air, whole);
            var run = ConductionRun.Start(grid, lanes, Duration.FromMinutes(1));
            run.Advance(air.AsSpan(0, 1), parts);
            run.Advance(air.AsSpan(1, 6), parts.AsSpan(lanes.Count));
            run.Advance(air.AsSpan(7), parts.AsSpan(7 * lanes.Count));
            Assert.Equal(whole, parts);
        },
        iter: 50);

    [Fact]
    public void Advance_AllocatesNothing()
    {
        var run = ConductionRun.Start(new(BodyShape.Sphere, Length.FromMillimetres(40), 20), Butter(9), Duration.FromMinutes(1));
        double[] air = new double[50], mean = new double[50 * 9];
        run.Advance(air, mean);
        var before = GC.GetAllocatedBytesForCurrentThread();
        run.Advance(air, mean);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    /// <summary>
    /// A closed balance, done by hand: what melting takes must lie between start and end in the insulated wall-and-body pair.
    /// </summary>
    [Fact]
    public void Advance_OfButterInAWarmBowl_EndsWhereTheHeatsBalance()
    {
        // 2e6 J/(m³ K) of butter at 2 °C with 5e7 J/m³ to melt between 5 and 24 °C, and a wall worth 1.5e6 J/(m³ K) at 60 °C, no air.
        // Heat, from 0 °C: 2e6·2 + 1.5e6·60 = 9.4e7. All melted would hold 3.5e6·24 + 5e7 = 13.4e7, so it ends inside:
        // 3.5e6 t + 5e7 (t - 5)/19 = 9.4e7, t = (9.4e7 + 5e7·5/19) / (3.5e6 + 5e7/19).
        var expected = (9.4e7 + (5e7 * 5 / 19)) / (3.5e6 + (5e7 / 19));
        var grid = new ConductionGrid(BodyShape.Slab, Length.FromMillimetres(20), 20);
        var lanes = new ConductionLanes
        {
            Conductivity = [0.24],
            HeatCapacity = [2e6],
            Coefficient = [0],
            StartCelsius = [2],
            MeltingHeat = [5e7],
            WallCapacity = [1.5e6 / grid.SurfacePerVolume],
            WallStartCelsius = [60],
        };
        double[] mean = new double[4000], centre = new double[4000], surface = new double[4000];
        ConductionRun.Start(grid, lanes, Duration.FromMinutes(1)).Advance(new double[4000], mean, centre, surface);
        Assert.Equal(expected, mean[^1], 1e-9);
        Assert.Equal(expected, centre[^1], 1e-9);
        Assert.Equal(expected, surface[^1], 1e-9);
    }

    [Fact]
    public void Advance_ThroughMelting_ConvergesInTheSecondOrder()
    {
        double Mean(int steps)
        {
            var run = ConductionRun.Start(new(BodyShape.Slab, Length.FromMillimetres(15), 20), Butter(1), Duration.FromHours(2.0 / steps));
            var mean = new double[steps];
            run.Advance([.. Enumerable.Repeat(21.0, steps)], mean);
            return mean[^1];
        }

        var exact = Mean(6400);
        Assert.Equal(exact, Mean(100), 0.01);
        Assert.InRange(Math.Abs(Mean(50) - exact) / Math.Abs(Mean(200) - exact), 6, 30);
    }

    /// <summary>Butter from the fridge.</summary>
    private static ConductionLanes Butter(int lanes)
    {
        double[] All(double value) => [.. Enumerable.Repeat(value, lanes)];
        return new()
        {
            Conductivity = All(0.24),
            HeatCapacity = All(2.34e3 * 943),
            Coefficient = All(8),
            StartCelsius = All(5),
            MeltingHeat = All(60e3 * 0.81 * 943),
        };
    }
}
