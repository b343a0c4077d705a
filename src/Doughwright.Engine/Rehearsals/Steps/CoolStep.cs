using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// Cooling or warming towards the air until the whole, stirred, has a temperature. At home the author's minutes fix the outer coefficient;
/// elsewhere it is carried. A target beyond the air is never reached: then the step says what it settles at.
/// </summary>
internal static class CoolStep
{
    public static StepOutcome Run(StepInput input)
    {
        var before = input.Before ?? Matter.Raw(input.Step.Component, input.Stage);
        if (input.Step.Kind == StepKind.Cool && before.IsBaked)
        {
            return before.Hot is { } loaf ? LoafStep.Run(input, before, loaf) : LoafStep.Untold(input, before, "loaf-not-told");
        }

        return From(input, before, before.Celsius is { } celsius ? InTheVessel(input, before, celsius) : null);
    }

    /// <summary>
    /// The step from the moment that all of it has the temperature <paramref name="start"/>; null when that is not known. What was asked to go
    /// in at a temperature goes in at it, however it got there: how long the room takes for it, or that it never does, is said beside.
    /// </summary>
    public static StepOutcome From(StepInput input, Portion before, PerLane? start)
    {
        var outcome = Towards(input, before, start);
        if (!input.Stage.Request.At.TryGetValue(input.Step.Component, out var asked))
        {
            return outcome;
        }

        var goesIn = outcome with { After = outcome.After with { Celsius = PerLane.Same(asked.Celsius, input.Lanes) } };
        return outcome.SettlesAtCelsius is null ? goesIn : AnotherWay(input, goesIn, asked);
    }

    /// <summary>The room never gets it there, and it was asked for all the same: it is taken as cooled in a bath of tap water, else in the fridge.</summary>
    private static StepOutcome AnotherWay(StepInput input, StepOutcome never, Temperature asked)
    {
        var ways = WaysOut.Of(input.Step, never, input.Stage, asked);
        if ((ways.Bath ?? ways.Fridge) is not { } time)
        {
            return never;
        }

        var kind = ways.Bath is null ? "cooled-in-fridge" : "cooled-in-bath";
        return never with
        {
            Minutes = PerLane.Same(time.Minutes, input.Lanes),
            EndCelsius = never.After.Celsius,
            SettlesAtCelsius = null,
            Way = () => WaysOut.Follow(input.Step, never, input.Stage, asked, inBath: ways.Bath is not null),
            Why = () => Reason.Leaf(kind, time.Minutes, "min"),
            Findings = [.. never.Findings, StepFindings.About(input.Step, kind, Grade.Hint, false, ("target", asked), ("time", time))],
        };
    }

    private static StepOutcome Towards(StepInput input, Portion before, PerLane? start)
    {
        if (TargetOf(input) is not { } wanted)
        {
            var rested = Rested(input, before, start);
            return PlainSteps.Stated(input, before with { Celsius = rested }, start, rested) with { Way = RestedWay(input, before, start) };
        }

        var target = new CoolingTarget(input.Step.Kind == StepKind.Warm ? CoolingDirection.Warm : CoolingDirection.Cool, wanted);
        if (start is not { } from || Bodies.Of(input.Step, before) is not { } body)
        {
            return Unknown(input, before, target);
        }

        var air = input.Air.At(Duration.Zero).Celsius;
        var exchange = Bodies.ExchangeOf(input.Step, from.Central, wanted.Celsius, air, body.Faces);
        var cooling = new Cooling(body, target, input.Air, Temperature.FromCelsius(from.Central), exchange.WattsPerSquareMetreKelvin);
        var coefficient = input.Anchor?.Scale is { } authors ? authors * input.Stage.Priors.Elsewhere : Bodies.Draw(exchange, input.Stage.Priors);
        var expected = Bodies.LanesOf(body, from, coefficient, input.Stage.Priors);
        return input.IsHome && StatedTime.Of(input.Step) is { } minutes
            ? AtHome(input, before, from, cooling, expected, minutes)
            : Elsewhere(input, before, from, cooling, expected);
    }

    /// <summary>What the step cools or warms to: what was asked for the line that uses it, else what the author wrote.</summary>
    public static Temperature? TargetOf(StepInput input) => input.Stage.Request.At.TryGetValue(input.Step.Component, out var asked)
        ? asked
        : (input.Step.End as StepEnd.AtTemperature)?.Temperature;

