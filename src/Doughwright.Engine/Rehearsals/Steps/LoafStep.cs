using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// A loaf that cools after the oven. At home it cools for the author's minutes, and how warm its middle then is, in each lane, is what is carried:
/// elsewhere it is done when the middle is as cool, since crumb sets and icing holds by the temperature it has. One that had cooled out at home, to
/// within some kelvins of the room, is done when it is as near the room here; and no room is waited in for what only a cooler one would give.
/// </summary>
internal static class LoafStep
{
    /// <summary>So many times the author's minutes it is followed elsewhere.</summary>
    private const double Patience = 6;

    private const double UsualMinutes = 60;

    public static StepOutcome Run(StepInput input, Portion before, HotLoaf came)
    {
        if (Rack.Of(input, before) is not { } rack)
        {
            return Untold(input, before, "loaf-cools-elsewhere");
        }

        // An oven hotter than any leaves nothing that the laws of crumb tell of.
        var outcome = On(input, before, came.To(rack, input.Stage, input.IsHome));
        return Told(outcome.StartCelsius) && Told(outcome.EndCelsius) ? outcome : Untold(input, before, "loaf-not-told");
    }

    private static bool Told(PerLane? celsius) => celsius is not { Central: var likely } || double.IsFinite(likely);

    private static StepOutcome On(StepInput input, Portion before, HotLoaf loaf)
    {
        var minutes = StatedTime.Of(input.Step) is > 0 and var stated ? stated : (double?)null;
        return (WrittenTarget(input.Step), minutes) switch
        {
            ({ } target, _) => ToTarget(input, before, loaf, target, minutes),
            (null, { } time) when !input.IsHome && input.Anchor is { Growth: [var core, var above, var longer] } => Carried(input, before, loaf, time, core, above, longer),
            (null, { } time) => For(input, before, loaf, time),
            _ => PlainSteps.Stated(input, before with { Hot = loaf }, null, null),
        };
    }

    /// <summary>A loaf of which nothing is known: the author's minutes stand, and elsewhere it is said why nothing else does.</summary>
    /// <param name="why">Kind of the finding.</param>
    public static StepOutcome Untold(StepInput input, Portion before, string why)
    {
        var stated = PlainSteps.Stated(input, before with { Hot = null }, null, null);
        return stated with
        {
            Findings = [.. stated.Findings, .. input.IsHome ? Array.Empty<Finding>() : [StepFindings.About(input.Step, why, Grade.Hint)]],
            Why = stated.Minutes is { } time ? () => Reason.From("stated-by-author", time.Central, "min", [Reason.Leaf(why, null, "")]) : null,
        };
    }

    private static Temperature? WrittenTarget(Step step) => (step.End as StepEnd.AtTemperature)?.Temperature ?? step.Measured?.Temperature;

    /// <summary>For so many minutes, wherever it is.</summary>
    private static StepOutcome For(StepInput input, Portion before, HotLoaf loaf, double minutes)
    {
        var time = PerLane.Same(minutes, input.Lanes);
        var trace = loaf.Follow(minutes, Longest(loaf) + minutes);
        var outcome = Outcome(input, before, loaf, trace, time, time, CooledTo.Minutes) with
        {
            Basis = input.IsHome && input.Step.Measured?.Time is not null ? Basis.Measured : Basis.Stated,
        };
        var (start, end) = (outcome.StartCelsius!.Value, outcome.EndCelsius!.Value);
        if (!input.IsHome || !(start.Central - end.Central >= RackLaws.HardlyCooled))
        {
            return outcome;
        }

        var air = loaf.On!.Celsius;
        var cold = trace.FallsTo(PerLane.Same(air + RackLaws.Nearest, input.Lanes), loaf.Stood) - loaf.Stood;
        var above = end.Map(core => Math.Max(core - air, RackLaws.Nearest));
        var longer = end.Each((lane, core) => core - air < RackLaws.Nearest && cold[lane] > 0 ? minutes / cold[lane] : 1);
        return outcome with { Anchor = new(null, [end, above, longer], time) };
    }

    private static StepOutcome Carried(StepInput input, Portion before, HotLoaf loaf, double home, PerLane core, PerLane above, PerLane longer)
    {
        var most = Longest(loaf) + (Patience * home);
        if (above.Central > RackLaws.CooledOut)
        {
            return ToSameCore(input, before, loaf, home, most, core);
        }

        var target = above + loaf.On!.Celsius;
        var trace = loaf.Follow(home, most, longer.Values.All(times => times == 1) ? target : null);
        var minutes = (trace.FallsTo(target, loaf.Stood) - loaf.Stood) * longer;
        return Ended(input, before, loaf, trace, minutes, minutes, CooledTo.NearRoom);
    }

    /// <summary>
    /// Until the core is as at home. A lane whose room is too warm for that stays as long as in the warmest room in which it cools out when it gets there:
    /// so a warmer room never asks for less time.
    /// </summary>
    private static StepOutcome ToSameCore(StepInput input, Portion before, HotLoaf loaf, double home, double most, PerLane core)
    {
        var air = loaf.On!.Celsius;
        var rooms = core.Map(celsius => Math.Min(air, celsius - RackLaws.CooledOut));
        var isWarm = rooms.Values.Any(room => room < air);
        var trace = loaf.Follow(home, most, core, isWarm ? rooms : null);
        var minutes = trace.FallsTo(core, loaf.Stood) - loaf.Stood;
        if (isWarm && double.IsFinite(minutes.Central))
        {
            trace = loaf.Follow(home, most);
        }

        return Ended(input, before, loaf, trace, minutes, minutes, rooms.Central < air ? CooledTo.RoomIsWarm : CooledTo.SameCore);
    }

