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
        var count = stage.Lanes;
        var padded = Lanes.Padded(count);
        var mass = portion.Mass / portion.Pieces;
        var specificHeat = portion.JoulesPerKelvin / portion.Mass.Grams;
        var gasFree = GasFreeMillilitresPerGram(portion);
        var air = FanEquivalent(oven, stage.WrittenModeOf(oven));
        var perMinute = new double[count];
        var (starts, ovens, boils, biots) = (new double[padded], new double[padded], new double[padded], new double[padded]);
        for (var index = 0; index < padded; index++)
        {
            var lane = Math.Min(index, count - 1);
            var growth = portion.Swollen(portion.Dough is { } dough ? dough.VolumePerGasFree[lane] : 1);
            var cubicMetres = mass.Grams * gasFree * growth * 1e-6;
            var radius = CubeRoot(cubicMetres * 3 / (4 * Math.PI));
            var diffusivity = CrumbDiffusivity.AtPorosity(1 - (1 / growth)) * stage.Priors.Crumb[lane];
            var conductivity = diffusivity * (mass.Grams * specificHeat / cubicMetres);
            (starts[index], ovens[index], boils[index]) = (start[lane], air, stage.Boils.Celsius);
            biots[index] = stage.Priors.Oven[lane] * radius / conductivity;
            if (index < count)
            {
                perMinute[index] = 60 * diffusivity / (radius * radius);
            }
        }

        return new(new(starts, ovens, boils, biots), new(perMinute));
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
