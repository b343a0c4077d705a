namespace Doughwright.Engine.TextForm;

/// <summary>A text as a tree with its comments. Kept beside what it means, so that saving keeps the comments where they stood.</summary>
public sealed class TextDocument
{
    internal TextDocument(TextMapping root, IReadOnlyList<string> closing)
    {
        Root = root;
        Closing = closing;
    }

    internal TextMapping Root { get; }

    /// <summary>Comment lines after the last entry.</summary>
    internal IReadOnlyList<string> Closing { get; }

    /// <summary>The same tree, with the same comments, evenly written.</summary>
    public string Normalised() => TreeWriter.Write(this);
}
