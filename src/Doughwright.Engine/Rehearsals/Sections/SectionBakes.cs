using Doughwright.Engine.Baking.Sections;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Sections;

/// <summary>Bakes of a rehearsal over sections through their pieces: what the author's oven gives is solved at home and carried here.</summary>
internal static class SectionBakes
{
    /// <summary>Moments of a bake at which its section is kept, the last when it is done.</summary>
    private const int Slices = 4;

    /// <summary>So many times the author's minutes a bake is followed before it counts as never done.</summary>
    private const double Patience = 4;

    /// <summary>Null where the step is no bake, its dough or its oven is not known, or no oven bakes it in the author's minutes.</summary>
    public static BakedSection? Of(RunResult home, RunResult here, string step, CancellationToken stop)
    {
        if (here.Find(step) is not { EndCelsius: { } target } || home.Find(step) is not { Minutes: { } minutes, EndCelsius: { } core } authors
            || Piece(home, step) is not { } theirs || Piece(here, step) is not { } ours)
        {
            return null;
        }

        var most = 60 * Patience * minutes.Central;
        // Nobody timed it: then it is the usual oven, and its own time.
        if (authors.Anchor?.Scale is null)
        {
            return Followed(step, ours.Piece, ours.Lies, target.Central, most, heat: 1, stop);
        }

        if (SectionTime.HeatFor(theirs.Piece, core.Central, 60 * minutes.Central, stop) is not { } heat
            || Followed(step, theirs.Piece.Scaled(heat), theirs.Lies, core.Central, most, heat, stop) is not { } atHome)
        {
            return null;
        }

        // What is off by a hundredth at home is off as much here: home is home.
        var pace = minutes.Central / atHome.Minutes.Minutes;
        var baked = ReferenceEquals(home, here) ? atHome : Followed(step, ours.Piece.Scaled(heat), ours.Lies, target.Central, most, heat, stop);
        return baked?.AtPace(pace);
    }

    private static (BakingPiece Piece, bool Lies)? Piece(RunResult run, string id)
    {
        var index = run.Graph.Steps.ToList().FindIndex(step => step.Id == id);
        if (index < 0 || run.Graph.Steps[index] is not { Kind: StepKind.Bake, Oven: { } oven } step || run.Outcomes[index].StartCelsius is not { } start || run.Before(index) is not { } before)
        {
            return null;
        }

        var portion = before.Divided(run.Stage, step.Component);
        var form = RisenForm.Of(step, portion, run.Stage);
        return form is null || SectionPieces.Of(portion, form, start.Central, oven, run.Stage) is not { } piece
            ? null
            : (SectionOven.In(piece, SectionPieces.Lies(form), step, run.Stage), SectionPieces.Lies(form));
    }

    private static BakedSection? Followed(string step, BakingPiece piece, bool lies, double core, double most, double heat, CancellationToken stop)
    {
        var grid = SectionBake.WorkingGrid(piece);
        var march = new SectionMarch(piece, grid);
        var (course, fields) = (new List<SectionMoment>(), new List<double[]>());
        foreach (var moment in SectionBake.Run(march, most, SectionBake.WorkingStep(piece), stop))
        {
            course.Add(moment);
            fields.Add([.. march.State.Celsius]);
            if (moment.Core >= core)
            {
                return Told(step, piece, grid, lies, course, fields, core, heat);
            }
        }

        return null;
    }

    private static BakedSection Told(
        string step, BakingPiece piece, CylinderGrid grid, bool lies, List<SectionMoment> course, List<double[]> fields, double core, double heat)
    {
        var end = course.Count < 2 ? 0 : (core - course[^2].Core) / (course[^1].Core - course[^2].Core);
        if (course.Count > 1)
        {
            var (before, after) = (fields[^2], fields[^1]);
            fields[^1] = [.. before.Zip(after, (was, now) => was + (end * (now - was)))];
            course[^1] = Between(course[^2], course[^1], end);
        }

        var seconds = course[^1].Seconds;
        var edges = grid.Edges.Select(edge => 1000 * edge).ToArray();
        var levels = grid.Levels.Select(level => 1000 * level).ToArray();
        return new(
            step,
            Duration.FromMinutes(seconds / 60),
            lies,
            piece.Radius,
            piece.Height,
            heat,
            [.. course.Select(Moment)],
            [
                .. Enumerable.Range(1, Slices).Select(slice => course.FindIndex(moment => moment.Seconds >= (seconds * slice / Slices) - 1e-6)).Distinct()
                    .Select(at => new SectionSlice(Duration.FromMinutes(course[at].Seconds / 60), edges, levels, [.. fields[at].Select(Temperature.FromCelsius)])),
            ]);
    }

    private static SectionMoment Between(in SectionMoment one, in SectionMoment other, double share) => new(
        Mean(one.Seconds, other.Seconds, share),
        Mean(one.Core, other.Core, share),
        Mean(one.Side, other.Side, share),
        Mean(one.Top, other.Top, share),
        Mean(one.Bottom, other.Bottom, share),
        Mean(one.Water, other.Water, share),
        Mean(one.Loss, other.Loss, share));

    private static double Mean(double one, double other, double share) => one + (share * (other - one));

    private static BakedMoment Moment(SectionMoment moment) => new(
        Duration.FromMinutes(moment.Seconds / 60),
        Temperature.FromCelsius(moment.Core),
        Temperature.FromCelsius(moment.Top),
        Temperature.FromCelsius(moment.Side),
        Temperature.FromCelsius(moment.Bottom),
        Percent.FromFraction(moment.Loss));
}
