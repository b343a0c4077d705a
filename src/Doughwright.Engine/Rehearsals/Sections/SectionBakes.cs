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

    /// <summary>
    /// A bake as it goes at home. What the oven gives is what the lanes found from the author's minutes, and what is then left of those minutes a pace,
    /// so that home is home. Null where the step is no bake, its dough or its oven is not known, or its core does not get there.
    /// </summary>
    public static HomeBake? AtHome(RunResult home, string step, CancellationToken stop)
    {
        if (home.Find(step) is not { Minutes: { } minutes, Bake: { } told } authors || !double.IsFinite(minutes.Central) || Piece(home, step) is not ({ } piece, var lies))
        {
            return null;
        }

        var heat = told.Transfer.Central;
        return Followed(step, piece.Scaled(heat), lies, new(told.Core.Central, told.Baked.Longer.Central), MostSeconds(minutes.Central), heat, stop) is not { } baked ? null
            : authors.Anchor?.Scale is null ? new(heat, 1, minutes.Central, baked)
            : new(heat, minutes.Central / baked.Minutes.Minutes, minutes.Central, baked.AtPace(minutes.Central / baked.Minutes.Minutes));
    }

    /// <summary>The same bake here; null as above.</summary>
    /// <param name="home">Of the author's oven; null for a usual one.</param>
    public static BakedSection? Here(HomeBake? home, RunResult here, string step, CancellationToken stop) =>
        here.Find(step) is { Bake: { } told, Minutes: { } minutes } && double.IsFinite(minutes.Central) && Piece(here, step) is ({ } piece, var lies)
            ? Followed(
                step,
                piece.Scaled(home?.Heat ?? 1),
                lies,
                new(told.Core.Central, told.Baked.Longer.Central),
                MostSeconds(home?.Minutes ?? minutes.Central),
                home?.Heat ?? 1,
                stop)?.AtPace(home?.Pace ?? 1)
            : null;

    private static double MostSeconds(double minutes) => 60 * Patience * minutes;

    private static (BakingPiece Piece, bool Lies)? Piece(RunResult run, string id)
    {
        var index = run.Graph.Steps.ToList().FindIndex(step => step.Id == id);
        if (index < 0 || run.Graph.Steps[index] is not { Kind: StepKind.Bake, Oven: { } oven } step || run.Outcomes[index].StartCelsius is not { } start || run.Before(index) is not { } before)
        {
            return null;
        }

        if (!SectionOven.Carries(step, run.Stage))
        {
            return null;
        }

        var portion = before.Divided(run.Stage, step.Component);
        var form = RisenForm.Of(step, portion, run.Stage);
        if (form is null)
        {
            return null;
        }

        var made = Ovens.For(step, run.Stage, OvenDials.Inside(oven, run.Stage), UnderSide.Share(form));
        return SectionPieces.Of(portion, form, start.Central, made, step.On, run.Stage) is { } piece ? (piece, SectionPieces.Lies(form)) : null;
    }

    private static BakedSection? Followed(string step, BakingPiece piece, bool lies, SectionEnd ends, double most, double heat, CancellationToken stop)
    {
        var grid = SectionBake.WorkingGrid(piece);
        var march = new SectionMarch(piece, grid);
        var (course, fields) = (new List<SectionMoment>(), new List<double[]>());
        try
        {
            foreach (var moment in SectionBake.Run(march, most, SectionBake.WorkingStep(piece, most / Patience), stop))
            {
                course.Add(moment);
                fields.Add([.. march.State.Celsius]);
                if (ends.Reached(course) is { } share)
                {
                    return Told(step, piece, grid, lies, course, fields, share, heat);
                }
            }
        }
        catch (SectionUnsolvedException)
        {
            // No section is told then: the figure along one radius stands, and says so.
        }

        return null;
    }

    /// <param name="end">Which share of its last step the bake still takes.</param>
    private static BakedSection Told(
        string step, BakingPiece piece, CylinderGrid grid, bool lies, List<SectionMoment> course, List<double[]> fields, double end, double heat)
    {
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
            [.. course.Select(moment => Moment(moment, piece, lies))],
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

    private static BakedMoment Moment(SectionMoment moment, BakingPiece piece, bool lies) => new(
        Duration.FromMinutes(moment.Seconds / 60),
        Temperature.FromCelsius(moment.Core),
        Temperature.FromCelsius(moment.Top),
        Temperature.FromCelsius(moment.Side),
        Temperature.FromCelsius(moment.Bottom),
        Percent.FromFraction(moment.Loss))
    {
        Oven = Temperature.FromCelsius(lies ? piece.Side.HeatAt(moment.Seconds, moment.Side).Meets : piece.Top.HeatAt(moment.Seconds, moment.Top).Meets),
    };
}
