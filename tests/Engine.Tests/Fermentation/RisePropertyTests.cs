using CsCheck;
using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Fermentation;

public class RisePropertyTests
{
    private static readonly Gen<RiseCase> Cases = Gen.OneOf(OfYeast(), OfSour());

    /// <summary>A sourdough has another curve over temperature and grows from the first minute; the laws are the same.</summary>
    private static Gen<RiseCase> OfSour() => Gen.Select(OfYeast(), Gen.Double[5, 90]).Select((dough, ripe) => dough with { Sour = ripe, Yeast = 1, Sugar = dough.Sugar / 5 });

    private static Gen<RiseCase> OfYeast() =>
        Gen.Select(Gen.Double[0.2, 6], Gen.Double[50, 80], Gen.Double[0, 2.5], Gen.Double[0, 15], Gen.Double[0.6, 2]).Select(
            (yeast, water, salt, sugar, scale) => new RiseCase
            {
                Yeast = yeast,
                Water = water,
                Salt = salt,
                Sugar = sugar,
                Scale = scale,
                Priors = new(),
                StepMinutes = 3,
                Hours = 60,
            });

    [Fact]
    public void WarmerIsNeverSlowerBelowTheOptimum() => Gen.Select(Cases, Gen.Double[8, 36], Gen.Double[0.1, 6]).Sample(
        (dough, celsius, warmer) =>
        {
            var best = dough.Sour is null ? 37 : 27;
            var cool = dough with { CelsiusAt = _ => Math.Min(best, celsius) };
            var warm = dough with { CelsiusAt = _ => Math.Min(best, celsius + warmer) };
            Assert.True(warm.MinutesTo(2) <= cool.MinutesTo(2));
        },
        iter: 60);

    [Fact]
    public void LessYeastIsNeverFaster() => Gen.Select(Cases, Gen.Double[10, 36], Gen.Double[0.3, 0.99]).Sample(
        (dough, celsius, part) =>
        {
            var more = dough with { CelsiusAt = _ => celsius };
            Assert.True((more with { Yeast = part * dough.Yeast, Sour = part * dough.Sour }).MinutesTo(2) >= more.MinutesTo(2));
        },
        iter: 60);

    [Fact]
    public void HigherAltitudeIsNeverSlower() => Gen.Select(Cases, Gen.Double[60_000, 104_000], Gen.Double[0.8, 1]).Sample(
        (dough, pascals, part) => Assert.True(
            (dough with { Pascals = part * pascals }).MinutesTo(2) <= (dough with { Pascals = pascals }).MinutesTo(2)),
        iter: 60);

    [Fact]
    public void StepsOfThreeMinutesOrAThirtieth_GiveTheTimeOfTenthsOfAMinuteToAThousandth() => Gen.Select(Cases, Gen.Double[12, 34]).Sample(
        (dough, celsius) =>
        {
            var coarse = dough with { CelsiusAt = at => 21 + (celsius - 21) * Math.Exp(-at / 120) };
            var exact = (coarse with { StepMinutes = 0.1 }).MinutesTo(2);
            Assert.Equal(exact, (coarse with { StepMinutes = Math.Min(3, exact / 30) }).MinutesTo(2), 1e-3 * exact);
        },
        iter: 20);

    [Fact]
    public void GasMade_IsTheSubstrateUsed() => Gen.Select(Cases, Gen.Double[12, 34]).Sample(
        (dough, celsius) =>
        {
            // A dough that holds nearly everything: it loses at most ((v - 1)/98)^4 of what is made.
            var tight = dough with
            {
                CelsiusAt = _ => celsius,
                Priors = new()
                {
                    Ceiling = new("highest growth", "1", 99, 0, PriorLaw.Normal, ""),
                    Maltose = new("none", "g/h", 1e-9, 0, PriorLaw.Normal, ""),
                },
            };
            var state = tight.Start;
            var atFirst = state.Substrate[0];
            Rise.GrowthAfter(state, tight.History, [240]);
            var used = atFirst - state.Substrate[0];
            var madeOf = state.Moles[0] * RiseCoefficients.HexoseGramsPerMole;
            var lostShare = Math.Pow((state.Growth[0] - 1) / 98, 4);
            const double FromStarch = 2e-8; // the least supply there can be, over the four hours
            Assert.InRange(madeOf, used * (1 - lostShare) - 1e-12, used + FromStarch);
        },
        iter: 60);

