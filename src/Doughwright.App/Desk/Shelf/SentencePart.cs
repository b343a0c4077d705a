namespace Doughwright.App.Desk.Shelf;

/// <summary>A piece of a sentence whose values are controls.</summary>
/// <param name="Words">What is said; of a control, the sign that stands right behind it and must not begin a line.</param>
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
            var words = piece[(end + 1)..];
            if (end >= 0)
            {
                var sign = words.TakeWhile(letter => char.IsPunctuation(letter)).Count();
                parts.Add(new(words[..sign], piece[..end]));
                words = words[sign..];
            }

            if (words.Length > 0)
            {
                parts.Add(new(words, null));
            }
        }

        return parts;
    }
}
