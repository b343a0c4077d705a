using Doughwright.Engine.Ingredients;
namespace Doughwright.Engine.TextForm;

/// <summary>
/// Reads the orders of adding. A part may be mixed more than once, each mix with its own order; what none of them names is told once.
/// </summary>
internal sealed class OrderReader(PartsSection parts)
{
    private readonly Dictionary<string, (HashSet<string> Told, Phrase First)> ofPart = [];

    public IReadOnlyList<string> Read(IReadOnlyList<Phrase> names, string part)
    {
        var order = new List<string>();
        if (names.Count == 0)
        {
            return order;
        }

        ofPart.TryAdd(part, ([], names[0]));
        var told = new HashSet<string>();
        var there = parts.LinesOf(part);
        var readable = ReadableLinesOf(part);
        foreach (var name in names)
        {
            var id = Slug.Of(name.Text);
            if (!there.Contains(id))
            {
                var unknown = Phrase.UnknownWord(name.Text, [.. there]);
                name.Log.Wrong(FormFaults.OrderUnknownLine, name.Place, name.Position, [("part", part), .. unknown]);
            }
            else if (!told.Add(id))
            {
                name.Log.Wrong(FormFaults.OrderTwice, name.Place, name.Position, ("line", name.Text));
            }
            else if (readable.Contains(id))
            {
                order.Add(id);
            }
        }

        ofPart[part].Told.UnionWith(told);
        return order;
    }

    /// <summary>The order of a variant. It takes the place of the step's, so it names every line that the step's does.</summary>
    /// <param name="usual">The order of the step; empty when it has none.</param>
    public IReadOnlyList<string> ReadAgain(IReadOnlyList<Phrase> names, string part, IReadOnlyList<string> usual)
    {
        var (before, others) = (ofPart.GetValueOrDefault(part), ofPart.ContainsKey(part));
        ofPart.Remove(part);
        var order = Read(names, part);
        var told = ofPart.GetValueOrDefault(part).Told ?? [];
        IEnumerable<string> wanted = usual.Count > 0 ? usual : ReadableLinesOf(part);
        var leftOut = wanted.Where(id => !told.Contains(id)).ToArray();
        if (names.Count > 0 && leftOut.Length > 0)
        {
            names[0].Log.Warn(FormFaults.OrderLeavesOut, names[0].Place, names[0].Position, ("lines", string.Join(", ", leftOut)), ("part", part));
        }

        // What a variant names is not said of the step.
        ofPart.Remove(part);
        if (others)
        {
            ofPart.Add(part, before);
        }

        return order;
    }

    /// <summary>When all steps are read: lines of a part with an order that no order names.</summary>
    public void TellLeftOut()
    {
        foreach (var (part, (told, first)) in ofPart)
        {
            var leftOut = ReadableLinesOf(part).Where(id => !told.Contains(id)).ToArray();
            if (leftOut.Length > 0)
            {
                first.Log.Warn(FormFaults.OrderLeavesOut, first.Place, first.Position, ("lines", string.Join(", ", leftOut)), ("part", part));
            }
        }
    }

    private HashSet<string> ReadableLinesOf(string part) =>
        parts.Components.FirstOrDefault(component => component.Id == part)?.Lines.Select(line => line.Id).ToHashSet() ?? [];
}
