using CsCheck;
using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Tests.Baking.Radial;

/// <summary>Pieces that cool after the oven, along one radius.</summary>
public class RackTests
{
    /// <summary>A 500 g pan loaf as the thermal sheet has it (8.7), half an hour at 218 °C, then turned out.</summary>
    private static readonly RadialPiece PanLoaf = Pieces.Cylinder(Pieces.Lean(60), 500, 4.0, 200.0 / 56, 218, 12, shut: 0.75);

    /// <summary>
    /// A bakery cools a loaf to a core of 35 to 40 °C in air of 24 °C before it is sliced, in up to two hours by its size (trade pages, thermal sheet 8.7 and
    /// the table after it, marked read); on the way it loses 1 to 3 % of its mass (same sheet, from memory). Nothing is fitted to either.
    /// </summary>
    [Fact]
    public void PanLoaf_IsFitToSliceWithinTwoHours_AndLosesOneToThreeInAHundred()
    {
        var trace = Cool(PanLoaf, 28, RoomAt(24), 180, 60);
        var (slices, lost) = (trace.Falls(trace.Core, 0, 40) / 60, 100 * (trace.At(trace.Loss, 0, 7200) - trace.Loss[0]));
        TestContext.Current.TestOutputHelper?.WriteLine($"40 °C after {slices:F0} min, loses {lost:F2} % in two hours");
        Assert.InRange(slices, 45, 120);
        Assert.InRange(lost, 1, 3);
    }

    /// <summary>
    /// Where nothing evaporates and no vapour moves a piece of one temperature cools as a ball of constant properties: the centre of a sphere at a Biot
    /// number of 1 and Fourier numbers of 0.2, 0.5 and 1 (full series, thermal reference sheet 5.2, marked computed).
    /// </summary>
    [Fact]
    public void PieceOfOneTemperature_CoolsByTheSeries()
    {
        const double hot = 60, room = 20, conductivity = 0.3, reach = 0.04, capacity = 120 * (1700 + (0.5 * 4190));
        double Seconds(double fourier) => fourier * reach * reach * capacity / conductivity;
        var oven = Lanes8(hot, 1e-9);
        var trace = RackBake.Follow(new(3, 100, 0.01), new(1, 2, 2), oven, [new(Lanes8(room, conductivity / reach), new(Seconds(1), 2000, 2000))], until: null);
        Assert.Equal(.772312, (trace.At(trace.Core, 0, Seconds(0.2)) - room) / (hot - room), 1e-3);
        Assert.Equal(.370777, (trace.At(trace.Core, 0, Seconds(0.5)) - room) / (hot - room), 1e-3);
        Assert.Equal(.107977, (trace.At(trace.Core, 0, Seconds(1)) - room) / (hot - room), 1e-3);

        RadialLanes Lanes8(double celsius, double convective) => Constant(hot, reach, conductivity) with { Oven = Every(celsius), Convective = Every(convective) };
    }

    /// <summary>What the room took is missing in the piece and in the vapour that left it, to one part in a thousand million.</summary>
    [Fact]
    public void Heat_IsKeptOutOfTheOvenToo() => Gen.Select(Gen.Double[30, 1500], Gen.Double[45, 80], Gen.Double[5, 60], Gen.Double[-5, 45]).Sample(
        (grams, water, minutes, room) =>
        {
            var piece = PieceOf(grams, water);
            var (oven, rack) = (new BakeClock(60 * minutes, 100, 100), new BakeClock(7200, 60, 60));
            var run = new RadialRun<Lane1>(RadialBake.WorkingGrid(piece.Form.Dimensions), oven);
            run.Begin(RadialPiece.Lanes([piece]), 0);
            Advance(run, oven);
            var before = run.Heat.Held.Value;
            run.MoveTo(RadialPiece.Lanes([piece with { Oven = BakeLaws.Room(room), Shut = 0 }]), 0, rack);
            Advance(run, rack);
            var (held, given) = (run.Heat.Held.Value, run.Heat.Given.Value);
            Assert.InRange(Math.Abs(held - given) / Math.Abs(held - before), 0, 1e-9);
        },
        iter: 60);

