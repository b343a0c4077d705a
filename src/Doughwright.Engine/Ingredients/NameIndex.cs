namespace Doughwright.Engine.Ingredients;

/// <summary>Names of the larder, for looking up by what a person wrote.</summary>
internal sealed class NameIndex
{
    private const int MostNearest = 3;
    private const int LettersPerSharedWord = 4;

    // Words that say how something is prepared. They never tell one row from another unless a row says so under "when".
    private static readonly string[] Preparing =
    [
        "soft", "softened", "melted", "cold", "warm", "room", "temperature", "peeled", "mashed", "diced", "chopped", "grated", "sifted",
        "beaten", "cubed", "large", "medium", "small", "organic", "free", "range", "fresh", "finely", "freshly",
    ];

    private readonly Dictionary<string, List<Entry>> byName = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<Entry>> byWord = new(StringComparer.Ordinal);
    private readonly HashSet<string> conditionWords;

    public NameIndex(IEnumerable<(string Name, Ingredient Ingredient, string[] When)> names)
    {
        conditionWords = [.. Preparing];
        foreach (var (name, ingredient, when) in names)
        {
            var conditions = when.Where(condition => condition != "*").Select(Phrase.Normal).ToArray();
            conditionWords.UnionWith(conditions.SelectMany(condition => condition.Split(' ')));
            var normal = Phrase.Normal(name);
            if (!byName.TryGetValue(normal, out var entries))
            {
                byName.Add(normal, entries = []);
            }

            var entry = new Entry(name, normal, normal.Split(' '), ingredient, conditions, when.Length == 0 || when.Contains("*"));
            entries.Add(entry);
            foreach (var word in entry.Words.Distinct())
            {
                byWord.TryAdd(word, []);
                byWord[word].Add(entry);
            }
        }
    }

    /// <summary>The rows of a name that is listed, chosen by the conditions; empty when the name is not listed.</summary>
    /// <remarks>"boiled potatoes" is looked up as it stands, then as "potato" with the condition "boiled".</remarks>
    public IReadOnlyList<Ingredient> Listed(string[] words, IReadOnlyCollection<string> conditions, out bool chosen)
    {
        var phrase = string.Join(' ', words);
        var said = conditions.Select(Phrase.Normal);
        if (!byName.TryGetValue(phrase, out var entries))
        {
            said = said.Append(phrase);
            byName.TryGetValue(string.Join(' ', words.Where(word => !conditionWords.Contains(word))), out entries);
        }

        chosen = false;
        return entries is null ? [] : Choose(entries, [.. said], out chosen);
    }

    /// <summary>The rows that have a name with every word in it.</summary>
    public IReadOnlyList<Ingredient> WithAllWords(string[] words) =>
        [.. With(words[0]).Where(entry => words.All(word => entry.Words.Contains(word))).Select(entry => entry.Ingredient).Distinct()];

    /// <summary>Up to three names that share words with the phrase, or else that differ from it by a few letters.</summary>
    public IReadOnlyList<string> Nearest(string[] words)
    {
        var phrase = string.Join(' ', words);
        var most = Math.Max(1, phrase.Length / 3);
        var sharing = words.SelectMany(With).DistinctBy(entry => entry.Normal).ToArray();
        var near = sharing.Length > 0
            ? sharing.Select(each => (each.Name, Rank: Phrase.Distance(phrase, each.Normal) - each.LettersShared(words)))
            : byName
                // Names of very different length differ by many letters; counting them would only take time.
                .Where(each => Math.Abs(each.Key.Length - phrase.Length) <= most)
                .Select(each => (each.Value[0].Name, Rank: Phrase.Distance(phrase, each.Key)))
                .Where(each => each.Rank <= most);
        var nearest = near.OrderBy(each => each.Rank).ThenBy(each => each.Name, StringComparer.Ordinal);
        return [.. nearest.Take(MostNearest).Select(each => each.Name)];
    }

    private List<Entry> With(string word) => byWord.GetValueOrDefault(word) ?? [];

    private static Ingredient[] Choose(List<Entry> entries, string[] said, out bool chosen)
    {
        // The condition with the most words wins: "boiled in the skin" says more than "boiled".
        var fits = entries.Select(entry => entry.LongestFit(said)).ToArray();
        var longest = fits.Max();
        Ingredient[] picked = longest > 0
            ? [.. entries.Where((_, index) => fits[index] == longest).Select(entry => entry.Ingredient).Distinct()]
            : [.. entries.Where(entry => entry.StandsAlone).Select(entry => entry.Ingredient).Distinct()];
        chosen = picked.Length == 1;
        return picked.Length > 0 ? picked : [.. entries.Select(entry => entry.Ingredient).Distinct()];
    }

    private sealed record Entry(string Name, string Normal, string[] Words, Ingredient Ingredient, string[] When, bool StandsAlone)
    {
        public int LettersShared(string[] words) => LettersPerSharedWord * words.Count(word => Words.Contains(word));

        /// <summary>Words of the longest condition that was said; 0 when none was.</summary>
        public int LongestFit(string[] said)
        {
            var longest = 0;
            foreach (var condition in When)
            {
                var length = condition.AsSpan().Count(' ') + 1;
                if (length > longest && said.Any(text => Phrase.Holds(text, condition)))
                {
                    longest = length;
                }
            }

            return longest;
        }
    }
}
