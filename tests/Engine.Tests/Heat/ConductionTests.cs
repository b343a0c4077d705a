using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

public class ConductionTests
{
    /// <summary>
    /// Centre and surface from the full series (40 terms), thermal reference sheet 5.2, marked computed: they test the solver against the
    /// exact solution of the same equation, not against nature.
    /// </summary>
    public static TheoryData<int, double, double[], double[]> Series => new()
    {
        { 0, 0.5, [.999871, .996321, .972600, .864114, .698383], [.885365, .843899, .790147, .686882, .554589] },
        { 0, 1, [.999751, .993108, .950642, .772526, .533859], [.790377, .723577, .643391, .504522, .348177] },
        { 0, 5, [.999046, .977309, .864881, .523109, .220721], [.397363, .308790, .231533, .133032, .056094] },
        { 0, 10, [.998530, .968424, .829255, .454641, .163818], [.232326, .170574, .122482, .064329, .023172] },
        { 1, 0.5, [.999426, .987538, .926659, .715749, .459846], [.873215, .819620, .740824, .566002, .363591] },
        { 1, 1, [.998898, .976817, .870174, .548586, .249380], [.769641, .684565, .570228, .352786, .160338] },
        { 1, 5, [.995845, .926486, .671418, .207554, .028668], [.359924, .255748, .158917, .047695, .006587] },
        { 1, 10, [.993672, .900080, .600232, .145800, .013560], [.200930, .131622, .074844, .017758, .001652] },
        { 2, 0.5, [.998364, .972531, .868713, .580044, .294078], [.860208, .793270, .688153, .457352, .231872] },
        { 2, 1, [.996869, .949305, .772312, .370777, .107977], [.747687, .643177, .495912, .236050, .068740] },
        { 2, 5, [.988399, .845873, .472248, .065675, .002414], [.322808, .205920, .100922, .013813, .000508] },
        { 2, 10, [.982564, .795759, .382664, .034478, .000618], [.171190, .097521, .041055, .003654, .000065] },
    };

    [Theory, MemberData(nameof(Series))]
    public void Advance_WithHundredCells_FollowsTheFullSeries(int shape, double biot, double[] centre, double[] surface)
    {
        double[] fourier = [0.05, 0.1, 0.2, 0.5, 1.0];
        var run = Unit((BodyShape)shape, biot, cells: 100, stepsPerUnit: 2000);
        for (var mark = 0; mark < fourier.Length; mark++)
        {
            var (_, middle, skin) = RunTo(run, (int)Math.Round(2000 * fourier[mark]) - run.Steps);
            Assert.Equal(centre[mark], middle, 1e-3);
            Assert.Equal(surface[mark], skin, 1e-3);
        }
    }

    /// <summary>Volume mean from the full series, thermal reference sheet 5.2, marked computed.</summary>
    [Theory]
    [InlineData(0, 1, new[] { .919597, .851595, .681105, .470397 })]
    [InlineData(0, 5, new[] { .781417, .649017, .385175, .162481 })]
    [InlineData(1, 1, new[] { .843266, .718516, .447384, .203347 })]
    [InlineData(1, 5, new[] { .597397, .396197, .120455, .016636 })]
    [InlineData(2, 1, new[] { .771365, .601810, .287001, .083578 })]
    [InlineData(2, 5, new[] { .446837, .227960, .031359, .001153 })]
    public void Advance_WithHundredCells_KeepsTheMeanOfTheFullSeries(int shape, double biot, double[] expected)
    {
        double[] fourier = [0.1, 0.2, 0.5, 1.0];
        var run = Unit((BodyShape)shape, biot, cells: 100, stepsPerUnit: 2000);
        for (var mark = 0; mark < fourier.Length; mark++)
        {
            var (mean, _, _) = RunTo(run, (int)Math.Round(2000 * fourier[mark]) - run.Steps);
            Assert.Equal(expected[mark], mean, 1e-3);
        }
    }

