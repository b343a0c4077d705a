using CsCheck;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

public class CoolingTests
{
    private static readonly ThermalProperties Dough = new(
        SpecificHeat.FromJoulesPerGramKelvin(2.77),
        Density.FromKilogramsPerCubicMetre(1150),
        Conductivity.FromWattsPerMetreKelvin(0.45));

    private static readonly Body Scald = Body.InBowl(Mass.FromGrams(180), Dough, bowlJoulesPerKelvin: 75);

    /// <summary>
    /// An 800 g dough in its covered 500 g steel bowl drifts with a time constant near 120 min, an 80 g piece on a tray near 60
    /// (corrections 19: common practice, no source); 25 % either way.
    /// </summary>
    [Fact]
    public void Body_OfADough_DriftsAsTheTradeExpects()
    {
        Assert.InRange(DriftMinutes(Body.InBowl(Mass.FromGrams(800), Dough, 250)), 120 * 0.75, 120 * 1.25);
        Assert.InRange(DriftMinutes(Body.InBowl(Mass.FromGrams(800), Dough, 0)), 120 * 0.75, 120 * 1.25);
        Assert.InRange(DriftMinutes(Body.Piece(Mass.FromGrams(80), Dough)), 60 * 0.75, 60 * 1.25);
    }

    [Fact]
    public void TimeConstant_InSeries_AgreesWithTheFollowedInside()
    {
        Body[] bodies = [Body.InBowl(Mass.FromGrams(800), Dough, 250), Body.Piece(Mass.FromGrams(80), Dough), Scald];
        Assert.All(bodies, body => Assert.Equal(1, body.TimeConstantSeconds(8) / 60 / DriftMinutes(body), 0.05));
    }

    [Fact]
    public void TimeToReach_OnTheWorkingGrid_IsWithinHalfAPerCentOfAFineOne()
    {
        double Minutes(int cells, int stepsPerStep)
        {
            var cooling = Cool(Scald, 28, 21, 72.8, cells: cells);
            var working = cooling.TimeToReach(Lanes(72.8, 8)).Minutes[0];
            if (stepsPerStep == 1)
            {
                return working;
            }

            // The fine answer by brute force: a small step and the last time above the target.
            var run = ConductionRun.Start(
                new(Scald.Dimensions, Scald.Size, cells), Lanes(72.8, 8).In(Scald), cooling.Step / stepsPerStep);
            var steps = (int)(2 * working / (cooling.Step / stepsPerStep).Minutes);
            var mean = new double[steps];
            run.Advance([.. Enumerable.Repeat(21.0, steps)], mean);
            return (Array.FindIndex(mean, celsius => celsius <= 28) + 0.5) * (cooling.Step / stepsPerStep).Minutes;
        }

        Assert.False(Cool(Scald, 28, 21, 72.8).IsLumped);
        Assert.Equal(1, Minutes(16, 1) / Minutes(100, 50), 0.005);
    }

    [Fact]
    public void SolveCoefficient_FromMeasuredMinutes_GivesThemBackExactly() => Gen.Select(
        Gen.Double[40, 200].Array[8], Gen.Double[68, 78].Array[8], Gen.Double[0.8, 1.2].Array[8], Gen.Bool).Sample(
        (minutes, start, scale, thin) =>
        {
            var body = thin ? Body.Spread(Mass.FromGrams(160), Dough, Length.FromMillimetres(10), 150) : Scald;
            var cooling = Cool(body, 28, 21, 73);
            Assert.Equal(thin, cooling.IsLumped);
            var lanes = Lanes(0, 8, 8) with { StartCelsius = start, HeatCapacityScale = scale, ConductivityScale = scale };
            var fit = cooling.SolveCoefficient(lanes, minutes);
            Assert.All(fit.Found, Assert.True);
            var again = cooling.TimeToReach(lanes with { WattsPerSquareMetreKelvin = fit.WattsPerSquareMetreKelvin });
            Assert.All(minutes.Zip(again.Minutes), pair => Assert.Equal(pair.First, pair.Second, 1e-8 * pair.First));
            Assert.All(again.EndCelsius, celsius => Assert.Equal(28, celsius));
        },
        iter: 30);

