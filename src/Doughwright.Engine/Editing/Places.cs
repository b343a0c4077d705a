using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Editing;

/// <summary>Parts and lines of a recipe by their ids, and recipes with another part in the place of one.</summary>
internal static class Places
{
    public static string OfLine(string part, string line) => $"parts.{part}.{line}";

    public static string OfPart(string part) => $"parts.{part}";

    public static string OfStep(string step) => $"steps.{step}";

    /// <summary>The change of one line, or the refusal that it is no longer there.</summary>
    public static EditAnswer WithLine(this Recipe recipe, string part, string line, Func<Component, Line, EditAnswer> change) =>
        recipe.FindComponent(part) is { } component && component.Lines.FirstOrDefault(one => one.Id == line) is { } found
            ? change(component, found)
            : EditAnswer.Refuse("edit-line-gone", OfLine(part, line), ("line", line), ("part", part));

    public static EditAnswer WithPart(this Recipe recipe, string part, Func<Component, EditAnswer> change) =>
        recipe.FindComponent(part) is { } component ? change(component) : EditAnswer.Refuse("edit-part-gone", OfPart(part), ("part", part));

    /// <summary>The recipe with a part changed; its percentages follow.</summary>
    public static Recipe Replace(this Recipe recipe, Component was, Component now)
    {
        var larder = recipe.LarderOver(Larder.Shipped);
        return recipe with { Components = [.. recipe.Components.Select(one => ReferenceEquals(one, was) ? TypedShares.Settled(now, larder) : one)] };
    }

    public static Component Replace(this Component part, Line was, Line now) =>
        part with { Lines = [.. part.Lines.Select(one => ReferenceEquals(one, was) ? now : one)] };

    /// <summary>The recipe with the orders of a part's mixes changed; variants of steps have orders of their own.</summary>
    public static Recipe Reordered(this Recipe recipe, string part, Func<IReadOnlyList<string>, IEnumerable<string>> order) => recipe with
    {
        Steps = [.. recipe.Steps.Select(step => step.Component != part ? step : Reordered(step, order) with
        {
            Variants = [.. step.Variants.Select(variant => variant with { Step = Reordered(variant.Step, order) })],
        })],
    };

    private static Step Reordered(Step step, Func<IReadOnlyList<string>, IEnumerable<string>> order) =>
        step.Order.Count == 0 ? step : step with { Order = [.. order(step.Order)] };

    /// <summary>One of a list moved by one place; null when it is at the end already.</summary>
    public static IReadOnlyList<T>? Moved<T>(IReadOnlyList<T> list, int at, int by)
    {
        if (at + by < 0 || at + by >= list.Count)
        {
            return null;
        }

        var moved = list.ToList();
        moved.RemoveAt(at);
        moved.Insert(at + by, list[at]);
        return moved;
    }
}
