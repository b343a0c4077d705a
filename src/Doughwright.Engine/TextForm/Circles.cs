using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>
/// Finds parts that go into themselves by way of others, and takes out the line that closes each circle, so that nothing runs round in it.
/// </summary>
internal static class Circles
{
    public static IReadOnlyList<Component> Cut(IReadOnlyList<Component> components, string place, FindingLog log)
    {
        var byId = components.ToDictionary(component => component.Id);
        var closing = new HashSet<Line>(ReferenceEqualityComparer.Instance);
        var done = new HashSet<string>();

        // Doughs first: then the line that is told, and taken out, is the one by which a dough goes into something made for it.
        foreach (var component in components.OrderByDescending(component => component.Kind == ComponentKind.Dough))
        {
            Walk(component);
        }

        return closing.Count == 0
            ? components
            : [.. components.Select(component => component with { Lines = [.. component.Lines.Where(line => !closing.Contains(line))] })];

        // Depth first without recursion: a text may hold some ten thousand parts, one inside the other.
        void Walk(Component start)
        {
            var path = new List<(Component Part, int Next)> { (start, 0) };
            var onPath = new HashSet<string> { start.Id };
            while (path.Count > 0)
            {
                var (part, next) = path[^1];
                if (done.Contains(part.Id) || next == part.Lines.Count)
                {
                    done.Add(part.Id);
                    onPath.Remove(part.Id);
                    path.RemoveAt(path.Count - 1);
                    continue;
                }

                path[^1] = (part, next + 1);
                var line = part.Lines[next];
                if (line.Uses is not { } used || !byId.TryGetValue(used, out var inner))
                {
                    continue;
                }

                if (onPath.Add(used))
                {
                    path.Add((inner, 0));
                    continue;
                }

                closing.Add(line);
                var names = path.SkipWhile(step => step.Part.Id != used).Select(step => step.Part.Id).Append(used);
                log.Wrong(FormFaults.Circle, $"{place}.{part.Id}.{line.Id}", line.Position, ("circle", string.Join(", ", names)));
            }
        }
    }
}
