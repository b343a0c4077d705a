using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>Takes steps and what is said of them over from one recipe into another.</summary>
internal static class TakingSteps
{
    public static Recipe? Step(Recipe from, Recipe into, string id) =>
        from.FindStep(id) is not { } step ? into with { Steps = [.. into.Steps.Where(known => known.Id != id)] }
        : into.FindComponent(step.Component) is null ? null
        : into with { Steps = Taking.Inserted(from.Steps, into.Steps, step, known => known.Id) };

    public static Recipe Photo(Recipe from, Recipe into, string id, string name)
    {
        var was = from.FindStep(id)!;
        return into with { Steps = [.. into.Steps.Select(step => step.Id == id ? Items.TakePhoto(was, step, into, name) : step)] };
    }

    public static Recipe? Within(Recipe from, Recipe into, string id, Aspect aspect)
    {
        var was = from.FindStep(id)!;
        return StepTraits.All.FirstOrDefault(trait => trait.Aspect == aspect) is { } trait && (aspect != Aspect.StepPart || into.FindComponent(was.Component) is not null)
            ? into with { Steps = [.. into.Steps.Select(step => step.Id == id ? StepTraits.Take(trait, was, step) : step)] }
            : null;
    }
}
