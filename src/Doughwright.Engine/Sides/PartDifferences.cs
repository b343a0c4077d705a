using Doughwright.Engine.Formulas;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>What differs in the parts of two recipes and their lines.</summary>
internal static class PartDifferences
{
    public static IEnumerable<RecipeDifference> Between(Formula first, Formula second)
    {
        var (one, other) = (first.Recipe, second.Recipe);
        IReadOnlyList<string> before = [.. one.Components.Select(part => part.Id)];
        IReadOnlyList<string> after = [.. other.Components.Select(part => part.Id)];
        foreach (var id in RecipeDifferences.Woven(before, after))
        {
            var (part, changed) = (one.FindComponent(id), other.FindComponent(id));
            if (part is null || changed is null)
            {
                yield return new(Aspect.Part, part?.Name, changed?.Name) { Part = id };
                continue;
            }

            foreach (var difference in RecipeDifferences.Of(PartTraits.OfPart, part, changed).Concat(OfLines(first, second, part, changed)))
            {
                yield return difference with { Part = id };
            }
        }

        if (RecipeDifferences.OrderOf(Aspect.PartOrder, before, after) is { } order)
        {
            yield return order;
        }
    }

    private static IEnumerable<RecipeDifference> OfLines(Formula first, Formula second, Component part, Component changed)
    {
        IReadOnlyList<string> before = [.. part.Lines.Select(line => line.Id)];
        IReadOnlyList<string> after = [.. changed.Lines.Select(line => line.Id)];
        foreach (var id in RecipeDifferences.Woven(before, after))
        {
            foreach (var difference in OfLine(first, Find(first, part.Id, id), second, Find(second, part.Id, id)))
            {
                yield return difference with { Line = id };
            }
        }

        if (RecipeDifferences.OrderOf(Aspect.LineOrder, before, after) is { } order)
        {
            yield return order;
        }
    }

    private static IEnumerable<RecipeDifference> OfLine(Formula first, LineFormula? one, Formula second, LineFormula? other)
    {
        if (one is null || other is null)
        {
            return [new(Aspect.Line, one is null ? null : LineAmount.Of(one), other is null ? null : LineAmount.Of(other))];
        }

        var traits = RecipeDifferences.Of(PartTraits.OfLine, one.Source, other.Source);
        return Amounts.Of(first, one, second, other) is { } amount ? traits.Prepend(amount) : traits;
    }

    private static LineFormula? Find(Formula formula, string part, string line) => formula.FindComponent(part)?.Lines.FirstOrDefault(known => known.Id == line);
}