    private static StepOutcome AtHome(StepInput input, Portion before, PerLane start, Cooling cooling, CoolingLanes expected, double minutes)
    {
        var fit = cooling.SolveCoefficient(expected, PerLane.Same(minutes, input.Lanes).Values);
        if (!fit.Found.All(found => found))
        {
            var said = PerLane.Same(cooling.Target.Temperature.Celsius, input.Lanes);
            return PlainSteps.Stated(input, before with { Celsius = said }, start, said) with
            {
                Findings = [CoolFindings.Impossible(input, cooling.Target.Temperature, minutes)],
            };
        }

        var coefficient = new PerLane(fit.WattsPerSquareMetreKelvin);
        var end = PerLane.Same(cooling.Target.In(input.Air.At(Duration.FromMinutes(minutes)).Celsius) ?? cooling.Target.Temperature.Celsius, input.Lanes);
        return new()
        {
            After = before with { Celsius = end },
            Minutes = PerLane.Same(minutes, input.Lanes),
            Basis = input.Step.Measured?.Time is null ? Basis.Stated : Basis.Measured,
            StartCelsius = start,
            EndCelsius = end,
            Anchor = new(coefficient, [], PerLane.Same(minutes, input.Lanes)),
            Way = () => CoolingWay.Of(cooling, expected with { WattsPerSquareMetreKelvin = coefficient.Values }, minutes, end.Central),
            Findings = CoolFindings.Unusual(input, start, cooling, expected, coefficient.Central, minutes),
            Why = () => CoolReasons.Of(input, cooling, start.Central, end.Central, minutes, coefficient.Central, isSolved: true),
        };
    }

    private static StepOutcome Elsewhere(StepInput input, Portion before, PerLane start, Cooling cooling, CoolingLanes lanes)
    {
        var times = cooling.TimeToReach(lanes);
        var (minutes, end) = (new PerLane(times.Minutes), new PerLane(times.EndCelsius));
        var never = times.NeverEnds(0);
        return new()
        {
            After = before with { Celsius = end },
            Minutes = minutes,
            Basis = Basis.Computed,
            StartCelsius = start,
            EndCelsius = never ? null : end,
            SettlesAtCelsius = never ? times.SettlesAtCelsius : null,
            Way = never ? null : () => CoolingWay.Of(cooling, lanes, minutes.Central, end.Central),
            Why = never
                ? () => Reason.Leaf("settles-at-air", times.SettlesAtCelsius, "°C")
                : () => CoolReasons.Of(input, cooling, start.Central, end.Central, minutes.Central, lanes.WattsPerSquareMetreKelvin[0], input.Anchor?.Scale is not null),
        };
    }

    /// <summary>Where it starts is not known: at home the author's minutes stand, elsewhere nobody can say; where it ends is known all the same.</summary>
    private static StepOutcome Unknown(StepInput input, Portion before, CoolingTarget target)
    {
        var air = input.Air.Knots[^1].Air.Celsius;
        var end = target.In(air);
        var isMeasured = input.IsHome && StatedTime.Of(input.Step) is not null;
        return new()
        {
            After = before with { Celsius = PerLane.Same(end ?? air, input.Lanes) },
            Minutes = end is null ? PerLane.Same(double.PositiveInfinity, input.Lanes)
                : isMeasured ? PerLane.Same(StatedTime.Of(input.Step)!.Value, input.Lanes) : null,
            Basis = isMeasured && input.Step.Measured?.Time is not null ? Basis.Measured : isMeasured ? Basis.Stated : Basis.Computed,
            EndCelsius = end is { } reached ? PerLane.Same(reached, input.Lanes) : null,
            SettlesAtCelsius = end is null ? air : null,
            Findings = isMeasured ? [] : [StepFindings.About(input.Step, "start-not-known", Grade.Hint)],
        };
    }

    /// <summary>What was cooked goes onto a tray or into a bowl that takes some of its heat.</summary>
    private static PerLane InTheVessel(StepInput input, Portion before, PerLane celsius)
    {
        // The tray on which it cooled in the room goes into the fridge with it, as warm as itself.
        if (input.Step.Vessel is not { } vessel || vessel == before.Vessel || DefaultHeats.JoulesPerKelvinOf(vessel) is not ({ } capacity and > 0))
        {
            return celsius;
        }

        var own = input.Stage.WarmthOf(vessel);
        return celsius.Map(warmth => ((before.JoulesPerKelvin * warmth) + (capacity * own)) / (before.JoulesPerKelvin + capacity));
    }

    /// <summary>How warm a part is after a stated time of standing; null when that cannot be told.</summary>
    private static PerLane? Rested(StepInput input, Portion before, PerLane? start)
    {
        if (start is not { } from || Bodies.Of(input.Step, before) is not { } body || StatedTime.Of(input.Step) is not { } minutes)
        {
            return null;
        }

        return minutes <= 0 ? from : Rising.Drift(input, body, from, Duration.FromMinutes(minutes)).End;
    }

    private static Func<IReadOnlyList<WayPoint>>? RestedWay(StepInput input, Portion before, PerLane? start) =>
        start is { } from && Bodies.Of(input.Step, before) is { } body && StatedTime.Of(input.Step) is > 0 and var minutes
            ? () => DriftWay.Of(input, body, from, minutes, null)
            : null;
}
