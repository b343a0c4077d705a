using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>How large a dough may be: the parts of kind dough with everything that goes into them.</summary>
internal static class DoughLimits
{
    public static void Check(IReadOnlyList<Component> components, string place, FindingLog log)
    {
        var masses = Masses(components);
        var used = components.SelectMany(component => component.Lines).Select(line => line.Uses).ToHashSet();
        var doughs = components.Where(component => component.Kind == ComponentKind.Dough && component.Lines.Count > 0);
        foreach (var dough in doughs.Where(dough => !used.Contains(dough.Id)))
        {
            var mass = masses[dough.Id];
            if (!Limits.Dough.Holds(mass))
            {
                log.Wrong(
                    Limits.Dough.Kind,
                    $"{place}.{dough.Id}",
                    dough.Position,
                    ("value", mass),
                    ("low", Limits.Dough.Low),
                    ("high", Limits.Dough.High),
                    ("typed", dough.Name));
            }
            else if (mass >= Limits.LargeDough)
            {
                log.Hint(FormFaults.LargeDough, $"{place}.{dough.Id}", dough.Position, ("value", mass));
            }
        }
    }

    /// <summary>The mass of every part. Parts inside parts are settled from the innermost outwards; circles have been cut before.</summary>
    private static Dictionary<string, Mass> Masses(IReadOnlyList<Component> components)
    {
        var masses = new Dictionary<string, Mass>();
        var byId = components.ToDictionary(component => component.Id);
        var open = new Stack<Component>(components);
        while (open.TryPeek(out var part))
        {
            var inner = part.Lines
                .Where(line => line.Mass is null && line.Uses is not null && byId.ContainsKey(line.Uses) && !masses.ContainsKey(line.Uses))
                .Select(line => byId[line.Uses!])
                .ToArray();
            if (inner.Length == 0)
            {
                var lines = part.Lines.Select(line => line.Mass ?? masses.GetValueOrDefault(line.Uses ?? ""));
                masses[part.Id] = lines.Aggregate(Mass.Zero, (sum, line) => sum + line);
                open.Pop();
            }

            foreach (var first in inner)
            {
                open.Push(first);
            }
        }

        return masses;
    }
}
