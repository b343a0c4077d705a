using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>Takes one thing over from one recipe into another.</summary>
internal static class Taking
{
    public static Recipe? Over(Recipe from, Recipe into, RecipeDifference difference) => difference switch
    {
        { Aspect: Aspect.Scale } => Scaled(from, into),
        { Aspect: Aspect.Part } => TakingParts.Part(from, into, difference.Part!),
        { Aspect: Aspect.PartOrder } => into with { Components = Ordered(from.Components, into.Components, part => part.Id) },
        { Aspect: Aspect.Line } => TakingParts.Line(from, into, difference.Part!, difference.Line!),
        { Aspect: Aspect.Step } => TakingSteps.Step(from, into, difference.Step!),
        { Aspect: Aspect.StepOrder } => into with { Steps = Ordered(from.Steps, into.Steps, step => step.Id) },
        { Step: { } step, Item: { } photo } => TakingSteps.Photo(from, into, step, photo),
        { Step: { } step } => TakingSteps.Within(from, into, step, difference.Aspect),
        { Part: { } part, Line: { } line } => TakingParts.Within(from, into, part, line, difference.Aspect),
        { Part: { } part } => TakingParts.Within(from, into, part, difference.Aspect),
        { Item: { } item } => Items.All.FirstOrDefault(items => items.Aspect == difference.Aspect)?.Take(from, into, item),
        _ => WholeTraits.All.FirstOrDefault(trait => trait.Aspect == difference.Aspect)?.Take(from, into),
    };

    /// <summary>What both have in the order of the first; what only the second has keeps its place.</summary>
    public static IReadOnlyList<T> Ordered<T>(IReadOnlyList<T> from, IReadOnlyList<T> into, Func<T, string> id)
    {
        var places = from.Select(id).Where(name => into.Any(item => id(item) == name)).ToList();
        var sorted = new Queue<T>(into.Where(item => places.Contains(id(item))).OrderBy(item => places.IndexOf(id(item))));
        return [.. into.Select(item => places.Contains(id(item)) ? sorted.Dequeue() : item)];
    }

    /// <summary>A list with an item after the one that it follows in another list.</summary>
    public static IReadOnlyList<T> Inserted<T>(IReadOnlyList<T> from, IReadOnlyList<T> into, T item, Func<T, string> id)
    {
        var before = from.TakeWhile(other => id(other) != id(item)).Select(id).ToList();
        var at = into.Select((other, index) => (Name: id(other), Index: index)).Where(other => before.Contains(other.Name)).Select(other => other.Index + 1).DefaultIfEmpty(0).Max();
        return [.. into.Take(at), item, .. into.Skip(at)];
    }

    private static Recipe Scaled(Recipe from, Recipe into) => into with
    {
        Components =
        [
            .. into.Components.Select(part => part with
            {
                Lines =
                [
                    .. part.Lines.Select(line => from.FindComponent(part.Id)?.Lines.FirstOrDefault(other => other.Id == line.Id) is { } was
                        ? PartTraits.TakeAmount(was, line)
                        : line),
                ],
            }),
        ],
    };
}