    [Fact]
    public void SolveCoefficient_ThatNothingCanGive_IsNotFound()
    {
        // A ball of this size cannot lose its heat through itself in half a minute, and 18 °C is not to be had from air of 21.
        Assert.False(Cool(Scald, 28, 21, 72.8).SolveCoefficient(Lanes(72.8, 8), [0.5]).Found[0]);
        Assert.False(Cool(Scald, 18, 21, 72.8).SolveCoefficient(Lanes(72.8, 8), [100]).Found[0]);
        Assert.False(Cool(Scald, 28, 21, 27).SolveCoefficient(Lanes(27, 8), [100]).Found[0]);
    }

    [Theory]
    [InlineData(28, 30, double.PositiveInfinity, 30)]
    [InlineData(28, 28.6, double.PositiveInfinity, 28.6)]
    [InlineData(28, 28.4, 0, 28.9)]
    [InlineData(28, 27.7, 0, 28.2)]
    [InlineData(28, 21, 0, 28)]
    public void TimeToReach_NearTheAir_CountsHalfAKelvinAsThere(double target, double air, double never, double end)
    {
        foreach (var body in new[] { Scald, Body.Spread(Mass.FromGrams(160), Dough, Length.FromMillimetres(10), 150) })
        {
            var times = Cool(body, target, air, 72.8).TimeToReach(Lanes(72.8, 8));
            Assert.Equal(double.IsInfinity(never), times.NeverEnds(0));
            Assert.Equal(end, times.EndCelsius[0], 1e-9);
            Assert.Equal(air, times.SettlesAtCelsius);
        }
    }

    [Fact]
    public void TimeToReach_OfWhatIsThereAlready_IsNought()
    {
        var times = Cool(Scald, 28, 21, 26).TimeToReach(Lanes(26, 8));
        Assert.Equal(0, times.Minutes[0]);
        Assert.Equal(26, times.EndCelsius[0]);
    }

    [Fact]
    public void TimeToReach_IsShorterInColderAirAndWithBetterExchange() => Gen.Select(
        Gen.Double[10, 26], Gen.Double[4, 30], Gen.Double[1, 5]).Sample(
        (air, coefficient, by) =>
        {
            var minutes = Cool(Scald, 28, air, 72.8).TimeToReach(Lanes(72.8, coefficient)).Minutes[0];
            Assert.True(Cool(Scald, 28, air - by, 72.8).TimeToReach(Lanes(72.8, coefficient)).Minutes[0] < minutes);
            Assert.True(Cool(Scald, 28, air, 72.8).TimeToReach(Lanes(72.8, coefficient + by)).Minutes[0] < minutes);
        },
        iter: 50);

    [Fact]
    public void TimeToReach_InAirThatTurnsWarm_WaitsForItOrNeverEnds()
    {
        var thin = Body.Spread(Mass.FromGrams(160), Dough, Length.FromMillimetres(10), 150);
        static AirProfile Turns(double first, double minutes, double then) => AirProfile.Of(
            [(Duration.Zero, Temperature.FromCelsius(first)), (Duration.FromMinutes(minutes), Temperature.FromCelsius(then))]);
        var (turnsCool, turnsWarm) = (Turns(30, 300, 18), Turns(18, 20, 30));
        foreach (var body in new[] { Scald, thin })
        {
            var target = new CoolingTarget(CoolingDirection.Cool, Temperature.FromCelsius(28));
            var late = new Cooling(body, target, turnsCool, Temperature.FromCelsius(72.8), 8).TimeToReach(Lanes(72.8, 8));
            Assert.InRange(late.Minutes[0], 300, 340);
            var never = new Cooling(body, target, turnsWarm, Temperature.FromCelsius(72.8), 8).TimeToReach(Lanes(72.8, 8));
            Assert.True(never.NeverEnds(0));
            Assert.Equal(30, never.EndCelsius[0]);
        }
    }

