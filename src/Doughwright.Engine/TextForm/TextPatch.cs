using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.TextForm;

/// <summary>
/// Changes a text where the recipe in it changed, and nowhere else: every other line stays byte for byte. What changed is the difference of two canonical
/// trees, before and after; it is carried to the lines at which the text says the same.
/// </summary>
internal sealed class TextPatch
{
    private readonly string[] lines;
    private readonly string end;
    private readonly bool coarse;

    private TextPatch(string[] lines, bool coarse)
    {
        this.lines = lines;
        this.coarse = coarse;
        end = lines[0].EndsWith('\r') ? "\r" : "";
    }

    /// <param name="document">The tree of the text.</param>
    /// <param name="before">Canonical tree of the recipe in the text.</param>
    /// <param name="after">Canonical tree of the changed recipe.</param>
    /// <param name="coarse">Whether a block that says something in its own way is written anew when something in it changes.</param>
    public static string Of(string text, TextDocument document, TextMapping before, TextMapping after, bool coarse)
    {
        var mark = text.StartsWith('\ufeff') ? text[..1] : "";
        var patch = new TextPatch(text[mark.Length..].Split('\n'), coarse);
        return mark + string.Join('\n', [.. patch.Mapping(document.Root, 0, before, after, 0), .. patch.lines.Skip(TextSpan.EndOf(document.Root))]);
    }

    private IEnumerable<string> Mapping(TextMapping there, int from, TextMapping before, TextMapping after, int indent)
    {
        var spans = new OrderedDictionary<string, (TextEntry Entry, TextSpan Span)>();
        foreach (var entry in there.Entries)
        {
            var span = TextSpan.Of(entry, from);
            from = span.End;
            // The reader takes the first of two alike; the other keeps its lines.
            if (!spans.TryAdd(Slug.Of(entry.Key), (entry, span)))
            {
                spans.Add(FormattableString.Invariant($"{Slug.Of(entry.Key)}\n{span.Start}"), (entry, span));
            }
        }

        var (old, fresh) = (ByKey(before), ByKey(after));
        return SlotMerge.Of(
            [.. spans.Select(one => new Slot(one.Key, Raw(one.Value.Span.From, one.Value.Span.Start), Raw(one.Value.Span.Start, one.Value.Span.End)))],
            [.. old.Keys],
            [.. fresh.Keys],
            (was, now) => Same(old[was], fresh[now]) ? null : Entry(spans[was].Entry, spans[was].Span, old[was], fresh[now], indent),
            (was, now) => Same(old[was], fresh[now]),
            now => Fresh(fresh[now], indent));
    }

    private static OrderedDictionary<string, TextEntry> ByKey(TextMapping mapping)
    {
        var keys = new OrderedDictionary<string, TextEntry>();
        foreach (var entry in mapping.Entries)
        {
            keys.TryAdd(Slug.Of(entry.Key), entry);
        }

        return keys;
    }

    private IEnumerable<string> Entry(TextEntry there, TextSpan span, TextEntry before, TextEntry after, int indent)
    {
        var head = Slug.Of(before.Key) == Slug.Of(after.Key) ? lines[span.Start] : Renamed(lines[span.Start], after.Key);
        var place = head.Length - lines[span.Start].Length;
        return (there.Value, before.Value, after.Value) switch
        {
            (TextMapping own, TextMapping was, TextMapping now) when !(coarse && SpeaksItsOwnWay(own, was)) =>
                [head, .. Mapping(own, span.Start + 1, was, now, indent + 2)],
            (TextList own, TextList was, TextList now) when own.Items.Count == was.Items.Count => [head, .. List(own, span.Start + 1, was, now, indent + 2)],
            (TextScalar { Style: not ScalarStyle.Block } own, TextScalar, TextScalar { Style: not ScalarStyle.Block } now) =>
                [Said(head, own.Position.Column - 1 + place, there.Remark, now.Text)],
            _ => Fresh(CommentCarrier.Onto(after, there) with { Comments = [] }, indent),
        };
    }

    /// <summary>Something here is said by other keys than saving would take.</summary>
    private static bool SpeaksItsOwnWay(TextMapping own, TextMapping canonical)
    {
        var keys = canonical.Entries.Select(entry => Slug.Of(entry.Key)).ToHashSet();
        return own.Entries.Any(entry => !keys.Contains(Slug.Of(entry.Key)));
    }

    private IEnumerable<string> List(TextList there, int from, TextList before, TextList after, int indent)
    {
        var slots = new List<Slot>();
        var names = Names(before);
        for (var i = 0; i < there.Items.Count; i++)
        {
            var start = there.Items[i].Value.Position.Line - 1;
            slots.Add(new(names[i], Raw(from, start), Raw(start, start + 1)));
            from = start + 1;
        }

        var wanted = Names(after);
        var fresh = wanted.Zip(after.Items).ToDictionary(one => one.First, one => one.Second);
        var old = names.Zip(there.Items).ToDictionary(one => one.First, one => one.Second);
        return SlotMerge.Of(
            slots,
            names,
            wanted,
            (was, now) => was == now ? null : [Said(lines[old[was].Value.Position.Line - 1], old[was].Value.Position.Column - 1, old[was].Remark, fresh[now].Value.Text)],
            (was, now) => was == now,
            now => [Spaces(indent) + "- " + TreeWriter.Words(fresh[now].Value.Text) + end]);
    }

    /// <summary>Items by their words; equal ones are told apart by a count.</summary>
    private static string[] Names(TextList list)
    {
        var seen = new Dictionary<string, int>();
        return [.. list.Items.Select(item => $"{item.Value.Text}\n{seen[item.Value.Text] = seen.GetValueOrDefault(item.Value.Text) + 1}")];
    }

    /// <summary>Another value on the same line; what stands behind it keeps its distance.</summary>
    private static string Said(string line, int at, string? remark, string words)
    {
        var bare = line.TrimEnd();
        var close = remark is null ? bare.Length : bare[..^remark.Length].TrimEnd().Length;
        return line[..at] + TreeWriter.Words(words) + line[close..];
    }

    private static string Renamed(string line, string key)
    {
        var start = line.Length - line.TrimStart(' ').Length;
        return line[..start] + TreeWriter.Key(key) + line[KeyReader.FindColon(line, start)..];
    }

    private IEnumerable<string> Fresh(TextEntry entry, int indent) => TreeWriter.Lines(entry, indent).Select(line => line + end);

    private string[] Raw(int from, int to) => lines[from..to];

    private static string Spaces(int count) => new(' ', count);

    private static bool Same(TextEntry one, TextEntry other) => one.Key == other.Key && Same(one.Value, other.Value);

    private static bool Same(TextNode one, TextNode other) => (one, other) switch
    {
        (TextScalar a, TextScalar b) => a.Text == b.Text,
        (TextList a, TextList b) => a.Items.Select(item => item.Value.Text).SequenceEqual(b.Items.Select(item => item.Value.Text)),
        (TextMapping a, TextMapping b) => a.Entries.Count == b.Entries.Count && a.Entries.Zip(b.Entries).All(pair => Same(pair.First, pair.Second)),
        _ => false,
    };
}
