using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>A plain course made from the figures of a rehearsal alone: straight lines between them.</summary>
internal sealed class CourseByHand
{
    private readonly Rehearsal rehearsal;

    private CourseByHand(Rehearsal rehearsal) => this.rehearsal = rehearsal;

    public static Course Of(Rehearsal rehearsal)
    {
        var hand = new CourseByHand(rehearsal);
        var components = rehearsal.Recipe.Components;
        return new(
            [.. components.Select(hand.StrandOf).OfType<Strand>()],
            [.. rehearsal.Steps.Where(step => step.Kind == StepKind.Mix && hand.FirstMix(step.Component)?.Id == step.Id).Select(hand.EntryOf)],
            []);
    }

    private Strand? StrandOf(Component component)
    {
        var steps = rehearsal.Steps.Where(step => step is { Start: not null } && step.Kind != StepKind.Preheat && !step.IsAdded
            && step.Component == component.Id && (step.Kind != StepKind.Glaze || component.BelongsToDough)).OrderBy(step => step.Start!.Value.Minutes).ToArray();
        if (steps.Length == 0)
        {
            return null;
        }

        var user = rehearsal.Recipe.Components.FirstOrDefault(other => other.Lines.Any(line => line.Uses == component.Id));
        var joins = user is null ? null : FirstMix(user.Id);
        var stretches = new List<Stretch>();
        var volume = 1.0;
        Temperature? warmth = steps[0].StartTemperature;
        for (var i = 0; i < steps.Length; i++)
        {
            var start = steps[i].Start!.Value;
            var end = start + (steps[i].Time?.Likely ?? Duration.Zero);
            var before = warmth;
            var from = steps[i].StartTemperature ?? warmth;
            warmth = steps[i].EndTemperature ?? from;
            var risen = steps[i].Kind == StepKind.Shape ? 1.3 : steps[i].Growth is { } growth ? (steps[i].Kind == StepKind.Proof ? volume * growth : growth) : volume;
            var mass = Mass(component);
            if (stretches.Count > 0 && stretches[^1].End < start)
            {
                stretches.Add(new(null, stretches[^1].End, start, [new(stretches[^1].End, mass, before, volume), new(start, mass, before, volume)]));
            }

            stretches.Add(new(steps[i].Id, start, end, [new(start, mass, from, volume), new(end, mass, warmth, risen)]));
            volume = risen;
        }

        if (joins?.Start is { } taken && stretches[^1].End < taken)
        {
            stretches.Add(new(null, stretches[^1].End, taken, [new(stretches[^1].End, Mass(component), warmth, volume), new(taken, Mass(component), warmth, volume)]));
        }

        return new(component.Id, component.Kind, joins?.Id, joins is null ? null : user!.Id, stretches);
    }

    private Entry EntryOf(RehearsedStep mix)
    {
        var lines = rehearsal.Formula.FindComponent(mix.Component)!.Lines.Where(line => line.UsesComponent is null).OrderByDescending(line => line.Mass).ToArray();
        var air = rehearsal.Kitchen.Shelf;
        return new(mix.Id, mix.Component, lines.Aggregate(Engine.Quantities.Mass.Zero, (sum, line) => sum + line.Mass), [.. lines.Select(line => line.Id)], air, air);
    }

    private RehearsedStep? FirstMix(string component) =>
        rehearsal.Steps.FirstOrDefault(step => step.Component == component && step.Kind is StepKind.Mix)
        ?? rehearsal.Steps.FirstOrDefault(step => step.Component == component && !step.IsAdded && step.Kind != StepKind.Preheat);

    private Mass Mass(Component component) => rehearsal.Formula.FindComponent(component.Id)!.Mass;
}
