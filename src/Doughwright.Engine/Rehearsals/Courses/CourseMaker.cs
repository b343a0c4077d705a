using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>Makes the course of a run.</summary>
internal static class CourseMaker
{
    public static Course Of(RunResult run, IceInBowl? ice)
    {
        var joints = Joint.Of(run);
        var rises = new FollowedRise?[run.Outcomes.Count];
        for (var index = 0; index < rises.Length; index++)
        {
            rises[index] = run.Outcomes[index].Rise?.Follow();
        }

        var made = run.Stage.Recipe.Components.Where(part => StrandMaker.StepsOf(run, part.Id).Any());
        return new(
            [.. made.Select(part => new StrandMaker(run, joints, rises, part).Make())],
            [.. run.Graph.Steps.Where(step => step.Kind == StepKind.Mix).Select(step => EntryOf(run, step, ice)).OfType<Entry>()],
            [.. rises.Select(rise => rise?.Curve()).OfType<RiseCurve>()]);
    }

    /// <summary>What goes into a mix without a strand of its own.</summary>
    private static Entry? EntryOf(RunResult run, Step mix, IceInBowl? ice)
    {
        var bowl = run.BowlOf(mix)!;
        var warmths = bowl.Parts(0);
        var straight = Enumerable.Range(0, bowl.Lines.Count)
            .Where(index => bowl.Lines[index].UsesComponent is not { } used || !run.Graph.WorksOn.Contains(used))
            .OrderByDescending(index => bowl.Lines[index].Mass.Grams)
            .ToList();
        var iced = ice is not null && HeatAnswer.MixOfDough(run.Stage)?.Id == mix.Id ? bowl.IndicesOf([ice.Line]) : [];
        double Coldest(int index) => iced.Contains(index) ? IceInBowl.Melts.Celsius : warmths[index];
        double Warmest(int index) => iced.Contains(index) ? ice!.Tap.Celsius : warmths[index];
        return straight.Count == 0 ? null : new(
            mix.Id,
            mix.Component,
            Mass.FromGrams(straight.Sum(index => bowl.Lines[index].Mass.Grams)),
            [.. straight.Select(index => bowl.Lines[index].Id)],
            Temperature.FromCelsius(straight.Min(Coldest)),
            Temperature.FromCelsius(straight.Max(Warmest)));
    }
}