    [Fact]
    public void AtAndPastTheEdges_NothingIsNotANumberAndNothingShrinksBelowItself() => Gen.Select(
        Gen.Double[0.001, 40],
        Gen.Double[10, 200],
        Gen.Double[0, 12],
        Gen.Double[0, 80],
        Gen.Double[-10, 70],
        Gen.Double[50_000, 107_000]).Sample(
        (yeast, water, salt, sugar, celsius, pascals) =>
        {
            var dough = new RiseCase
            {
                Yeast = yeast,
                Water = water,
                Salt = salt,
                Sugar = sugar,
                Pascals = pascals,
                Scale = 5,
                Priors = new(),
                StepMinutes = 3,
                Hours = 20,
                CelsiusAt = at => celsius + at / 100,
            };
            var state = dough.Start;
            var minutes = Rise.TimeToGrowth(state, dough.History, 2, RiseFolds.AtMinutes(1, 30, 60))[0];
            Assert.False(double.IsNaN(minutes));
            Assert.True(double.IsFinite(state.Growth[0]) && state.Growth[0] > 0.9 && state.Substrate[0] >= 0 && state.Moles[0] >= 0);
        },
        iter: 300);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Digits_DoNotDependOnTheWidth(bool sour)
    {
        const int Lanes = 37; // no width divides it
        var parameters = RiseParameters.Draw(
            new(), Lanes, dimension => [.. Enumerable.Range(0, Lanes).Select(lane => ((lane * 29 + dimension * 17) % 41 - 20) / 10.0)]);
        var dough = RollDough.Of(parameters);
        if (sour)
        {
            var culture = Culture.In(Mass.FromGrams(170), Mass.FromGrams(100), parameters);
            dough = dough with { Culture = culture, FreshYeastGrams = [.. culture.FreshAtMost.Select(most => most / 3)] };
        }

        var scale = Enumerable.Range(0, Lanes).Select(lane => 0.5 + lane / 20.0).ToArray();
        var pascals = Enumerable.Range(0, Lanes).Select(lane => 101325 - 500.0 * lane).ToArray();
        var start = Enumerable.Range(0, Lanes).Select(lane => 15 + lane / 2.0).ToArray();
        var steps = sour ? 400 : 80;
        var celsius = Enumerable.Range(0, Lanes * steps).Select(i => start[i % Lanes] - i / Lanes * 80 / steps / 25.0).ToArray();
        var target = Enumerable.Repeat(2.2, Lanes).ToArray();

        (double[] Growth, double[] Minutes, double[] Fold) Run(int width)
        {
            var folds = RiseFolds.AtMinutes(Lanes, 31, 62);
            var state = new RiseState(dough, parameters, scale, pascals, start);
            state.Begin(RiseStage.ToGrowth(target, folds));
            var growth = new double[celsius.Length];
            double[] shells = [.. Enumerable.Range(0, celsius.Length * 2).Select(i => celsius[i / (2 * Lanes) * Lanes + i % Lanes] + (i / Lanes % 2 == 0 ? 3 : -1))];
            state.Advance(new RiseWarmth(celsius, shells, [0.25, 0.75], Lanes), Duration.FromMinutes(2.5), growth, width);
            return (growth, [.. state.StoppedMinutes], [.. folds.Growth]);
        }

        var one = Run(1);
        Assert.Contains(one.Minutes, double.IsFinite);
        Assert.Contains(one.Minutes, double.IsPositiveInfinity);
        foreach (var width in new[] { 2, 4, 8 })
        {
            var wide = Run(width);
            Assert.Equal(one.Growth, wide.Growth);
            Assert.Equal(one.Minutes, wide.Minutes);
            Assert.Equal(one.Fold, wide.Fold);
        }
    }

    [Fact]
    public void PieceByPiece_IsAsAtOnce()
    {
        var dough = new RiseCase { Scale = 2, StepMinutes = 2.5, Hours = 4 };
        var history = dough.History;
        var atOnce = dough.Start;
        var inPieces = dough.Start;
        atOnce.Begin(RiseStage.ToGrowth([2], RiseFolds.AtMinutes(1, 45)));
        inPieces.Begin(RiseStage.ToGrowth([2], RiseFolds.AtMinutes(1, 45)));
        atOnce.Advance(history.Celsius, history.Step);
        for (var row = 0; row < history.Steps; row += 8)
            inPieces.Advance(history.Celsius.AsSpan(row, 8), history.Step);
        Assert.Equal(atOnce.StoppedMinutes, inPieces.StoppedMinutes);
        Assert.Equal(atOnce.Moles, inPieces.Moles);
    }

    [Fact]
    public void Advance_AllocatesNothing()
    {
        var dough = new RiseCase();
        var (state, history) = (dough.Start, dough.History);
        state.Begin(RiseStage.ToGrowth([2], RiseFolds.AtMinutes(1, 45)));
        state.Advance(history.Celsius, history.Step);
        var before = GC.GetAllocatedBytesForCurrentThread();
        state.Advance(history.Celsius, history.Step);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }
}
