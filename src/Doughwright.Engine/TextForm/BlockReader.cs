using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Reads the lines under a |. They are words as they stand: nothing in them is a key, a comment or a mark.</summary>
internal sealed class BlockReader(IReadOnlyList<SourceLine> lines, FindingLog log)
{
    /// <summary>The words of the block, and the index of the first line after it.</summary>
    public readonly record struct Block(TextScalar Scalar, int Next);

    /// <param name="first">Index of the line under the |.</param>
    /// <param name="indent">Indentation of the key; deeper lines belong to the block.</param>
    public Block Read(int first, int indent, Position mark, string place)
    {
        var end = first;
        while (end < lines.Count && (lines[end].IsBlank || lines[end].Indent > indent))
        {
            end++;
        }

        var last = end;
        while (last > first && lines[last - 1].IsBlank)
        {
            last--;
        }

        if (last == first)
        {
            log.Fault(TextFaults.ValueMissing, place, mark, ("key", "|"));
            return new(new("", ScalarStyle.Block, mark, true), end);
        }

        var words = lines.Skip(first).Take(last - first).ToArray();
        var margin = words.First(line => !line.IsBlank).Indent;
        var faulty = false;
        var begun = false;
        foreach (var line in words)
        {
            // An empty line above the words may not reach further in than they do: YAML would take its spaces for the margin.
            begun |= !line.IsBlank;
            var uneven = begun ? !line.IsBlank && line.Indent < margin && !line.Faulty : line.Start > margin;
            if (!faulty && (uneven || (begun && margin != indent + 2)))
            {
                var position = new Position(line.Number, line.Start + 1);
                log.Fault(TextFaults.Indentation, place, position, ("found", line.Indent), ("expected", indent + 2));
                faulty = true;
            }
        }

        // Blank lines keep what they have beyond the margin, as YAML does.
        var text = string.Join('\n', words.Select(line => line.Text[Math.Min(margin, line.Start)..]));
        return new(new(text + "\n", ScalarStyle.Block, mark), end);
    }
}