    /// <summary>Ordinary steps and shells against ten times as many of each: the core within 0.4 K, the loss within a quarter of one percent.</summary>
    [Theory]
    [InlineData(60, 20)]
    [InlineData(500, 90)]
    [InlineData(1200, 240)]
    public void OrdinarySteps_AreNearFineOnes(double grams, double minutes)
    {
        var piece = PieceOf(grams, 62);
        var bake = 9 * Math.Pow(grams / 50, 0.45);
        var (coarse, fine) = (Cool(piece, bake, RoomAt(22), minutes, RackTrace.Steps), Cool(piece, bake, RoomAt(22), minutes, 1500, new(piece.Form.Dimensions, 100, 0.006)));
        foreach (var share in (double[])[0.25, 0.5, 1])
        {
            var at = 60 * minutes * share;
            TestContext.Current.TestOutputHelper?.WriteLine(
                $"{grams} g at {share * minutes} min: {coarse.At(coarse.Core, 0, at):F2} against {fine.At(fine.Core, 0, at):F2} °C; {Lost(coarse, at):F2} against {Lost(fine, at):F2} %");
            Assert.Equal(fine.At(fine.Core, 0, at), coarse.At(coarse.Core, 0, at), 0.4);
            Assert.Equal(Lost(fine, at), Lost(coarse, at), 0.25);
        }
    }

    /// <summary>Left long enough it is as cold as the room, or a little colder where it is still moist, and never below what a wet cloth would have.</summary>
    [Fact]
    public void Piece_ComesToTheRoom() => Gen.Select(Gen.Double[40, 900], Gen.Double[4, 45]).Sample(
        (grams, room) =>
        {
            var trace = Cool(PieceOf(grams, 62), 9 * Math.Pow(grams / 50, 0.45), RoomAt(room), 1500, 120);
            Assert.InRange(trace.Core[trace.Clock.Count * trace.Lanes], Math.Min(room, 7) - 3, room + 0.5);
            Assert.All(Enumerable.Range(1, trace.Clock.Count), step => Assert.InRange(trace.Loss[step * trace.Lanes] - trace.Loss[(step - 1) * trace.Lanes], -1e-4, 0.05));
        },
        iter: 20);

    /// <summary>
    /// The air about a rack is half as moist as it can be in that room, a fridge as well as a summer's kitchen: half the pressure of saturated vapour as steam
    /// tables have it, 0.8726, 2.3393 and 4.7596 kPa at 5, 20 and 32 °C (from memory).
    /// </summary>
    [Theory]
    [InlineData(5, 436.3)]
    [InlineData(20, 1169.7)]
    [InlineData(32, 2379.8)]
    public void AirAboutARack_IsHalfAsMoistAsItCanBe(double celsius, double pascals)
    {
        var lanes = RadialPiece.Lanes([PanLoaf]);
        Assert.All(RoomAt(celsius).Around(lanes, lanes.Transfer).Vapour!, vapour => Assert.Equal(pascals, vapour, 1.5));
    }

    /// <summary>
    /// Left for a day no piece is colder than a wet cloth in that room: the wet bulb of air at 50 % humidity by Stull's fit (J. Appl. Meteorol. Climatol. 50, 2011,
    /// 2267, good to 1 K from -20 °C to 50 °C; from memory, and his example of 13.7 °C in a room of 20 °C holds it).
    /// </summary>
    [Fact]
    public void Piece_IsNeverColderThanAWetClothThere()
    {
        Assert.Equal(13.7, WetBulb(20), 0.05);
        Gen.Select(Gen.Double[40, 900], Gen.Double[4, 45]).Sample(
            (grams, room) =>
            {
                var trace = Cool(PieceOf(grams, 62), 9 * Math.Pow(grams / 50, 0.45), RoomAt(room), 1500, 120);
                Assert.InRange(trace.Core[trace.Clock.Count * trace.Lanes], WetBulb(room) - 1, room + 0.5);
            },
            iter: 20);

        static double WetBulb(double celsius, double humidity = 50) =>
            (celsius * Math.Atan(0.151977 * Math.Sqrt(humidity + 8.313659))) + Math.Atan(celsius + humidity) - Math.Atan(humidity - 1.676331)
            + (0.00391838 * Math.Pow(humidity, 1.5) * Math.Atan(0.023101 * humidity)) - 4.686035;
    }