    /// <summary>A 500 g dough ball, 26 °C into 4 °C air: thermal reference sheet 5.5, marked computed (full series).</summary>
    [Theory]
    [InlineData(5, new[] { 25.069, 22.240, 17.202, 10.889 }, new[] { 20.884, 18.277, 14.307, 9.378 })]
    [InlineData(8, new[] { 24.594, 20.565, 14.181, 7.823 }, new[] { 18.599, 15.332, 10.937, 6.605 })]
    [InlineData(15, new[] { 23.671, 17.740, 10.194, 5.247 }, new[] { 14.765, 11.094, 7.177, 4.640 })]
    public void Advance_OfADoughBallIntoTheCold_FollowsTheSeries(double coefficient, double[] centre, double[] surface)
    {
        var run = ConductionRun.Start(
            new(BodyShape.Sphere, Length.FromMetres(0.046996), 100),
            new() { Conductivity = [0.45], HeatCapacity = [1150 * 2770], Coefficient = [coefficient], StartCelsius = [26] },
            Duration.FromSeconds(10));
        int[] minutes = [30, 60, 120, 240];
        for (var mark = 0; mark < minutes.Length; mark++)
        {
            var (_, middle, skin) = RunTo(run, (minutes[mark] * 6) - run.Steps, air: 4);
            Assert.Equal(centre[mark], middle, 0.01);
            Assert.Equal(surface[mark], skin, 0.01);
        }
    }

    /// <summary>
    /// Pieces of 124 and 853 g, 25 °C into 4 °C air: fermentation reference sheet, section 6, marked computed (tolerance 0.1 °C).
    /// </summary>
    [Theory]
    [InlineData(0.030, new[] { 18.5, 12.1, 6.5, 4.2, 4.0 }, new[] { 15.5, 10.4, 6.0, 4.2, 4.0 })]
    [InlineData(0.057, new[] { 24.4, 21.1, 14.3, 7.6, 5.2 }, new[] { 19.6, 15.9, 11.0, 6.4, 4.8 })]
    public void Advance_OfRetardedPieces_FollowsTheSeries(double radius, double[] centre, double[] mean)
    {
        var run = ConductionRun.Start(
            new(BodyShape.Sphere, Length.FromMetres(radius), 30),
            new() { Conductivity = [0.40], HeatCapacity = [1100 * 2800], Coefficient = [12], StartCelsius = [25] },
            Duration.FromMinutes(1));
        int[] minutes = [30, 60, 120, 240, 360];
        for (var mark = 0; mark < minutes.Length; mark++)
        {
            var (average, middle, _) = RunTo(run, minutes[mark] - run.Steps, air: 4);
            Assert.Equal(centre[mark], middle, 0.1);
            Assert.Equal(mean[mark], average, 0.1);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Advance_WithHalfTheCellSize_HasAQuarterOfTheError(int shape)
    {
        double Mean(int cells) => RunTo(Unit((BodyShape)shape, 5, cells, 4000), 800).Mean;
        var order = Math.Log2((Mean(10) - Mean(20)) / (Mean(20) - Mean(40)));
        TestContext.Current.TestOutputHelper?.WriteLine($"{(BodyShape)shape}: order in space {order:F3}");
        Assert.InRange(order, 1.8, 2.2);
    }

    [Theory]
    [InlineData(0, 0.0)]
    [InlineData(1, 0.0)]
    [InlineData(2, 0.0)]
    [InlineData(2, 0.3)]
    public void Advance_WithHalfTheStep_HasAQuarterOfTheError(int shape, double wall)
    {
        double Mean(int stepsPerUnit)
        {
            var run = ConductionRun.Start(
                new((BodyShape)shape, Length.FromMetres(1), 20),
                new() { Conductivity = [1], HeatCapacity = [1], Coefficient = [2], StartCelsius = [1], WallCapacity = [wall] },
                Duration.FromSeconds(1.0 / stepsPerUnit));
            return RunTo(run, stepsPerUnit / 2).Mean;
        }

        var order = Math.Log2((Mean(40) - Mean(80)) / (Mean(80) - Mean(160)));
        TestContext.Current.TestOutputHelper?.WriteLine($"{(BodyShape)shape} wall {wall}: order in time {order:F3}");
        Assert.InRange(order, 1.8, 2.2);
    }

    private static (double Mean, double Centre, double Surface) RunTo(ConductionRun run, int steps, double air = 0)
    {
        double[] mean = new double[steps], centre = new double[steps], surface = new double[steps];
        run.Advance([.. Enumerable.Repeat(air, steps)], mean, centre, surface);
        return (mean[^1], centre[^1], surface[^1]);
    }

    /// <summary>A body with k = ρc = size = 1, so that a second is a unit of the Fourier number and h the Biot number.</summary>
    private static ConductionRun Unit(BodyShape shape, double biot, int cells, int stepsPerUnit) => ConductionRun.Start(
        new(shape, Length.FromMetres(1), cells),
        new() { Conductivity = [1], HeatCapacity = [1], Coefficient = [biot], StartCelsius = [1] },
        Duration.FromSeconds(1.0 / stepsPerUnit));
}
