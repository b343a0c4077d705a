using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas;

/// <summary>The parts of a recipe, each summed up after the parts it uses, and how much of each ends up in the dough.</summary>
internal sealed class PartGraph
{
    private readonly Dictionary<string, Part> byId = new(StringComparer.Ordinal);
    private readonly List<Part> inOrder = [];
    private readonly LineReading reading;
    private readonly Report report;

    public PartGraph(Recipe recipe, Larder larder, Report report)
    {
        this.report = report;
        reading = new(larder, report);
        foreach (var component in recipe.Components)
        {
            // An id that stands twice is the reader's finding; the first one counts.
            byId.TryAdd(component.Id, new(component));
        }

        Parts = [.. byId.Values];
        SumUpAll();
        ShareOut();
    }

    /// <summary>In the order of the recipe.</summary>
    public IReadOnlyList<Part> Parts { get; }

    private void SumUpAll()
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        var waiting = Parts.ToList();
        while (waiting.Count > 0)
        {
            var ready = waiting.Where(part => part.Component.Lines.All(line => !Waits(line, done))).ToArray();
            // None ready means a circle: it is opened at the first part left, whose line then counts as unknown.
            foreach (var part in ready.Length > 0 ? ready : [waiting[0]])
            {
                SumUp(part, done);
                waiting.Remove(part);
            }
        }
    }

    private bool Waits(Line line, HashSet<string> done) => line.Uses is { } id && byId.ContainsKey(id) && !done.Contains(id);

    private void SumUp(Part part, HashSet<string> done)
    {
        foreach (var line in part.Component.Lines)
        {
            part.Lines.Add(line.Uses is { } id ? Using(part.Component, line, id, done) : reading.Read(part.Component, line));
        }

        part.SumUp();
        done.Add(part.Component.Id);
        inOrder.Add(part);
    }

    private PartLine Using(Component component, Line line, string id, HashSet<string> done)
    {
        if (done.Contains(id))
        {
            var used = byId[id];
            used.IsUsed = true;
            return new(line, line.Mass is null ? used.Mass : reading.MassOf(component, line), null, null, used.Composition, used, null);
        }

        var kind = byId.ContainsKey(id) ? "component-circle" : "component-missing";
        report.About(component, line, kind, Grade.Error, ("component", component.Name), ("uses", id));
        return new(line, line.Mass is null ? Mass.Zero : reading.MassOf(component, line), null, null, Composition.Unknown, null, null);
    }

    private void ShareOut()
    {
        var doughs = Parts.Where(part => !part.IsUsed && part.Component.Kind == ComponentKind.Dough).ToArray();
        foreach (var root in doughs.Length > 0 ? doughs : [.. Parts.Where(part => !part.IsUsed && part.Component.BelongsToDough)])
        {
            root.ShareInDough = 1;
        }

        // Users stand after what they use, so going backwards every part is complete before it is passed on.
        for (var index = inOrder.Count - 1; index >= 0; index--)
        {
            var part = inOrder[index];
            part.ShareScalded = part.Component.Kind == ComponentKind.Scald ? part.ShareInDough : part.ShareScalded;
            part.SharePrefermented = part.Component.Kind is ComponentKind.Preferment or ComponentKind.Starter ? part.ShareInDough : part.SharePrefermented;
            foreach (var line in part.Lines.Where(part.Holds))
            {
                if (line.Uses is { } used)
                {
                    used.ShareInDough += part.ShareInDough * line.ShareOfUsed;
                    used.ShareScalded += part.ShareScalded * line.ShareOfUsed;
                    used.SharePrefermented += part.SharePrefermented * line.ShareOfUsed;
                }
            }
        }
    }
}
