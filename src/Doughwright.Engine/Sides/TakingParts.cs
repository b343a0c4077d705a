using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>Takes parts, lines and what is said of them over from one recipe into another.</summary>
internal static class TakingParts
{
    public static Recipe? Part(Recipe from, Recipe into, string id)
    {
        if (from.FindComponent(id) is { } part)
        {
            var isComplete = part.Lines.All(line => line.Uses is not { } used || into.FindComponent(used) is not null);
            return isComplete ? into with { Components = Taking.Inserted(from.Components, into.Components, part, known => known.Id) } : null;
        }

        var isUsed = into.Steps.Any(step => step.Component == id) || into.Components.Any(other => other.Lines.Any(line => line.Uses == id));
        return isUsed || into.Components.Count == 1 ? null : into with { Components = [.. into.Components.Where(part => part.Id != id)] };
    }

    public static Recipe? Line(Recipe from, Recipe into, string part, string id)
    {
        var line = from.FindComponent(part)?.Lines.FirstOrDefault(known => known.Id == id);
        if (line?.Uses is { } used && into.FindComponent(used) is null)
        {
            return null;
        }

        var lines = into.FindComponent(part)!.Lines;
        lines = line is null ? [.. lines.Where(known => known.Id != id)] : Taking.Inserted(from.FindComponent(part)!.Lines, lines, line, known => known.Id);
        // A part without a line is none.
        return lines.Count == 0 ? null : WithOrders(from, With(into, part, known => known with { Lines = lines }), part, id);
    }

    public static Recipe? Within(Recipe from, Recipe into, string part, Aspect aspect)
    {
        var was = from.FindComponent(part)!;
        return aspect == Aspect.LineOrder
            ? With(into, part, known => known with { Lines = Taking.Ordered(was.Lines, known.Lines, line => line.Id) })
            : PartTraits.OfPart.FirstOrDefault(trait => trait.Aspect == aspect) is { } trait ? With(into, part, known => trait.Take(was, known)) : null;
    }

    public static Recipe? Within(Recipe from, Recipe into, string part, string line, Aspect aspect)
    {
        var was = from.FindComponent(part)!.Lines.First(known => known.Id == line);
        Func<Line, Line, Line>? take = aspect is Aspect.Amount or Aspect.Typed
            ? PartTraits.TakeAmount
            : PartTraits.OfLine.FirstOrDefault(trait => trait.Aspect == aspect)?.Take;
        return take is null ? null : With(into, part, known => known with { Lines = [.. known.Lines.Select(one => one.Id == line ? take(was, one) : one)] });
    }

    private static Recipe With(Recipe recipe, string part, Func<Component, Component> change) =>
        recipe with { Components = [.. recipe.Components.Select(known => known.Id == part ? change(known) : known)] };

    /// <summary>A line that goes is no longer added in a step, and one that comes back is added where it was.</summary>
    private static Recipe WithOrders(Recipe from, Recipe into, string part, string line)
    {
        Step Changed(Step step)
        {
            if (step.Component != part)
            {
                return step;
            }

            string[] without = [.. step.Order.Where(id => id != line)];
            var was = from.FindStep(step.Id)?.Order ?? [];
            return was.Contains(line) && was.Where(id => id != line).SequenceEqual(without) ? step with { Order = was }
                : without.Length < step.Order.Count ? step with { Order = without }
                : step;
        }

        return into with
        {
            Steps = [.. into.Steps.Select(Changed).Select(step => step with { Variants = [.. step.Variants.Select(variant => variant with { Step = variant.Step with { Order = step.Order } })] })],
        };
    }
}