    /// <summary>With and without its inside, a body of small Biot number must tell nearly the same.</summary>
    [Fact]
    public void TimeToReach_OfAThinLayer_AgreesWithItsFollowedInside()
    {
        var thin = Body.Spread(Mass.FromGrams(160), Dough, Length.FromMillimetres(10), 150);
        var target = new CoolingTarget(CoolingDirection.Cool, Temperature.FromCelsius(28));
        var air = AirProfile.Constant(Temperature.FromCelsius(21));
        var cooling = new Cooling(thin, target, air, Temperature.FromCelsius(90), 8);
        var followed = new ConductionMarch(thin, target, air, new(thin.Dimensions, thin.Size, 16), cooling.Step);
        Assert.True(cooling.IsLumped);
        Assert.Equal(1, cooling.TimeToReach(Lanes(90, 8)).Minutes[0] / followed.TimeToReach(Lanes(90, 8), null).Minutes[0], 0.04);
    }

    [Fact]
    public void MeanAfter_TheTimeItTook_IsTheTarget()
    {
        foreach (var body in new[] { Scald, Body.Spread(Mass.FromGrams(160), Dough, Length.FromMillimetres(10), 150) })
        {
            var cooling = Cool(body, 28, 21, 72.8);
            var lanes = Lanes(72.8, 8);
            var minutes = cooling.TimeToReach(lanes).Minutes[0];
            Assert.Equal(28, cooling.MeanAfter(lanes, Duration.FromMinutes(minutes))[0], 0.01);
            Assert.Equal(72.8, cooling.MeanAfter(lanes, Duration.Zero)[0], 1e-9);
        }
    }

    /// <summary>Fridge butter in a warm kitchen: melting makes it take longer than its specific heat alone says.</summary>
    [Fact]
    public void TimeToReach_OfSofteningButter_CountsTheMelting()
    {
        var butter = new ThermalProperties(
            SpecificHeat.FromJoulesPerGramKelvin(2.34),
            Density.FromKilogramsPerCubicMetre(943),
            Conductivity.FromWattsPerMetreKelvin(0.24));
        var plain = Body.Piece(Mass.FromGrams(250), butter);
        var melting = plain with { Melting = FatMelting.Butter, MeltingFatShare = 0.81 };
        double Minutes(Body body) => new Cooling(
            body,
            new(CoolingDirection.Warm, Temperature.FromCelsius(18)),
            AirProfile.Constant(Temperature.FromCelsius(21)),
            Temperature.FromCelsius(5),
            8).TimeToReach(Lanes(5, 8)).Minutes[0];
        // Between 5 and 24 °C the melting adds 48.6 J/g over 19 K to 2.34 J/(g K): a factor of 2.09.
        Assert.Equal(1 + (0.81 * 60 / 19 / 2.34), Minutes(melting) / Minutes(plain), 0.03);
    }

    private static double DriftMinutes(Body body)
    {
        // The late slope: from a quarter of the way left to a tenth, which no longer remembers the start.
        double Minutes(double left) => Cool(body, 20 + (10 * left), 20, 30).TimeToReach(Lanes(30, 8)).Minutes[0];
        return (Minutes(0.1) - Minutes(0.25)) / Math.Log(2.5);
    }

    private static Cooling Cool(Body body, double target, double air, double start, int cells = 16) => new(
        body,
        new(CoolingDirection.Cool, Temperature.FromCelsius(target)),
        AirProfile.Constant(Temperature.FromCelsius(air)),
        Temperature.FromCelsius(start),
        8,
        cells);

    private static CoolingLanes Lanes(double start, double coefficient, int count = 1) =>
        new([.. Enumerable.Repeat(start, count)], [.. Enumerable.Repeat(coefficient, count)]);
}