    /// <summary>Until the middle has a temperature that the author wrote or measured: what is left of the author's minutes is carried as a pace.</summary>
    private static StepOutcome ToTarget(StepInput input, Portion before, HotLoaf loaf, Temperature written, double? stated)
    {
        var air = loaf.On!.Celsius;
        if (new CoolingTarget(CoolingDirection.Cool, written).In(air) is not { } waitedFor)
        {
            return input.IsHome && stated is { } home ? Impossible(input, before, loaf, written, home) : new()
            {
                After = before with { Hot = null },
                Minutes = PerLane.Same(double.PositiveInfinity, input.Lanes),
                Basis = Basis.Computed,
                SettlesAtCelsius = air,
                Why = () => Reason.Leaf("settles-at-air", air, "°C"),
            };
        }

        var target = PerLane.Same(waitedFor, input.Lanes);
        var scale = stated ?? UsualMinutes;
        var trace = loaf.Follow(scale, Longest(loaf) + (Patience * scale), target);
        var takes = trace.FallsTo(target, loaf.Stood) - loaf.Stood;
        if (!input.IsHome || stated is not { } minutes)
        {
            return Ended(input, before, loaf, trace, input.Anchor?.Scale is { } pace ? takes / pace : takes, takes, CooledTo.AsWritten);
        }

        if (!double.IsFinite(takes.Central) || takes.Central <= 0)
        {
            return Impossible(input, before, loaf, written, minutes);
        }

        return Outcome(input, before, loaf, trace, PerLane.Same(minutes, input.Lanes), takes, CooledTo.AsWritten) with
        {
            Basis = input.Step.Measured?.Time is null ? Basis.Stated : Basis.Measured,
            Anchor = new(takes * (1 / minutes), [], PerLane.Same(minutes, input.Lanes)),
            Findings = Unusual(input, takes.Central, minutes),
        };
    }

    private static StepOutcome Impossible(StepInput input, Portion before, HotLoaf loaf, Temperature target, double minutes) => For(input, before, loaf, minutes) with
    {
        Anchor = null,
        Findings = [CoolFindings.Impossible(input, target, minutes)],
    };

    private static Finding[] Unusual(StepInput input, double expected, double minutes) =>
        Math.Abs(Numerics.Elementary.Log(expected / minutes)) / RackLaws.Exchange.Spread <= StepFindings.FarFromPrior ? []
        :
        [
            StepFindings.About(
                input.Step,
                minutes < expected ? "cooling-faster-than-usual" : "cooling-slower-than-usual",
                Grade.Warning,
                false,
                ("measured", Duration.FromMinutes(minutes)),
                ("expected", Duration.FromMinutes(expected))),
        ];

    /// <summary>A cooling that was computed; where it takes longer than it is followed, nothing is told of it.</summary>
    private static StepOutcome Ended(StepInput input, Portion before, HotLoaf loaf, RackTrace trace, PerLane minutes, PerLane takes, CooledTo until) =>
        double.IsFinite(minutes.Central) ? Outcome(input, before, loaf, trace, minutes, takes, until) : new()
        {
            After = before with { Hot = null },
            Basis = Basis.Computed,
            Findings = [StepFindings.About(input.Step, "loaf-cools-too-slowly", Grade.Hint)],
        };

    /// <param name="minutes">As told.</param>
    /// <param name="takes">By the trace.</param>
    private static StepOutcome Outcome(StepInput input, Portion before, HotLoaf loaf, RackTrace trace, PerLane minutes, PerLane takes, CooledTo until)
    {
        // A lane that never gets there says nothing of how warm it is then.
        var over = loaf.Stood + takes.Map(time => double.IsFinite(time) ? time : takes.Central);
        var (start, end) = (loaf.IsFresh ? loaf.Core : Known(trace.Core(loaf.Stood)), Known(trace.Core(over)));
        var rack = loaf.On!;
        return new()
        {
            After = before with { Hot = loaf.After(takes.Map(time => double.IsFinite(time) ? time : takes.Central)) },
            Minutes = minutes,
            Basis = Basis.Computed,
            StartCelsius = start,
            EndCelsius = end,
            Cooling = () => new(
                Report.TemperatureOf(end), Report.PercentOf(Known(trace.Lost(loaf.Stood, over))), Temperature.FromCelsius(rack.Celsius), rack.InTin, until),
            Way = () => trace.Way(loaf.Stood.Central, over.Central, takes.Central > 0 ? minutes.Central / takes.Central : 1),
            Why = () => LoafReasons.Of(rack, start.Central, end.Central, minutes.Central, until),
        };
    }

    private static PerLane Known(PerLane values) => values.Map(value => double.IsFinite(value) ? value : values.Central);

    private static double Longest(HotLoaf loaf) => loaf.Stood.Values.Max();
}
