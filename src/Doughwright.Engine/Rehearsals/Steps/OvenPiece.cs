using Doughwright.Engine.Baking;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>A risen piece on its way into the oven, as a sphere.</summary>
internal sealed class OvenPiece
{
    /// <summary>Spread of the pace in ln: oven and shape together. Source: house-bake.</summary>
    public const double PaceSpread = 0.4;

    private readonly BakeLanes lanes;

    private OvenPiece(BakeLanes lanes, PerLane fourierPerMinute) => (this.lanes, FourierPerMinute) = (lanes, fourierPerMinute);

    /// <summary>α/R² per minute before any pace.</summary>
    public PerLane FourierPerMinute { get; }

    public static OvenPiece Of(Portion portion, PerLane start, OvenSetting oven, Stage stage)
    {
        var gasFree = GasFreeMillilitresPerGram(portion);
        var growth = new double[stage.Lanes];
        for (var lane = 0; lane < growth.Length; lane++)
        {
            growth[lane] = portion.Swollen(portion.Dough is { } dough ? dough.VolumePerGasFree[lane] : 1);
        }

        var load = new OvenLoad(portion.Mass / portion.Pieces, portion.JoulesPerKelvin / portion.Mass.Grams, gasFree, new(growth), start);
        return Of(load, FanEquivalent(oven, stage.WrittenModeOf(oven)), stage.Boils, stage.Priors.Oven, stage.Priors);
    }

    /// <summary>A piece of which mass, risen size and warmth are known, in air of a known temperature.</summary>
    /// <param name="airCelsius">As the fan of an oven moves it.</param>
    /// <param name="coefficient">From air and walls to its surface, in W/(m² K).</param>
    public static OvenPiece Of(OvenLoad load, double airCelsius, Temperature boils, PerLane coefficient, Priors priors)
    {
        var count = load.Start.Count;
        var padded = Lanes.Padded(count);
        var perMinute = new double[count];
        var (starts, ovens, boilings, biots) = (new double[padded], new double[padded], new double[padded], new double[padded]);
        for (var index = 0; index < padded; index++)
        {
            var lane = Math.Min(index, count - 1);
            var growth = load.VolumePerGasFree[lane];
            var cubicMetres = load.Mass.Grams * load.GasFreeMillilitresPerGram * growth * 1e-6;
            var radius = CubeRoot(cubicMetres * 3 / (4 * Math.PI));
            var diffusivity = CrumbDiffusivity.AtPorosity(1 - (1 / growth)) * priors.Crumb[lane];
            var conductivity = diffusivity * (load.Mass.Grams * load.JoulesPerGramKelvin / cubicMetres);
            (starts[index], ovens[index], boilings[index]) = (load.Start[lane], airCelsius, boils.Celsius);
            biots[index] = coefficient[lane] * radius / conductivity;
            if (index < count)
            {
                perMinute[index] = 60 * diffusivity / (radius * radius);
            }
        }

        return new(new(starts, ovens, boilings, biots), new(perMinute));
    }

    /// <summary>Fo at which the core has come a given share of the way to boiling.</summary>
    public double[] TimeToShare(PerLane share)
    {
        var padded = new double[lanes.Count];
        for (var index = 0; index < padded.Length; index++)
        {
            padded[index] = share[Math.Min(index, share.Count - 1)];
        }

        return BakeModel.TimeToShare(lanes, padded)[..share.Count];
    }

    /// <summary>Mean over the volume of the likely piece, on its way to so much Fo in so many minutes. The core is colder than that.</summary>
    public IReadOnlyList<WayPoint> Way(double fourier, double minutes)
    {
        var run = new BakeRun<Lane1>(BakeModel.Working);
        run.Begin(lanes, 0);
        var way = new List<WayPoint> { new(0, lanes.Start[0], null) };
        var length = BakeModel.Working.Step;
        for (var step = 0; ; step++)
        {
            var before = way[^1].Celsius!.Value;
            run.Advance(step);
            var left = (fourier / length) - step;
            if (left <= 1)
            {
                way.Add(new(minutes, before + (left * (run.Mean.Value - before)), null));
                return way;
            }

            way.Add(new(minutes * (step + 1) * length / fourier, run.Mean.Value, null));
        }
    }

    /// <summary>Dials of both modes stand for the same bake; the model knows the fan's.</summary>
    private static double FanEquivalent(OvenSetting oven, OvenMode written) =>
        written == OvenMode.Fan ? oven.Dial.Celsius : oven.Dial.Celsius - 20;

    private static double GasFreeMillilitresPerGram(Portion portion) =>
        ThermalProperties.Of(portion.Composition, Temperature.FromCelsius(25)) is { } properties ? 1000 / properties.Density.KilogramsPerCubicMetre : 0.83;

    private static double CubeRoot(double value) => Elementary.Exp(Elementary.Log(value) / 3);
}
