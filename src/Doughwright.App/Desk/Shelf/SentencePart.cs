namespace Doughwright.App.Desk.Shelf;

/// <summary>A piece of a sentence whose values are controls.</summary>
/// <param name="Slot">Name of the control; null for words.</param>
internal readonly record struct SentencePart(string Words, string? Slot)
{
    /// <summary>Cuts "Ready on {day} at {time}" at its names, so that a language may order them as it likes.</summary>
    public static IReadOnlyList<SentencePart> Cut(string template)
    {
        var parts = new List<SentencePart>();
        foreach (var piece in template.Split('{'))
        {
            var end = piece.IndexOf('}');
            if (end >= 0)
            {
                parts.Add(new("", piece[..end]));
            }

            if (piece.Length > end + 1)
            {
                parts.Add(new(piece[(end + 1)..], null));
            }
        }

        return parts;
    }
}
