using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Findings;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>
/// Lays the stretches of one part along time. In a wait the part keeps the temperature and the volume it had: the rehearsal takes it into the
/// next step like that, and picture and figures must not differ. Only what has been baked cools on, in the
/// rehearsal as in the picture.
/// </summary>
internal sealed class StrandMaker(RunResult run, IReadOnlyList<Joint> joints, FollowedRise?[] rises, Component part)
{
    /// <summary>Two moments that are no farther apart are one, min.</summary>
    private const double Hair = 1e-6;

    private readonly List<Stretch> stretches = [];
    private double at = double.NaN;
    private double grams;
    private double laidOn;
    private double? celsius;
    private double? volume = 1;
    private HotLoaf? hot;

    public static IEnumerable<int> StepsOf(RunResult run, string part) =>
        Enumerable.Range(0, run.Graph.Steps.Count).Where(index => run.Graph.WorksOn[index] == part && !StepGraph.IsBeside(run.Graph.Steps[index]));

    public Strand Make()
    {
        var isComplete = StepsOf(run, part.Id).All(Lay);
        var joint = joints.FirstOrDefault(joint => joint.Part == part.Id);
        if (isComplete && joint is not null && stretches.Count > 0)
        {
            if (run.Times.Starts[joint.Step] is { } start)
            {
                Wait(start, null);
            }

            Leave(joint.Grams);
        }

        return new(part.Id, part.Kind, joint is null ? null : run.Graph.Steps[joint.Step].Id, joint?.Into, stretches);
    }

    /// <summary>Lays a step, and the wait before it; false where its time is not known.</summary>
    private bool Lay(int index)
    {
        var (step, outcome) = (run.Graph.Steps[index], run.Outcomes[index]);
        if (run.Times.Starts[index] is not { } start || outcome.Minutes is not { } minutes || !double.IsFinite(minutes.Central))
        {
            return false;
        }

        Wait(start, index);
        at = double.IsNaN(at) ? start : at;
        var way = WayOf(index, minutes.Central);
        var (from, to) = GramsOf(index);
        var held = volume = VolumeFrom(index, way[0].Growth);
        var length = minutes.Central;
        Add(step.Id, length, outcome.After.Hot is not null && outcome.EndCelsius is null, way.Select(point => Point(
            point.Minutes,
            length > 0 ? from + ((to - from) * (point.Minutes / length)) : point.Equals(way[^1]) ? to : from,
            point.Celsius,
            point.Growth ?? held)));
        (grams, volume) = (to, way[^1].Growth ?? held);
        hot = outcome.After.Hot;
        celsius = outcome.After.Celsius?.Central ?? way[^1].Celsius;
        return true;
    }

    private IReadOnlyList<WayPoint> WayOf(int index, double minutes)
    {
        var (step, outcome) = (run.Graph.Steps[index], run.Outcomes[index]);
        if (rises[index] is { } rise)
        {
            // A very long rise is followed in longer steps; it ends as the rehearsal tells all the same.
            var followed = rise.Way();
            return outcome.EndCelsius is { } told ? [.. followed.SkipLast(1), followed[^1] with { Celsius = told.Central }] : followed;
        }

        if (outcome.Spell is { IsBeforeItsRate: true } spell && step.Kind == StepKind.Rest)
        {
            return spell.Way(OverRisen.ScaleOf(run, part.Id));
        }

        if (outcome.Way is { } way)
        {
            return way();
        }

        var (start, end) = (outcome.StartCelsius?.Central, outcome.EndCelsius?.Central);
        return [new(0, start, null), new(minutes, end, null)];
    }

    private double? VolumeFrom(int index, double? growth)
    {
        var step = run.Graph.Steps[index];
        var risesUntold = rises[index] is null
            && (step.Kind is StepKind.Bulk or StepKind.Proof || (step.Kind == StepKind.Rest && part.Kind == ComponentKind.Preferment && growth is null));
        return risesUntold ? null : growth ?? volume;
    }

    /// <summary>What it weighs when the step begins and ends, with all that was laid on or in so far.</summary>
    private (double From, double To) GramsOf(int index)
    {
        var after = run.Outcomes[index].After;
        var own = after.Mass.Grams - after.LaidIn.Grams;
        var (from, to) = RawMass.Of(run.Stage, run.Graph.Steps, index, part.Id);
        var before = laidOn;
        laidOn += joints.Where(joint => joint.Step == index && joint.Into == part.Id && !joint.InTheBowl).Sum(joint => joint.Grams);
        return ((own * from) + before, (own * to) + laidOn);
    }

    /// <param name="next">Index of its own step that it waits for; null for a step of another part.</param>
    private void Wait(double until, int? next)
    {
        if (stretches.Count == 0 || until <= at + Hair)
        {
            return;
        }

        var minutes = until - at;
        var cools = hot is not null && (next is not { } own || run.Waits[own] > 0);
        var way = cools
            ? AfterOven.WayOfWait(hot!, minutes, Duration.FromMinutes(at), run.Stage, next is { } step ? run.Stage.Meets(run.Graph.Steps[step]) : run.Stage.IsHome)
            : [new(0, celsius, null), new(minutes, celsius, null)];
        Add(null, minutes, cools, way.Select(point => Point(point.Minutes, grams, point.Celsius, volume)));
        celsius = way[^1].Celsius;
    }

    /// <summary>
    /// What goes in at last: less than all of it, where the rest stays behind at that moment, or as warm as was asked where no step tells how it
    /// gets there.
    /// </summary>
    private void Leave(double taken)
    {
        var last = stretches[^1];
        var asked = run.Stage.AskedWithoutCooling(part.Id) ?? last.Points[^1].Temperature;
        if (Math.Abs(taken - grams) > 1e-9 * grams || asked != last.Points[^1].Temperature)
        {
            stretches[^1] = last with { Points = [.. last.Points, last.Points[^1] with { Mass = Mass.FromGrams(taken), Temperature = asked }] };
        }
    }

    private void Add(string? step, double minutes, bool isOnlyDrawn, IEnumerable<CoursePoint> points)
    {
        stretches.Add(new(step, Duration.FromMinutes(at), Duration.FromMinutes(at + minutes), [.. points]) { IsOnlyDrawn = isOnlyDrawn });
        at += minutes;
    }

    private CoursePoint Point(double minutes, double mass, double? warmth, double? size) => new(
        Duration.FromMinutes(at + minutes),
        Mass.FromGrams(mass),
        warmth is { } known ? Temperature.FromCelsius(known) : null,
        size);
}
