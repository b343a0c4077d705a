using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>
/// Lines to a tree. Goes on after every fault, at the nearest level that makes sense, so that one bad line never hides the next. What lies
/// deeper under a line that could not be placed is passed over with it. What is sound is YAML too. Source: yaml-1.2.
/// </summary>
internal sealed class TreeReader
{
    private readonly LineCursor cursor;
    private readonly FindingLog log;

    private TreeReader(LineCursor cursor, FindingLog log) => (this.cursor, this.log) = (cursor, log);

    /// <summary>The tree of a text; null when the text is too large or says nothing.</summary>
    public static (TextDocument? Document, FindingLog Log) Read(string text)
    {
        var (lines, log) = SourceText.Of(text);
        if (lines.Count == 0)
        {
            return (null, log);
        }

        var cursor = new LineCursor(lines);
        if (!cursor.ToContent())
        {
            log.Fault(TextFaults.EmptyText, "", new(1, 1));
            return (null, log);
        }

        var root = new TreeReader(cursor, log).ReadMapping(0, -1, "", 1);
        return (new(root, cursor.TakeComments(true)), log);
    }

    /// <param name="indent">Where its keys stand.</param>
    /// <param name="outer">Where the key it belongs to stands; lines in between are meant for this level.</param>
    private TextMapping ReadMapping(int indent, int outer, string place, int depth)
    {
        var entries = new List<TextEntry>();
        var position = cursor.Here;
        while (cursor.ToContent() && cursor.Line.Indent > outer)
        {
            var line = cursor.Line;
            if (KeyReader.Read(line, place, line.Indent > indent, log) is not { } key)
            {
                cursor.PassWithDeeper(line.Indent);
                cursor.PassWordsBelow(indent);
                continue;
            }

            if (line.Indent != indent)
            {
                IndentationFault(place, indent);
            }

            entries.Add(ReadEntry(key, place, depth));
        }

        return new(entries, position);
    }

    private TextEntry ReadEntry(KeyReader.Key key, string place, int depth)
    {
        var above = cursor.TakeComments();
        var line = cursor.Line;
        var under = place.Length == 0 ? Slug.Of(key.Text) : $"{place}.{Slug.Of(key.Text)}";
        var rest = ScalarReader.Read(line, key.ValueStart, under, log);
        cursor.Pass();
        return new(key.Text, key.Position, ReadValue(), above, rest.Remark);

        TextNode ReadValue()
        {
            if (rest.Block)
            {
                var mark = new Position(line.Number, ScalarReader.SkipSpaces(line.Text, key.ValueStart) + 1);
                var block = new BlockReader(cursor.Lines, log).Read(cursor.Index, line.Indent, mark, under);
                cursor.Jump(block.Next);
                return block.Scalar with { Faulty = block.Scalar.Faulty || rest.Faulty };
            }

            if (rest.Scalar is { } scalar)
            {
                if (scalar.Faulty)
                {
                    cursor.PassDeeper(line.Indent);
                }

                return scalar;
            }

            return ReadUnder(key, line.Indent, under, depth + 1);
        }
    }

    /// <summary>The mapping or list under a key, whichever its first line is.</summary>
    private TextNode ReadUnder(KeyReader.Key key, int indent, string place, int depth)
    {
        var more = cursor.ToContent();
        var isItem = more && KeyReader.IsItem(cursor.Line.Content);
        if (!more || cursor.Line.Indent < indent || (cursor.Line.Indent == indent && !isItem))
        {
            log.Fault(TextFaults.ValueMissing, place, key.Position, ("key", key.Text));
            return new TextScalar("", ScalarStyle.Plain, key.Position, true);
        }

        if (depth > TextCaps.Depth)
        {
            var position = cursor.Here;
            log.Fault(TextFaults.TooDeep, place, position, ("most", TextCaps.Depth));
            cursor.PassDeeper(indent);
            return new TextScalar("", ScalarStyle.Plain, position, true);
        }

        // Items as far out as their key are YAML too, and meant; only the indentation is told.
        var found = cursor.Line.Indent;
        if (found != indent + 2)
        {
            IndentationFault(place, indent + 2);
        }

        return isItem ? ReadList(found, indent, place) : ReadMapping(found, indent, place, depth);
    }

    private TextList ReadList(int indent, int outer, string place)
    {
        var items = new List<TextItem>();
        var position = cursor.Here;
        bool Belongs() => cursor.Line.Indent > outer
            || (indent == outer && cursor.Line.Indent == indent && KeyReader.IsItem(cursor.Line.Content));
        while (cursor.ToContent() && Belongs())
        {
            var line = cursor.Line;
            if (!KeyReader.IsItem(line.Content))
            {
                var kind = line.Indent > indent ? TextFaults.ContinuedLine : TextFaults.KeyInList;
                log.Fault(kind, place, cursor.Here, ("words", line.Content.TrimEnd()));
                cursor.PassWithDeeper(line.Indent);
                continue;
            }

            if (line.Indent != indent)
            {
                IndentationFault(place, indent);
            }

            if (ReadItem(line, place) is { } item)
            {
                items.Add(item);
            }
        }

        return new(items, position);
    }

    private TextItem? ReadItem(SourceLine line, string place)
    {
        var above = cursor.TakeComments();
        var start = ScalarReader.SkipSpaces(line.Text, line.Start + 1);
        if (start < line.Text.Length && KeyReader.IsItem(line.Text[start..]))
        {
            log.Fault(TextFaults.ListInList, place, new(line.Number, start + 1));
            cursor.PassWithDeeper(line.Indent);
            return null;
        }

        var rest = ScalarReader.Read(line, start, place, log);
        if (rest.Scalar is null)
        {
            var kind = rest.Block ? TextFaults.BlockMark : TextFaults.ValueMissing;
            log.Fault(kind, place, new(line.Number, line.Start + 1), ("mark", "|"), ("key", "-"));
            cursor.PassWithDeeper(line.Indent);
            return null;
        }

        cursor.Pass();
        return new(rest.Scalar, above, rest.Remark);
    }

    /// <summary>A line that carries a fault already stands where it can: a tab in front of it says nothing about its level.</summary>
    private void IndentationFault(string place, int expected)
    {
        if (!cursor.Line.Faulty)
        {
            log.Fault(TextFaults.Indentation, place, cursor.Here, ("found", cursor.Line.Indent), ("expected", expected));
        }
    }
}
