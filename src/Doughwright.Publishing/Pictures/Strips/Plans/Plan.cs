using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>What a strip shows, before it has a size: the dough on the bench, the strands beside it, the steps.</summary>
internal sealed class Plan
{
    private Plan(Rehearsal rehearsal, Course course)
    {
        (Rehearsal, Course) = (rehearsal, course);
        Steps = PlannedStep.AllOf(rehearsal);
        var tracks = course.Strands.Where(strand => strand.Stretches.Any(stretch => stretch.Points.Count > 0)).Select(strand => new Track(strand)).ToArray();
        Body = tracks.Where(track => track.Strand.Joins is null)
            .OrderByDescending(track => track.Strand.Kind == ComponentKind.Dough)
            .ThenByDescending(track => track.Heaviest)
            .FirstOrDefault();
        OnBench = Body is null ? [] : [.. Body.Strand.Stretches.Select(stretch => stretch.Step).OfType<string>().Distinct().Select(Find).OfType<PlannedStep>()];
        Mix = OnBench.FirstOrDefault(step => step.Kind == StepKind.Mix);
        Strands = [.. tracks.Where(track => track != Body).Select(track => Lay(track, tracks))];
        Washes = [.. Steps.Where(IsWash).Select(WashOf)];
        Edges = [.. OnBench.Where(step => !Washes.Any(wash => wash.Step.Id == step.Id) && step.Kind is not (StepKind.Glaze or StepKind.Preheat))];
        End = Steps.Select(step => step.EndOrStart).Concat(tracks.Select(track => track.End)).DefaultIfEmpty(0).Max();
        DoughGrams = Weighed();
    }

    public Rehearsal Rehearsal { get; }

    public Course Course { get; }

    /// <summary>Every step that has a place in time, in order of time.</summary>
    public IReadOnlyList<PlannedStep> Steps { get; }

    /// <summary>What lies on the bench and is baked; null when nothing of it can be told.</summary>
    public Track? Body { get; }

    /// <summary>The steps that work on it.</summary>
    public IReadOnlyList<PlannedStep> OnBench { get; }

    /// <summary>Those of them at which an upright stands.</summary>
    public IReadOnlyList<PlannedStep> Edges { get; }

    /// <summary>Its first mix.</summary>
    public PlannedStep? Mix { get; }

    public IReadOnlyList<PlannedStrand> Strands { get; }

    public IReadOnlyList<PlannedWash> Washes { get; }

    /// <summary>The last minute anything is known of.</summary>
    public double End { get; }

    /// <summary>What the dough weighs when it is mixed: gas is counted on this, whatever is laid in later.</summary>
    public double DoughGrams { get; }

    public static Plan Of(Rehearsal rehearsal, Course course) => new(rehearsal, course);

    public PlannedStep? Find(string id) => Steps.FirstOrDefault(step => step.Id == id);

    /// <summary>Names of parts that rise, nobody can tell how far: they are drawn without gas.</summary>
    public IReadOnlyList<string> RiseUntold =>
        [.. Strands.Select(strand => strand.Track).Append(Body).OfType<Track>().Where(track => track.RiseUntold).Select(track => NameOf(track.Strand.Component))];

    /// <summary>What goes straight into a step.</summary>
    public Entry? EntryOf(PlannedStep step) => Course.Entries.FirstOrDefault(entry => entry.Step == step.Id && entry.Mass.Grams > 0);

    public string NameOf(string component) => Rehearsal.Recipe.FindComponent(component)?.Name ?? component;

    private PlannedStrand Lay(Track track, Track[] tracks)
    {
        if (track.Strand is not { Joins: { } joins, Into: { } into } || Find(joins) is not { } step)
        {
            return new(track, Manner.Alone, null, null);
        }

        var other = tracks.FirstOrDefault(candidate => candidate != Body && candidate.Strand.Component == into);
        return new(track, other is null ? MannerOf(track, step) : Manner.Winds, step, other);
    }

    private Manner MannerOf(Track track, PlannedStep joins) =>
        joins.Id == Mix?.Id ? Manner.Winds
        : track.Strand.Kind == ComponentKind.Wash ? Manner.Thread
        : joins.Kind is StepKind.Glaze or StepKind.Finish ? Manner.Poured
        : Manner.LaidIn;

    /// <summary>The dough after its last mix, or as it is first seen; what the formula says where no dough can be drawn.</summary>
    private double Weighed()
    {
        var grams = Body is null ? Rehearsal.Formula.Dough.Grams : Body.Grams(OnBench.LastOrDefault(step => step.Kind == StepKind.Mix)?.EndOrStart ?? Body.Start);
        return grams > 0 ? grams : Strands.Select(strand => strand.Track.Heaviest).Append(1).Max();
    }

    private bool IsWash(PlannedStep step) => step.Kind is StepKind.Glaze or StepKind.Finish
        && step.Step.Component != Body?.Strand.Component
        && Course.FindStrand(step.Step.Component) is null;

    private PlannedWash WashOf(PlannedStep step) => new(
        step, step.Step.Component, NameOf(step.Step.Component), Rehearsal.Formula.FindComponent(step.Step.Component)?.Mass);
}
