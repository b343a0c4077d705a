using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Shapes;

namespace Doughwright.Engine.Tests.Shapes;

/// <summary>
/// A finite shape as a ball of another number of dimensions, against the product of the solutions along its ways, which is exact for constant
/// properties and one air (thermal reference sheet 5.3: product solutions).
/// </summary>
public class HeatFormTests(ITestOutputHelper output)
{
    private const double Conductivity = 0.45;
    private const double Diffusivity = 1.3e-7;
    private const double Capacity = Conductivity / Diffusivity;

    /// <summary>Half an hour, an hour, two, four and six hours, in steps of half a minute.</summary>
    private static readonly int[] Marks = [60, 120, 240, 480, 720];

    public static TheoryData<string, double> Shapes
    {
        get
        {
            var all = new TheoryData<string, double>();
            foreach (var shape in new[] { "stubby", "brick", "round", "batard", "cube" })
            {
                foreach (var coefficient in new[] { 5.0, 8, 15, 30 })
                {
                    all.Add(shape, coefficient);
                }
            }

            return all;
        }
    }

    private static (HeatWay[] Ways, double Volume, double Area) Of(string shape)
    {
        HeatWay Way(int dimensions, double metres) => new(dimensions, Length.FromMetres(metres));
        (HeatWay[], double, double) Rod(double radius, double high) =>
            ([Way(2, radius), Way(1, high / 2)], Math.PI * radius * radius * high, (2 * Math.PI * radius * radius) + (2 * Math.PI * radius * high));
        (HeatWay[], double, double) Box(double a, double b, double c) =>
            ([Way(1, a / 2), Way(1, b / 2), Way(1, c / 2)], a * b * c, 2 * ((a * b) + (b * c) + (c * a)));
        return shape switch
        {
            "stubby" => Rod(0.06, 0.08),
            "brick" => Box(0.25, 0.11, 0.08),
            "round" => Rod(0.09, 0.03),
            "batard" => Rod(0.03, 0.16),
            _ => Box(0.09, 0.09, 0.09),
        };
    }

    private static (double Mean, double Centre)[] Run(double dimensions, double metres, double coefficient, int cells, int stepsPerMark = 1)
    {
        var run = ConductionRun.Start(
            new(dimensions, Length.FromMetres(metres), cells),
            new() { Conductivity = [Conductivity], HeatCapacity = [Capacity], Coefficient = [coefficient], StartCelsius = [1] },
            Duration.FromSeconds(30.0 / stepsPerMark));
        var steps = Marks[^1] * stepsPerMark;
        double[] mean = new double[steps], centre = new double[steps];
        run.Advance(new double[steps], mean, centre);
        return [.. Marks.Select(mark => (mean[(mark * stepsPerMark) - 1], centre[(mark * stepsPerMark) - 1]))];
    }

    [Theory, MemberData(nameof(Shapes))]
    public void TheMean_FollowsTheProduct(string shape, double coefficient)
    {
        var (ways, volume, area) = Of(shape);
        var form = HeatForm.Of(ways, area, volume);
        var one = Run(form.Dimensions, form.Size.Metres, coefficient, 40);
        var exact = ways.Select(way => Run(way.Dimensions, way.Reach.Metres, coefficient, 40)).ToArray();
        for (var mark = 0; mark < Marks.Length; mark++)
        {
            var mean = exact.Aggregate(1.0, (product, way) => product * way[mark].Mean);
            var centre = exact.Aggregate(1.0, (product, way) => product * way[mark].Centre);
            output.WriteLine($"{shape} h {coefficient}: mean {mean:F3} against {one[mark].Mean:F3}, middle {centre:F3} against {one[mark].Centre:F3}");
            Assert.Equal(mean, one[mark].Mean, 0.025);
            Assert.Equal(centre, one[mark].Centre, 0.1);
        }
    }

    /// <summary>Thermal reference sheet 5.3, marked computed: finite cylinder of 60 mm and 80 mm, 25 °C into 200 °C.</summary>
    [Theory]
    [InlineData(10, 1800, .994414, .979316)]
    [InlineData(10, 3600, .937149, .905266)]
    [InlineData(25, 1800, .988323, .957799)]
    [InlineData(25, 3600, .882030, .824209)]
    public void TheProduct_OfTwoRuns_IsThatOfTheSeries(double coefficient, int seconds, double cylinder, double slab)
    {
        double Centre(double dimensions, double metres) =>
            Run(dimensions, metres, coefficient, 100, 3)[seconds == 1800 ? 0 : 1].Centre;
        Assert.Equal(cylinder, Centre(2, 0.06), 1e-3);
        Assert.Equal(slab, Centre(1, 0.04), 1e-3);
        Assert.Equal(cylinder * slab, Centre(2, 0.06) * Centre(1, 0.04), 1e-3);
    }

    /// <summary>Thermal reference sheet 5.3: a brick of 100 x 80 x 200 mm, half an hour at 25 W/(m² K).</summary>
    [Fact]
    public void TheProduct_OfThreeRuns_IsThatOfTheBrick() => Assert.Equal(
        .946013, new[] { 0.05, 0.04, 0.1 }.Aggregate(1.0, (product, reach) => product * Run(1, reach, 25, 100, 3)[0].Centre), 1e-3);

    [Fact]
    public void AWayByItself_IsTakenAsItIs()
    {
        foreach (var dimensions in new[] { 1, 2, 3 })
        {
            var form = HeatForm.Of([new(dimensions, Length.FromMillimetres(30))], 1, 0.03 / dimensions);
            Assert.Equal((dimensions, 0.03), (form.Dimensions, form.Size.Metres));
        }
    }

    /// <summary>A stick that grows ever longer becomes a cylinder; a round that grows ever flatter becomes a layer.</summary>
    [Fact]
    public void LongSticksAndFlatRounds_TendToCylinderAndLayer()
    {
        HeatForm Rod(double radius, double high) => HeatForm.Of(
            [new(2, Length.FromMetres(radius)), new(1, Length.FromMetres(high / 2))],
            (2 * Math.PI * radius * radius) + (2 * Math.PI * radius * high),
            Math.PI * radius * radius * high);
        Assert.Equal(2, Rod(0.02, 20).Dimensions, 0.01);
        Assert.Equal(0.02, Rod(0.02, 20).Size.Metres, 2e-4);
        Assert.Equal(1, Rod(20, 0.04).Dimensions, 0.01);
        Assert.Equal(0.02, Rod(20, 0.04).Size.Metres, 2e-4);
    }

    /// <summary>Second order also between the whole dimensions.</summary>
    [Theory]
    [InlineData(1.4)]
    [InlineData(2.4)]
    [InlineData(4.8)]
    public void HalfTheCellSize_HasAQuarterOfTheError(double dimensions)
    {
        double Mean(int cells) => Run(dimensions, 0.04, 30, cells, 4)[1].Mean;
        var order = Math.Log2((Mean(10) - Mean(20)) / (Mean(20) - Mean(40)));
        output.WriteLine($"{dimensions} dimensions: order in space {order:F3}");
        Assert.InRange(order, 1.7, 2.3);
    }

    [Fact]
    public void Zeros_BetweenWholeDimensions_GoEvenly()
    {
        var zeros = Enumerable.Range(0, 101).Select(step => HeatForm.Zero(1 + (step / 20.0))).ToArray();
        Assert.Equal(zeros.Order(), zeros);
        Assert.Equal(Math.PI, HeatForm.Zero(3), 1e-7);
    }
}
