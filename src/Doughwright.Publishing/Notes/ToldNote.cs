namespace Doughwright.Publishing.Notes;

/// <summary>A note with the values and pictures of one recipe in one kitchen.</summary>
public sealed record ToldNote(string Title, IReadOnlyList<ToldBlock> Blocks);

/// <summary>What a note shows, one below the other.</summary>
public abstract record ToldBlock
{
    private ToldBlock()
    {
    }

    public sealed record Words(IReadOnlyList<NotePiece> Pieces) : ToldBlock;

    /// <param name="Svg">One picture, or two of which a style shows one: for a wide page and for a narrow one.</param>
    public sealed record Picture(IReadOnlyList<string> Svg, string Caption) : ToldBlock;

    /// <param name="Said">Why there is no picture.</param>
    public sealed record Absent(string Said) : ToldBlock;
}

/// <summary>A run of words of a note.</summary>
public sealed record NotePiece(string Text, NotePieceKind Kind);

public enum NotePieceKind
{
    /// <summary>The author's own words.</summary>
    Plain,

    /// <summary>A value of the recipe.</summary>
    Live,

    /// <summary>Why a value is not there.</summary>
    Absent,
}
