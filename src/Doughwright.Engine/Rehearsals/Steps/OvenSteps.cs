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
        var before = (input.Before ?? Matter.Raw(step.Component, stage)).Divided(stage, step.Component) with { IsBaked = true, Hot = null };
        var dial = DialOf(step, stage);
        if (step.Oven is null || before.Celsius is not { } start || start.Values.Any(celsius => !(celsius < stage.Boils.Celsius)))
        {
            return PlainSteps.NotCarried(input, before, before.Celsius) with { Dial = dial };
        }

        if (OvenPiece.Of(step, before, start, step.Oven, stage, StatedTime.Of(step) ?? 0) is not { } piece)
        {
            return PlainSteps.NotCarried(input, before, before.Celsius) with { Dial = dial };
        }

        var target = CoreTarget.Of(step, stage, input.Anchor, start);
        var after = before with { Celsius = null, Dough = null };
        if (target.Refusal is { } refusal)
        {
            return new() { After = after, Basis = Basis.Computed, Dial = dial, StartCelsius = start, Findings = [refusal] };
        }

        var core = target.Celsius(start, stage.Boils);
        var home = input.ToMeet?.Time ?? (input.IsHome ? AuthorsMinutes(step) : null);
        if (home is { } minutes)
        {
            if (minutes > OvenPiece.MostFollowed)
            {
                return PlainSteps.NotCarried(input, after, start) with
                {
                    Dial = dial,
                    Findings = [StepFindings.About(step, "bake-too-long", Grade.Warning, false, ("minutes", minutes), ("most", OvenPiece.MostFollowed))],
                };
            }

            var read = (StatedTime.IsEstimate(step) ? stage.Priors.BakeEstimate : stage.Priors.BakeReading) * minutes.Minutes;
            var (transfer, baked) = piece.Fit(core, read, target.IsMeasured, stage.Priors.Transfer);
            if (baked.IsUntold(read))
            {
                return Without(input, after, dial, start, UntoldBakes.Whole(step), target);
            }

            if (!double.IsFinite(baked.Pace.Central) || !double.IsFinite(baked.Longer.Central))
            {
                return Without(input, after, dial, start, TooCool(input, start, target), target);
            }

            return Outcome(input, Hot(after, piece, baked, read, transfer), dial, start, baked, target, read, AuthorsBasis(step), new(transfer, [target.Share, baked.Pace, baked.Longer, baked.Browning(read)], null)) with
            {
                Way = () => baked.Way(read.Central),
                Bake = new(baked, piece, core, read, transfer, read, Room(input, read)),
                Findings = [.. PaceFindings(step, transfer.Central, baked, stage.Recipe), .. CoreTarget.Unusual(step, stage), .. UntoldBakes.Partly(step, baked, read)],
            };
        }

        // A lane in which the core never got there, or was there before it went in, has no pace, and stays open in every other kitchen.
        var usual = PerLane.Same(1, input.Lanes);
        var (carried, quicker, longer) = input.Anchor is { Scale: { } known, Growth: [_, var pace, var beyond, ..] } ? (known, pace, beyond) : (stage.Priors.Transfer, stage.Priors.BakeLag.Map(lag => 1 / lag), usual);
        var here = piece.Bake(core, carried, quicker, longer);
        var time = here.MinutesFor(core);
        if (!double.IsFinite(time.Central))
        {
            return Without(input, after, dial, start, here.IsUntold(time) ? UntoldBakes.Whole(step) : TooCool(input, start, target), target);
        }

        // Nobody timed the bake, but the author's kitchen says how far its core comes on the way to boiling.
        var colour = input.Anchor is { Growth: [_, _, _, var brown] } ? here.MinutesToBrowning(brown, time) : (PerLane?)null;
        return Outcome(input, Hot(after, piece, here, time, carried), dial, start, here, target, time, Basis.Computed, input.IsHome ? new(null, [target.Share], null) : null) with
        {
            Way = () => here.Way(time.Central),
            Bake = new(here, piece, core, time, carried, colour, Room(input, time)),
            Findings = [.. CoreTarget.Raw(step, stage, Temperature.FromCelsius(core.Central)) is { } raw ? [raw] : Array.Empty<Finding>(), .. CrustFindings.Of(step, time, colour), .. UntoldBakes.Partly(step, here, time)],
        };
    }

    private static double Room(StepInput input, PerLane minutes) => input.Air.At(Duration.FromMinutes(minutes.Central)).Celsius;

    private static Portion Hot(Portion after, OvenPiece piece, BakedPiece baked, PerLane minutes, PerLane transfer) =>
        after with { Hot = new(piece, minutes, transfer, baked.Pace, baked.Core(minutes)) };

    /// <summary>An oven in which the core never gets there.</summary>
    private static Finding TooCool(StepInput input, PerLane start, CoreTarget target)
    {
        var core = Temperature.FromCelsius(target.Celsius(start, input.Stage.Boils).Central);
        return StepFindings.About(input.Step, "core-never-reached", Grade.Warning, false, ("core", core), ("dial", input.Step.Oven!.Dial));
    }

    /// <summary>A bake that is not told: at home the author's minutes stand, elsewhere nobody can say.</summary>
    private static StepOutcome Without(StepInput input, Portion after, Dial? dial, PerLane start, Finding why, CoreTarget target)
    {
        var authors = PlainSteps.Stated(input, after, start, null);
        return authors with
        {
            Minutes = input.IsHome ? authors.Minutes : null,
            Dial = dial,
            Findings = [why, .. CoreTarget.Unusual(input.Step, input.Stage)],
        };
    }

    private static StepOutcome Outcome(
        StepInput input, Portion after, Dial? dial, PerLane start, BakedPiece baked, CoreTarget target, PerLane minutes, Basis basis, Anchor? anchor) => new()
        {
            After = after,
            Minutes = minutes,
            Basis = basis,
            Dial = dial,
            StartCelsius = start,
            EndCelsius = baked.Core(minutes),
            Anchor = anchor,
            Why = () => BakeReasons.Of(input, start.Central, target.Celsius(start, input.Stage.Boils).Central, target.Share.Central, minutes.Central),
        };

    private static Basis AuthorsBasis(Step step) => step.Measured?.Time is null ? Basis.Stated : Basis.Measured;

    private static Duration? AuthorsMinutes(Step step) => StatedTime.Of(step) is { } minutes ? Duration.FromMinutes(minutes) : null;

    private static Dial? DialOf(Step step, Stage stage) => OvenDials.Of(step, stage);

    /// <summary>A flat piece that bakes fast is no news: the pace is that of a piece as round as it was shaped, and says nothing of another.</summary>
    private static Finding[] PaceFindings(Step step, double transfer, BakedPiece baked, Recipe recipe)
    {
        if (transfer > 1 && GoesInFlat(step, recipe))
        {
            return [];
        }

        var lag = baked.Longer.Central / baked.Pace.Central;
        var spreads = Math.Max(Math.Abs(Elementary.Log(transfer)) / BakeLaws.Transfer.Spread, Math.Abs(Elementary.Log(lag)) / BakeLaws.Lag.Spread);
        var factor = transfer / lag;
        return spreads > StepFindings.FarFromPrior
            ? [StepFindings.About(step, "bake-pace-unusual", Grade.Warning, false, ("factor", Math.Round(factor > 1 ? factor : 1 / factor, 1)))]
            : [];
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
