namespace Doughwright.Engine.Ingredients;

/// <summary>Names of the larder, for looking up by what a person wrote.</summary>
internal sealed class NameIndex
{
    // Words that say how something is prepared. They never tell one row from another unless a row says so under "when".
    private static readonly string[] Preparing =
    [
        "soft", "softened", "melted", "cold", "warm", "room", "temperature", "peeled", "mashed", "diced", "chopped", "grated", "sifted",
        "beaten", "cubed", "large", "medium", "small", "organic", "free", "range", "fresh", "finely", "freshly",
    ];

    private readonly Dictionary<string, List<LarderName>> byName = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<LarderName>> byWord = new(StringComparer.Ordinal);
    private readonly HashSet<string> conditionWords;

    public NameIndex(IReadOnlyList<LarderName> names)
    {
        conditionWords = [.. Preparing, .. names.SelectMany(name => name.When).SelectMany(condition => condition.Split(' '))];
        foreach (var name in names)
        {
            if (!byName.TryGetValue(name.Normal, out var same))
            {
                byName.Add(name.Normal, same = []);
            }

            same.Add(name);
            foreach (var word in name.Words.Distinct())
            {
                byWord.TryAdd(word, []);
                byWord[word].Add(name);
            }
        }
    }

    /// <summary>The names that are listed, chosen by the conditions and the region; empty when the name is not listed.</summary>
    /// <remarks>"boiled potatoes" is looked up as it stands, then as "potato" with the condition "boiled".</remarks>
    public IReadOnlyList<LarderName> Listed(string[] words, IReadOnlyCollection<string> conditions, Region? region, out bool chosen)
    {
        var phrase = string.Join(' ', words);
        var said = conditions.Select(Phrase.Normal);
        if (!byName.TryGetValue(phrase, out var entries))
        {
            said = said.Append(phrase);
            byName.TryGetValue(string.Join(' ', words.Where(word => !conditionWords.Contains(word))), out entries);
        }

        chosen = false;
        var excluded = Exclusion.In(words, conditions);
        return entries?.Where(entry => entry.Holds(region) && Exclusion.IsIn(entry, excluded)).ToArray() is { Length: > 0 } here ? Choose(here, [.. said], out chosen) : [];
    }

    /// <summary>The rows that have a name with every word in it, and with everything that the words exclude.</summary>
    public IReadOnlyList<Ingredient> WithAllWords(string[] words, IReadOnlyList<string> excluded, Region? region) =>
    [
        .. With(words[0])
            .Where(entry => entry.Holds(region) && Exclusion.IsIn(entry, excluded) && words.All(word => entry.Words.Contains(word)))
            .Select(entry => entry.Ingredient)
            .Distinct(),
    ];

    private List<LarderName> With(string word) => byWord.GetValueOrDefault(word) ?? [];

    private static LarderName[] Choose(LarderName[] entries, string[] said, out bool chosen)
    {
        // The condition with the most words wins: "boiled in the skin" says more than "boiled".
        var fits = entries.Select(entry => entry.LongestFit(said)).ToArray();
        var longest = fits.Max();
        LarderName[] picked = longest > 0
            ? [.. entries.Where((_, index) => fits[index] == longest).DistinctBy(entry => entry.Ingredient)]
            : [.. entries.Where(entry => entry.StandsAlone).DistinctBy(entry => entry.Ingredient)];
        chosen = picked.Length == 1;
        return picked.Length > 0 ? picked : [.. entries.DistinctBy(entry => entry.Ingredient)];
    }
}
