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
        RunResult RunOf(Request request) =>
            Run.Of(new(Changes.Apply(after, larder, request), after.Recipe.Home, request, home.Priors, isHome: false), Variants.Anchors(home, request));
        var here = RunOf(Request.Home);
        var (before, wish) = (resized.Before.Recipe, resized.Request.Wish);
        var measures = resized.Recipe.Steps.SelectMany(step => Of(step, null, here, before, wish).Concat(step.Variants.Where(variant => variant.Step.Measured is not null).SelectMany(
            variant => Of(variant.Step, variant.Id, RunOf(new() { Variants = new Dictionary<string, string> { [step.Id] = variant.Id } }), before, wish)))).ToList();
        var recipe = resized.Recipe with { Steps = [.. resized.Recipe.Steps.Select(step => Settled(step, measures))] };
        return resized with
        {
            Recipe = recipe,
            After = Formula.Balance(recipe, larder),
            Measures = measures,
            Findings = [.. resized.Findings, .. AsThick(resized, measures), .. measures.Where(measure => !measure.Stands).Select(measure => Gone(measure, resized.Recipe.FindStep(measure.Step)! with { Name = measure.Name }))],
        };
    }

    /// <summary>One sheet on another tray lies as thick there as on its own.</summary>
    private static bool IsAsThick(Recipe before, ResizeWish wish) => wish is ResizeWish.Tray && before.Make is { Pieces: 1 };

    private static IEnumerable<Finding> AsThick(Resized resized, IReadOnlyList<ResizedMeasure> measures) =>
        from measure in measures
        where measure is { Variant: null, Time: not null } && IsAsThick(resized.Before.Recipe, resized.Request.Wish)
        let step = resized.Recipe!.FindStep(measure.Step)
        where step.Kind == StepKind.Bake
        select StepFindings.About(step, "resize-bake-as-thick", Grade.Hint, false, ("was", measure.Time!.Value));

    private static bool HasMeasures(Recipe recipe) =>
        recipe.Steps.Any(step => step.Measured is not null || step.Variants.Any(variant => variant.Step.Measured is not null));

    /// <param name="variant">Id of the other way in which it was measured; null for the step as written.</param>
    private static IEnumerable<ResizedMeasure> Of(Step step, string? variant, RunResult run, Recipe before, ResizeWish wish)
    {
        if (step.Measured is not { } measured)
        {
            yield break;
        }

        var outcome = run.Find(step.Id);
        var name = variant is null ? step.Name : $"{step.Name} ({variant.Replace('-', ' ')})";
        if (measured.Time is { } time)
        {
            var now = outcome?.Minutes is { } minutes ? Report.TimeOf(minutes) : null;
            if (step.Kind == StepKind.Bake && IsAsThick(before, wish))
            {
                // Its middle is as far from the heat as it was: a sheet has two faces, however wide it is. The model knows round pieces only.
                yield return new(step.Id, name, true) { Variant = variant, Time = time, NewTime = time };
                yield break;
            }

            var reading = step.Kind is StepKind.Bulk or StepKind.Proof or StepKind.Rest ? RiseReading : ClockReading;
            yield return new(step.Id, name, now is { } known && time > Duration.Zero && Math.Abs((known.Likely / time) - 1) <= reading)
            {
                Variant = variant,
                Time = time,
                NewTime = now?.Likely,
                NewTimeLow = now?.Low,
                NewTimeHigh = now?.High,
            };
        }

        // The core of a bake is what it is taken out at, whatever the size.
        if (measured.Temperature is { } temperature && step.Kind != StepKind.Bake)
        {
            var celsius = outcome?.MixedCelsius ?? outcome?.EndCelsius;
            var now = celsius is { } known && known.Values.All(double.IsFinite) ? Report.TemperatureOf(known) : (Estimate<Temperature>?)null;
            yield return new(step.Id, name, now is { } here && Math.Abs((here.Likely - temperature).Kelvins) <= ThermometerReading.Kelvins)
            {
                Variant = variant,
                Temperature = temperature,
                NewTemperature = now?.Likely,
                NewTemperatureLow = now?.Low,
                NewTemperatureHigh = now?.High,
            };
        }
    }

    /// <summary>The step and each of its other ways, every one by its own measurement.</summary>
    private static Step Settled(Step step, IReadOnlyList<ResizedMeasure> measures)
    {
        var own = measures.Where(measure => measure.Step == step.Id && !measure.Stands).ToList();
        if (own.Count == 0)
        {
            return step;
        }

        // A variant that says nothing of its end ends as the step, also where the step has only now got one.
        var settled = Settled(step, own, null);
        StepVariant Other(StepVariant variant)
        {
            var other = Settled(variant.Step, own, variant.Id);
            return variant with { Step = other with { End = other.End ?? settled.End } };
        }

        return settled with { Variants = [.. step.Variants.Select(Other)] };
    }

    private static Step Settled(Step step, IReadOnlyList<ResizedMeasure> gone, string? variant)
    {
        var here = gone.Where(measure => measure.Variant == variant).ToList();
        if (here.Count == 0)
        {
            return step;
        }

        var time = here.FirstOrDefault(measure => measure.Time is not null);
        var measured = step.Measured! with
        {
            Time = time is null ? step.Measured!.Time : null,
            Temperature = here.Any(measure => measure.Temperature is not null) ? null : step.Measured!.Temperature,
        };
        return step with
        {
            Measured = measured is { Time: null, Temperature: null } ? null : measured,
            End = step.End ?? (time is null ? null : new StepEnd.ByCue(WholeMinutes(time.NewTime ?? time.Time!.Value))),
        };
    }

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
