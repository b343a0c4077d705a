namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>The figures of a picture as finished words, for a table beside it. Nothing in it is calculated with.</summary>
/// <param name="Caption">What it is, for those who hear the page.</param>
/// <param name="Heads">The first is that of the names.</param>
public sealed record FigureTable(string Caption, IReadOnlyList<FigureHead> Heads, IReadOnlyList<FigureRow> Rows, IReadOnlyList<FigureRow> Foot)
{
    /// <summary>Stands where there is nothing: never 0, never blank.</summary>
    public const string Nothing = "–";
}

/// <param name="Unit">Stands under the head; empty for none.</param>
public sealed record FigureHead(string Text, string Unit = "");

/// <summary>One row.</summary>
/// <param name="Cells">One for each head after the first; empty where the column does not apply.</param>
public sealed record FigureRow(string Name, IReadOnlyList<string> Cells, RowTone Tone = RowTone.Plain);

/// <summary>How a row stands out.</summary>
public enum RowTone
{
    Plain,

    /// <summary>A total over an ink line.</summary>
    Sum,

    /// <summary>What a person may set, in violet.</summary>
    Free,
}
