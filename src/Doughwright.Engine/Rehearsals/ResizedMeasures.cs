using Doughwright.Engine.Formulas;
using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals;

/// <summary>
/// What was measured in the old size is not measured in the new one. Every measured step is run in the new size in the same kitchen with what the
/// author's measurements fixed. Where that comes within the uncertainty of a reading the measurement stands, so that home stays home; where it
/// does not, the measurement is taken out, and what was worked out takes its place as a time that was stated and never tried.
/// </summary>
internal static class ResizedMeasures
{
    /// <summary>Spread of a rise read by eye, as everywhere in a rehearsal. Source: rise-reading.</summary>
    private const double RiseReading = 0.10;

    /// <summary>Minutes of a cooling or a bake are read off a clock. Source: resized-reading.</summary>
    private const double ClockReading = 0.05;

    private static readonly TemperatureDelta ThermometerReading = TemperatureDelta.FromKelvins(0.5);

    public static Resized Settle(Resized resized, Larder larder)
    {
        if (resized.Recipe is null || resized.Factor == 1 && resized.Recipe.Make == resized.Before.Recipe.Make || !HasMeasures(resized.Recipe))
        {
            return resized;
        }

        var home = HomeRun.Of(resized.Before, Rehearser.OrdinaryLanes);
        var after = resized.After! with { Recipe = Believable.Of(resized.Recipe) };
        var here = Run.Of(new(after, after.Recipe.Home, Request.Home, home.Priors, isHome: false), Variants.Anchors(home, Request.Home));
        var measures = resized.Recipe.Steps
            .Where(step => step.Measured is not null)
            .SelectMany(step => Of(step, here.Find(step.Id)))
            .ToList();
        var recipe = resized.Recipe with { Steps = [.. resized.Recipe.Steps.Select(step => Settled(step, measures))] };
        return resized with
        {
            Recipe = recipe,
            After = Formula.Balance(recipe, larder),
            Measures = measures,
            Findings = [.. resized.Findings, .. measures.Where(measure => !measure.Stands).Select(measure => Gone(measure, resized.Recipe.FindStep(measure.Step)!))],
        };
    }

    private static bool HasMeasures(Recipe recipe) => recipe.Steps.Any(step => step.Measured is not null);

    private static IEnumerable<ResizedMeasure> Of(Step step, StepOutcome? outcome)
    {
        if (step.Measured!.Time is { } time)
        {
            var now = outcome?.Minutes is { } minutes ? Report.TimeOf(minutes) : null;
            var reading = step.Kind is StepKind.Bulk or StepKind.Proof or StepKind.Rest ? RiseReading : ClockReading;
            yield return new(step.Id, step.Name, now is { } known && time > Duration.Zero && Math.Abs((known.Likely / time) - 1) <= reading)
            {
                Time = time,
                NewTime = now?.Likely,
                NewTimeLow = now?.Low,
                NewTimeHigh = now?.High,
            };
        }

        // The core of a bake is what it is taken out at, whatever the size.
        if (step.Measured.Temperature is { } temperature && step.Kind != StepKind.Bake)
        {
            var celsius = outcome?.MixedCelsius ?? outcome?.EndCelsius;
            var now = celsius is { } known && known.Values.All(double.IsFinite) ? Report.TemperatureOf(known) : (Estimate<Temperature>?)null;
            yield return new(step.Id, step.Name, now is { } here && Math.Abs((here.Likely - temperature).Kelvins) <= ThermometerReading.Kelvins)
            {
                Temperature = temperature,
                NewTemperature = now?.Likely,
                NewTemperatureLow = now?.Low,
                NewTemperatureHigh = now?.High,
            };
        }
    }

    private static Step Settled(Step step, IReadOnlyList<ResizedMeasure> measures)
    {
        var gone = measures.Where(measure => measure.Step == step.Id && !measure.Stands).ToList();
        if (gone.Count == 0)
        {
            return step;
        }

        var time = gone.FirstOrDefault(measure => measure.Time is not null);
        var measured = step.Measured! with
        {
            Time = time is null ? step.Measured!.Time : null,
            Temperature = gone.Any(measure => measure.Temperature is not null) ? null : step.Measured!.Temperature,
        };
        return step with
        {
            Measured = measured is { Time: null, Temperature: null } ? null : measured,
            End = step.End ?? (time is null ? null : new StepEnd.ByCue(WholeMinutes(time.NewTime ?? time.Time!.Value))),
            Variants = [.. step.Variants.Select(variant => variant with { Step = WithoutTime(variant.Step) })],
        };
    }

    /// <summary>Another way of doing the same step was measured in the old size too; its minutes are then the author's guess for the new one.</summary>
    private static Step WithoutTime(Step step) => step.Measured is not { Time: { } time } ? step : step with
    {
        Measured = step.Measured.Temperature is null ? null : step.Measured with { Time = null },
        End = step.End ?? new StepEnd.ByCue(time),
    };

    private static Duration WholeMinutes(Duration time) => Duration.FromMinutes(Math.Max(1, Math.Round(time.Minutes, MidpointRounding.AwayFromZero)));

    private static Finding Gone(ResizedMeasure measure, Step step) => measure switch
    {
        { Time: { } was, NewTime: { } now, NewTimeLow: { } low, NewTimeHigh: { } high } =>
            StepFindings.About(step, "resized-times", Grade.Hint, false, ("was", was), ("now", now), ("low", low), ("high", high)),
        { Time: { } was, NewTime: { } now, NewTimeLow: { } low } =>
            StepFindings.About(step, "resized-times-open", Grade.Hint, false, ("was", was), ("now", now), ("low", low)),
        { Time: { } was } => StepFindings.About(step, "resized-times-not-known", Grade.Hint, false, ("was", was)),
        { Temperature: { } was, NewTemperature: { } now, NewTemperatureLow: { } low, NewTemperatureHigh: { } high } =>
            StepFindings.About(step, "resized-temperature", Grade.Hint, false, ("was", was), ("now", now), ("low", low), ("high", high)),
        _ => StepFindings.About(step, "resized-temperature-not-known", Grade.Hint, false, ("was", measure.Temperature!.Value)),
    };
}
