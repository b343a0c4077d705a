namespace Doughwright.Engine.Recipes.Live;

/// <summary>A run of prose: words, or words in brackets that may name a value.</summary>
/// <param name="Text">As typed, brackets included.</param>
/// <param name="Name">What stands in the brackets; null for plain words.</param>
public sealed record ProsePiece(string Text, string? Name)
{
    /// <summary>No name is longer; a bracket that opens and is not closed within it is a bracket.</summary>
    private const int LongestName = 120;

    /// <summary>Prose cut at its brackets. All pieces together are the prose.</summary>
    public static IReadOnlyList<ProsePiece> Of(string prose)
    {
        var pieces = new List<ProsePiece>();
        var from = 0;
        for (var open = prose.IndexOf('['); open >= 0; open = prose.IndexOf('[', open + 1))
        {
            var end = prose.IndexOfAny(['[', ']', '\n'], open + 1);
            if (end < 0 || prose[end] != ']' || end - open > LongestName || end == open + 1)
            {
                continue;
            }

            if (open > from)
            {
                pieces.Add(new(prose[from..open], null));
            }

            pieces.Add(new(prose[open..(end + 1)], prose[(open + 1)..end].Trim()));
            from = end + 1;
            open = end;
        }

        if (from < prose.Length)
        {
            pieces.Add(new(prose[from..], null));
        }

        return pieces;
    }
}
