using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

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
            var swapped = (edit?.Lines ?? []).Where(change => change.Swap is not null).Select(change => change.Line).ToHashSet();
            var standing = component.Lines.Select(line => line.Id).Where(id => !swapped.Contains(id)).ToHashSet();
            lines.AddRange(component.Lines.Select(line => Of(before, after, component.Id, line, edit, standing)).OfType<SwappedLine>());
            if (edit is { Water.Grams: > 0 })
            {
                lines.Add(new(component.Id, "water", LineChange.Added, null, null, "water", edit.Water));
            }
        }

        return lines;
    }

    /// <param name="standing">Lines of the part that are there already, and get more of what stands in.</param>
    private static SwappedLine? Of(Formula before, Formula after, string component, Line line, PartEdit? edit, HashSet<string> standing)
    {
        var mass = Mass(before, component, line.Id);
        if (edit?.Lines.FirstOrDefault(other => other.Line == line.Id) is { Swap: { } swap })
        {
            var id = swap.By is { } by ? Slug.Of(by.Name) : "";
            if (id.Length == 0 || !standing.Add(id))
            {
                return new(component, line.Id, LineChange.Removed, line.Name, mass, null, null);
            }

            var stands = Mass(after, component, id);
            return swap.By!.Name == line.Name && stands == mass ? null : new(component, id, LineChange.Replaced, line.Name, mass, swap.By.Name, stands);
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
