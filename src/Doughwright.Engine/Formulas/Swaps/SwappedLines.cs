using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>Lines before and after.</summary>
internal static class SwappedLines
{
    public static IReadOnlyList<SwappedLine> Of(Formula before, Formula after, IReadOnlyList<PartEdit> edits)
    {
        var lines = new List<SwappedLine>();
        foreach (var component in before.Recipe.Components)
        {
            var edit = edits.FirstOrDefault(other => other.Component.Id == component.Id);
            lines.AddRange(component.Lines.Select(line => Of(before, after, component.Id, line, edit)).OfType<SwappedLine>());
            if (edit is { Water.Grams: > 0 })
            {
                lines.Add(new(component.Id, "water", LineChange.Added, null, null, "water", edit.Water));
            }
        }

        return lines;
    }

    private static SwappedLine? Of(Formula before, Formula after, string component, Line line, PartEdit? edit)
    {
        var mass = Mass(before, component, line.Id);
        var change = edit?.Lines.FirstOrDefault(other => other.Line == line.Id);
        if (change is { Swap.By: null } and not { Swap: null })
        {
            return new(component, line.Id, LineChange.Removed, line.Name, mass, null, null);
        }

        if (change is { Swap.By: { } by })
        {
            return by.Name == line.Name && change.Mass == mass
                ? null
                : new(component, Slug.Of(by.Name), LineChange.Replaced, line.Name, mass, by.Name, change.Mass);
        }

        // What gives or takes, what more of stands in, and a part that weighs something else now.
        var now = Mass(after, component, line.Id);
        return now == mass || now is null || (line.Uses is not null && line.Mass is null)
            ? null
            : new(component, line.Id, LineChange.Corrected, line.Name, mass, line.Name, now);
    }

    private static Mass? Mass(Formula formula, string component, string line) =>
        formula.FindComponent(component)?.Lines.FirstOrDefault(other => other.Source.Id == line)?.Mass;
}
