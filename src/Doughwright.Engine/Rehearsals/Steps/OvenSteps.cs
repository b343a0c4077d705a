using Doughwright.Engine.Baking;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Heating the oven, and baking.</summary>
internal static class OvenSteps
{
    public static StepOutcome Preheat(StepInput input)
    {
        var step = input.Step;
        var before = input.Before ?? Matter.Raw(step.Component, input.Stage);
        var dial = DialOf(step, input.Stage);
        if (StatedTime.Of(step) is { } stated)
        {
            return new() { After = before, Minutes = PerLane.Same(stated, input.Lanes), Basis = Basis.Stated, Dial = dial };
        }

        if (step.Oven is null)
        {
            return new() { After = before, Basis = Basis.Computed };
        }

        var room = input.Air.At(Duration.Zero).Celsius;
        var set = dial!.Here.Celsius;
        var central = Preheating.Minutes(step, input.Stage, room, set);
        return new()
        {
            After = before,
            Minutes = input.Stage.Priors.Preheat * central,
            Basis = Basis.Computed,
            Dial = dial,
            StartCelsius = PerLane.Same(room, input.Lanes),
            EndCelsius = PerLane.Same(set, input.Lanes),
            Why = () => Reason.Leaf("preheating", central, "min", source: "oven-preheat"),
        };
    }

    public static StepOutcome Bake(StepInput input)
    {
        var (step, stage) = (input.Step, input.Stage);
        var before = (input.Before ?? Matter.Raw(step.Component, stage)).Divided(stage, step.Component);
        var dial = DialOf(step, stage);
        if (step.Oven is null || before.Celsius is not { } start || start.Values.Any(celsius => !(celsius < stage.Boils.Celsius)))
        {
            return PlainSteps.NotCarried(input, before, before.Celsius) with { Dial = dial };
        }

        var piece = OvenPiece.Of(before, start, step.Oven, stage);
        var target = CoreTarget.Of(step, stage, input.Anchor, start);
        var after = before with { Celsius = null, Dough = null };
        if (target.Refusal is { } refusal)
        {
            return new() { After = after, Basis = Basis.Computed, Dial = dial, StartCelsius = start, Findings = [refusal] };
        }

        var fourier = piece.TimeToShare(target.Share);
        if (double.IsInfinity(fourier[0]))
        {
            return TooCool(input, after, dial, start, target);
        }

        var home = input.ToMeet?.Time ?? (input.IsHome ? AuthorsMinutes(step) : null);
        if (home is { } minutes)
        {
            // Fo = pace x (α/R²) x t: the author's minutes fix the pace.
            var read = (StatedTime.IsEstimate(step) ? stage.Priors.BakeEstimate : stage.Priors.BakeReading) * minutes.Minutes;
            var scale = new PerLane(fourier) / (piece.FourierPerMinute * read);
            return Outcome(input, after, dial, start, target, read, AuthorsBasis(step), new(scale, [target.Share], null)) with
            {
                Way = () => piece.Way(fourier[0], read.Central),
                Findings = [.. PaceFindings(step, scale.Central, stage.Recipe), .. CoreTarget.Unusual(step, stage)],
            };
        }

        var pace = input.Anchor?.Scale ?? stage.Priors.BakePace;
        // A lane in which the core never got there, or was there before it went in, has no pace, and stays open in every other kitchen.
        var perMinute = piece.FourierPerMinute * pace;
        var here = new PerLane(fourier).With(
            perMinute, (needed, each) => double.IsFinite(needed) && double.IsFinite(each) && each > 0 ? needed / each : double.PositiveInfinity);
        if (stage.ModeOf(step.Oven) != stage.WrittenModeOf(step.Oven))
        {
            here *= stage.Priors.OtherOven;
        }

        // Nobody timed the bake, but the author's kitchen says how far its core comes on the way to boiling.
        return Outcome(input, after, dial, start, target, here, Basis.Computed, input.IsHome ? new(null, [target.Share], null) : null) with
        {
            Way = () => piece.Way(fourier[0], here.Central),
            Findings = CoreTarget.Raw(step, stage, Temperature.FromCelsius(target.Celsius(start, stage.Boils).Central)) is { } raw ? [raw] : [],
        };
    }

    /// <summary>An oven in which the core never gets there: at home the author's minutes stand, elsewhere nobody can say.</summary>
    private static StepOutcome TooCool(StepInput input, Portion after, Dial? dial, PerLane start, CoreTarget target)
    {
        var (step, stage) = (input.Step, input.Stage);
        var core = Temperature.FromCelsius(target.Celsius(start, stage.Boils).Central);
        var finding = StepFindings.About(step, "core-never-reached", Grade.Warning, false, ("core", core), ("dial", step.Oven!.Dial));
        var authors = PlainSteps.Stated(input, after, start, null);
        return authors with
        {
            Minutes = input.IsHome ? authors.Minutes : null,
            Dial = dial,
            Findings = [finding, .. CoreTarget.Unusual(step, stage)],
        };
    }

    private static StepOutcome Outcome(
        StepInput input, Portion after, Dial? dial, PerLane start, CoreTarget target, PerLane minutes, Basis basis, Anchor? anchor) => new()
        {
            After = after,
            Minutes = minutes,
            Basis = basis,
            Dial = dial,
            StartCelsius = start,
            EndCelsius = target.Celsius(start, input.Stage.Boils),
            Anchor = anchor,
            Why = () => BakeReasons.Of(input, start.Central, target.Celsius(start, input.Stage.Boils).Central, target.Share.Central, minutes.Central),
        };

    private static Basis AuthorsBasis(Step step) => step.Measured?.Time is null ? Basis.Stated : Basis.Measured;

    private static Duration? AuthorsMinutes(Step step) => StatedTime.Of(step) is { } minutes ? Duration.FromMinutes(minutes) : null;

    private static Dial? DialOf(Step step, Stage stage) => OvenDials.Of(step, stage);

    /// <summary>A flat piece that bakes fast is no news: the pace is that of a piece as round as it was shaped, and says nothing of another.</summary>
    private static Finding[] PaceFindings(Step step, double pace, Recipe recipe)
    {
        if (pace > 1 && GoesInFlat(step, recipe))
        {
            return [];
        }

        var spreads = Elementary.Log(pace) / OvenPiece.PaceSpread;
        return Math.Abs(spreads) > StepFindings.FarFromPrior ? [StepFindings.About(step, "bake-pace-unusual", Grade.Warning, false, ("factor", Math.Round(pace > 1 ? pace : 1 / pace, 1)))] : [];
    }

    /// <summary>
    /// Whether the pieces are shaped, stand, and are shaped once more right before the bake: then they are rolled or stretched out, and heat
    /// reaches their middle from two near faces. A loaf is shaped before its last stand and goes in as it rose.
    /// </summary>
    private static bool GoesInFlat(Step bake, Recipe recipe)
    {
        var before = recipe.Steps.TakeWhile(step => step.Id != bake.Id)
            .Where(step => step.Component == bake.Component && step.Kind is (StepKind.Shape or StepKind.Rest or StepKind.Bulk or StepKind.Proof))
            .Reverse().ToArray();
        return before is [{ Kind: StepKind.Shape }, { Kind: not StepKind.Shape }, ..] && before.Skip(1).Any(step => step.Kind == StepKind.Shape);
    }
}
