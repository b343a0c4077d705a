using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

public class ConductionTests
{
    /// <summary>Centre and surface from the full series (40 terms), thermal reference sheet 5.2, marked computed: they test the solver against
    /// the exact solution of the same equation, not against nature.</summary>
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

    /// <summary>A body with k = ρc = size = 1, so that a second is a unit of the Fourier number and h the Biot number.</summary>
    private static ConductionRun Unit(BodyShape shape, double biot, int cells, int stepsPerUnit) => ConductionRun.Start(
        new(shape, Length.FromMetres(1), cells),
        new() { Conductivity = [1], HeatCapacity = [1], Coefficient = [biot], StartCelsius = [1] },
        Duration.FromSeconds(1.0 / stepsPerUnit));

    private static (double Mean, double Centre, double Surface) RunTo(ConductionRun run, int steps)
    {
        double[] mean = new double[steps], centre = new double[steps], surface = new double[steps];
        run.Advance(new double[steps], mean, centre, surface);
        return (mean[^1], centre[^1], surface[^1]);
    }
}
