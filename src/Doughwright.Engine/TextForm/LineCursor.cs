using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Walks over the lines of a text and gathers the comments on the way.</summary>
internal sealed class LineCursor(IReadOnlyList<SourceLine> lines)
{
    private readonly List<string> comments = [];

    public IReadOnlyList<SourceLine> Lines => lines;

    public int Index { get; private set; }

    public SourceLine Line => lines[Index];

    public Position Here => new(Line.Number, Line.Start + 1);

    /// <summary>Goes to the next line that says something; false at the end.</summary>
    public bool ToContent()
    {
        while (Index < lines.Count && (Line.IsBlank || Line.IsComment))
        {
            if (Line.IsComment)
            {
                comments.Add(Line.Content.TrimEnd());
            }
            else if (Index > 0 && (comments.Count == 0 || comments[^1].Length > 0))
            {
                comments.Add("");
            }

            Index++;
        }

        return Index < lines.Count;
    }

    /// <summary>The comments gathered since the last call; an empty string is a blank line.</summary>
    public IReadOnlyList<string> TakeComments(bool closing = false)
    {
        string[] taken = [.. comments];
        comments.Clear();
        return closing && taken is [.., ""] ? taken[..^1] : taken;
    }

    public void Pass() => Index++;

    public void Jump(int index) => Index = index;

    /// <summary>Passes over this line and what lies deeper under it.</summary>
    public void PassWithDeeper(int indent)
    {
        Index++;
        PassDeeper(indent);
    }

    /// <summary>Passes over deeper lines without a key: more of what was told already.</summary>
    public void PassWordsBelow(int indent)
    {
        while (Index < lines.Count && Line.Indent > indent && !Line.IsBlank
            && KeyReader.FindColon(Line.Text, Line.Start) < 0 && !KeyReader.IsItem(Line.Content))
        {
            Index++;
        }
    }

    /// <summary>Passes over lines deeper than an indentation, and over a closing bracket behind them.</summary>
    public void PassDeeper(int indent)
    {
        var passed = false;
        while (Index < lines.Count && (Line.IsBlank || Line.Indent > indent))
        {
            passed |= !Line.IsBlank;
            Index++;
        }

        if (Index < lines.Count && passed && Line.Indent == indent && Line.Content.TrimEnd() is "]" or "}" or "]," or "},")
        {
            Index++;
        }
    }
}
