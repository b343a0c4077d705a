namespace Doughwright.Engine.Ingredients;

/// <summary>
/// Words that say what a thing does not hold or only stands for: "gluten-free", "vegan", "substitute". What they are said of is another thing
/// than the one that is named, so a name without them is no match. Words in normal form (<see cref="Phrase"/>).
/// </summary>
internal static class Exclusion
{
    private static readonly HashSet<string> Said =
    [
        "vegan", "plant", "alternative", "substitute", "substitution", "replacer", "replacement", "imitation", "mock", "faux", "fake", "analogue", "analog",
        "eggless", "dairyless", "milkless", "butterless", "glutenless", "wheatless", "flourless", "nutless",
    ];

    // Before what is left out: "non-dairy cream", "no egg noodles", "cake without nuts".
    private static readonly HashSet<string> Before = ["non", "no", "without"];

    // "free" that says how a thing was made or behaves, not what is missing.
    private static readonly HashSet<string> AfterFree = ["range", "flowing", "run"];
    private static readonly HashSet<string> Harmless = ["cage", "lump", "stone", "pip", "pit", "seed", "skin", "rind", "pesticide", "additive", "gmo"];

    /// <summary>What the words exclude, each as a row's name must have it: "gluten free", "vegan".</summary>
    public static IReadOnlyList<string> In(string[] words)
    {
        var claims = new List<string>();
        for (var i = 0; i < words.Length; i++)
        {
            var next = i + 1 < words.Length ? words[i + 1] : "";
            if (Said.Contains(words[i]))
            {
                claims.Add(words[i]);
            }
            else if (Before.Contains(words[i]) && next.Length > 0)
            {
                claims.Add($"{words[i]} {next}");
            }
            else if (words[i] == "free" && !AfterFree.Contains(next))
            {
                var what = next is "from" or "of" ? words.ElementAtOrDefault(i + 2) : i > 0 ? words[i - 1] : null;
                if (what is null || !Harmless.Contains(what))
                {
                    claims.Add($"{what} free".Trim());
                }
            }
            else if (words[i] is { Length: > 6 } joined && joined.EndsWith("free", StringComparison.Ordinal) && !Harmless.Contains(joined[..^4]))
            {
                claims.Add($"{joined[..^4]} free");
            }
        }

        return claims;
    }

    /// <summary>What a name and the conditions beside it exclude. "No lumps" beside a name is about the work, so a plain no counts in the name alone.</summary>
    public static IReadOnlyList<string> In(string[] words, IReadOnlyCollection<string> conditions) =>
        [.. In(words), .. conditions.SelectMany(condition => In(Phrase.Words(condition))).Where(claim => !Before.Contains(claim.Split(' ')[0]))];

    /// <summary>Whether a name says all of it itself, or is chosen by a condition that does.</summary>
    public static bool IsIn(LarderName name, IReadOnlyList<string> claims) =>
        claims.All(claim => new[] { name.Words }.Concat(name.When.Select(condition => condition.Split(' '))).Any(words => In(words).Contains(claim)));
}