    [Fact]
    public void EveryLane_AtEveryWidth_HasTheSameDigits()
    {
        RadialPiece[] pieces = [.. Enumerable.Range(0, 11).Select(each => PanLoaf with { Transfer = 0.6 + (0.1 * each), Skin = 900 + (200 * each) })];
        BakeTrace At(int width) => Lanes.AtWidth(width, () => Cool(pieces, 28, RoomAt(20), 90, 60));
        var plain = At(1);
        foreach (var width in (int[])[2, 4, 8])
        {
            var packed = At(width);
            Assert.Equal(plain.Core, packed.Core);
            Assert.Equal(plain.Loss, packed.Loss);
        }
    }

    /// <summary>Pieces made so many times as fast are, at a moment, where they else are so many times as late: then all lanes come out at one moment.</summary>
    [Fact]
    public void PieceOfTwiceTheSpeed_IsThereInHalfTheTime()
    {
        var lanes = RadialPiece.Lanes([PanLoaf with { Oven = PanLoaf.Oven with { DoorDrop = 0 } }]);
        double[] twice = [.. lanes.Start.Select(_ => 2.0)];
        var quick = RackBake.AsFastAs(lanes, twice);
        var grid = RadialBake.WorkingGrid(PanLoaf.Form.Dimensions);
        var plain = RackBake.Follow(grid, new(1680, 100, 100), lanes, [new(RoomAt(22).Around(lanes, lanes.Transfer), new(5400, 60, 60))], until: null);
        var fast = RackBake.Follow(grid, new(840, 100, 100), quick, [new(RoomAt(22).Around(quick, twice), new(2700, 60, 60))], until: null);
        Assert.All(plain.Core.Zip(fast.Core), pair => Assert.Equal(pair.First, pair.Second, 1e-6));
        Assert.All(plain.Loss.Zip(fast.Loss), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
    }

    private static Rack RoomAt(double celsius) => Rack.Open(celsius);

    private static RadialPiece PieceOf(double grams, double water) => Pieces.Cylinder(Pieces.Lean(water), grams, 3.5, 1, 210, 12, shut: 0.2);

    private static double Lost(BakeTrace trace, double seconds) => 100 * (trace.At(trace.Loss, 0, seconds) - trace.Loss[0]);

    private static BakeTrace Cool(RadialPiece piece, double bake, Rack rack, double minutes, int steps, RadialGrid? grid = null) => Cool([piece], bake, rack, minutes, steps, grid);

    private static BakeTrace Cool(IReadOnlyList<RadialPiece> pieces, double bake, Rack rack, double minutes, int steps, RadialGrid? grid = null)
    {
        var lanes = RadialPiece.Lanes(pieces);
        var each = grid is null ? RadialBake.WorkingSteps : 2000;
        return RackBake.Follow(
            grid ?? RadialBake.WorkingGrid(pieces[0].Form.Dimensions), new(60 * bake, each, each), lanes, [new(rack.Around(lanes, Every(1, lanes.Count)), new(60 * minutes, steps, steps))], until: null);
    }

    private static void Advance(RadialRun<Lane1> run, BakeClock clock)
    {
        for (var step = 1; step <= clock.Count; step++)
        {
            run.Advance(step);
        }
    }

    private static double[] Every(double value, int count = 8) => [.. Enumerable.Repeat(value, count)];

    private static RadialLanes Constant(double celsius, double reach, double conductivity) => new()
    {
        Start = Every(celsius),
        Solids = Every(120),
        Reach = Every(reach),
        Water = Every(0.5),
        Heat = Every(1700),
        HeatSlope = Every(0),
        Conductivity = Every(conductivity),
        Gas = Every(0),
        Boil = Every(100),
        Pressure = Every(101325),
        Effectiveness = Every(0),
        Skin = Every(1e12),
        Open = Every(0),
        Convective = Every(0),
        Radiative = Every(0),
        Oven = Every(celsius),
        DoorDrop = Every(0),
        Steam = Every(1000),
        Transfer = Every(1),
    };
}
