namespace Doughwright.Engine.Recipes;

/// <summary>The word for what is made, for one of it and for several: loaf and loaves, bun and buns. English, as the words of a text are.</summary>
internal static class OneOrMany
{
    /// <summary>Where what is counted ends: "loaves in tins", "ring with plums".</summary>
    private static readonly string[] Ends = [" in ", " of ", " with ", " for ", " on ", ", "];

    private static readonly (string One, string Many)[] Odd = [("loaf", "loaves"), ("half", "halves"), ("stollen", "stollen"), ("brioche", "brioches")];

    /// <param name="was">The number the word was written for.</param>
    /// <param name="now">The number it is to fit.</param>
    public static string Fitted(string what, int was, int now)
    {
        if ((was == 1) == (now == 1) || what.Length == 0)
        {
            return what;
        }

        var end = Ends.Select(word => what.IndexOf(word, StringComparison.Ordinal)).Where(at => at > 0).DefaultIfEmpty(what.Length).Min();
        var start = what.LastIndexOf(' ', end - 1) + 1;
        return what[..start] + (now == 1 ? One(what[start..end]) : Many(what[start..end])) + what[end..];
    }

    private static string Many(string word) => Odd.FirstOrDefault(odd => Ending(word, odd.One)) is { Many: { } many, One: var one } ? word[..^one.Length] + many
        : word.Length > 1 && word[^1] == 'y' && !IsVowel(word[^2]) ? word[..^1] + "ies"
        : Hisses(word) ? word + "es"
        : word + "s";

    private static string One(string word) => Odd.FirstOrDefault(odd => Ending(word, odd.Many)) is { One: { } one, Many: var many } ? word[..^many.Length] + one
        : word.EndsWith("ies", StringComparison.Ordinal) && word.Length > 4 ? word[..^3] + "y"
        : word.EndsWith("es", StringComparison.Ordinal) && Hisses(word[..^2]) && !Hisses(word[..^1]) ? word[..^2]
        : word.EndsWith('s') && !word.EndsWith("ss", StringComparison.Ordinal) ? word[..^1]
        : word;

    private static bool Ending(string word, string end) => word.EndsWith(end, StringComparison.OrdinalIgnoreCase);

    private static bool Hisses(string word) => word.EndsWith('s') || word.EndsWith('x') || word.EndsWith('z') || word.EndsWith("ch", StringComparison.Ordinal) || word.EndsWith("sh", StringComparison.Ordinal);

    private static bool IsVowel(char letter) => "aeiou".Contains(letter, StringComparison.Ordinal);
}
