namespace Doughwright.Engine.Ingredients;

/// <summary>
/// Finds rows by names as people write them: misspelt, in another order, with words about packs and preparation around them. A search ranks; it never decides.
/// </summary>
internal sealed class NameSearch
{
    /// <summary>Below this nothing of the phrase is in the name.</summary>
    public const double LeastLikeness = 0.3;

    // A word that stands in many names ("flour") says less than one that stands in few ("rye"): weight = 1 + 3 / (1 + names / 12).
    private const double Rare = 3;
    private const double Common = 12;

    // Words around a name: they count for little when they find nothing.
    private const double AroundWeight = 0.15;
    private const double PrefixLikeness = 0.75;
    private const int ShortestBeginning = 4;
    private const double ConditionBonus = 0.08;
    private const double ConditionNotSaid = 0.06;

    // What the phrase says must be found; what the name says beside it matters less.
    private const double PhraseShare = 0.65;

    private static readonly HashSet<string> Around =
    [
        "of", "a", "an", "the", "in", "for", "with", "and", "or", "some", "good", "quality", "about", "lightly", "very", "extra", "plus", "your", "own",
        "soft", "softened", "melted", "cold", "warm", "hot", "boiling", "room", "temperature", "peeled", "mashed", "diced", "chopped", "grated", "sifted",
        "beaten", "cubed", "large", "medium", "small", "organic", "free", "range", "fresh", "finely", "freshly", "roughly", "packed", "heaped", "level",
        "tin", "can", "sachet", "packet", "pack", "stick", "knob", "block", "tub", "jar", "bag", "piece", "slice", "handful", "cup", "tbsp", "tsp",
        "tablespoon", "teaspoon", "pinch", "dash", "g", "kg", "ml", "oz", "lb",
    ];

    private readonly LarderName[] names;
    private readonly string[] words;
    private readonly int[][] namesOfWord;
    private readonly double[] weights;
    private readonly int[][] wordsOfName;
    private readonly ILookup<string, int> namesOfJoined;

    public NameSearch(IReadOnlyList<LarderName> all)
    {
        names = [.. all];
        var index = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        for (var i = 0; i < names.Length; i++)
        {
            foreach (var word in AllWords(names[i]))
            {
                index.TryAdd(word, []);
                index[word].Add(i);
            }
        }

        words = [.. index.Keys];
        namesOfWord = [.. words.Select(word => index[word].ToArray())];
        weights = [.. namesOfWord.Select((with, i) => Around.Contains(words[i]) ? 1 : 1 + (Rare / (1 + (with.Length / Common))))];
        var number = words.Select((word, i) => (word, i)).ToDictionary(pair => pair.word, pair => pair.i, StringComparer.Ordinal);
        wordsOfName = [.. names.Select(name => name.Words.Distinct().Select(word => number[word]).ToArray())];
        namesOfJoined = Enumerable.Range(0, names.Length).ToLookup(i => string.Concat(names[i].Words), StringComparer.Ordinal);
    }

    /// <summary>Rows by likeness, the likest first; of equal ones the one with the shorter name.</summary>
    /// <param name="isTyping">Whether the last word is still being typed: then it may be the beginning of any longer one.</param>
    public IReadOnlyList<LarderHit> Find(string phrase, Region? region, int most, bool isTyping = false)
    {
        var asked = WithoutAmount(Phrase.Words(phrase)).Distinct().ToArray();
        if (asked.Length == 0)
        {
            return [];
        }

        var excluded = Exclusion.In(Phrase.Words(phrase));
        // "Imitation vanilla" is no answer to "imitation butter".
        HashSet<string> subject = excluded.Count == 0 ? [] : [.. asked.Except(excluded.SelectMany(claim => claim.Split(' ')))];
        var like = asked.Select((word, i) => Likenesses(word, isTyping && i == asked.Length - 1 ? 1 : ShortestBeginning)).ToArray();
        var askedWeights = asked.Select((word, i) => WeightOf(word, like[i])).ToArray();
        var total = askedWeights.Sum();
        var joined = string.Concat(asked);
        var whole = string.Join(' ', asked);
        var best = new Dictionary<Ingredient, (double Score, LarderName Name)>();
        foreach (var i in like.SelectMany(each => each.Keys).SelectMany(word => namesOfWord[word]).Concat(namesOfJoined[joined]).Distinct())
        {
            var name = names[i];
            if (!name.Holds(region) || !Exclusion.IsIn(name, excluded) || (excluded.Count > 0 && !subject.Overlaps(name.Words)))
            {
                continue;
            }

            var score = Score(i, like, askedWeights, total);
            score = name.Normal == whole && name.StandsAlone ? 1 : string.Concat(name.Words) == joined ? Math.Max(score, 0.97) : Math.Min(score, 0.96);
            if (score >= LeastLikeness && (!best.TryGetValue(name.Ingredient, out var before) || score > before.Score))
            {
                best[name.Ingredient] = (score, name);
            }
        }

        return
        [
            .. best
                .OrderByDescending(each => each.Value.Score)
                .ThenBy(each => each.Value.Name.Normal.Length)
                .ThenBy(each => each.Value.Name.Normal, StringComparer.Ordinal)
                .Take(most)
                .Select(each => new LarderHit(each.Key, each.Value.Name.Name, each.Value.Score, each.Value.Name.Note) { When = each.Value.Name.StandsAlone ? [] : each.Value.Name.When }),
        ];
    }

    /// <summary>"1 cup of flour" is "of flour": a number and the measure behind it are no part of a name; "1 % milk" and "type 1 flour" have no measure.</summary>
    private static string[] WithoutAmount(string[] typed) =>
        typed.Length > 2 && char.IsDigit(typed[0][0]) && Around.Contains(typed[1]) ? typed[2..] : typed;

    private static IEnumerable<string> AllWords(LarderName name) => name.Words.Concat(name.When.SelectMany(condition => condition.Split(' '))).Distinct();

    private double Score(int nameIndex, Dictionary<int, double>[] like, double[] askedWeights, double total)
    {
        var name = names[nameIndex];
        double found = 0, covered = 0, all = 0;
        var conditionSaid = false;
        for (var q = 0; q < like.Length; q++)
        {
            var inName = wordsOfName[nameIndex].Select(word => like[q].GetValueOrDefault(word)).DefaultIfEmpty().Max();
            var inCondition = inName > 0 ? 0 : ConditionLikeness(name, like[q]);
            conditionSaid |= inCondition > 0;
            found += askedWeights[q] * Math.Max(inName, inCondition);
        }

        foreach (var word in wordsOfName[nameIndex])
        {
            all += weights[word];
            covered += weights[word] * like.Max(each => each.GetValueOrDefault(word));
        }

        var score = (PhraseShare * found / total) + ((1 - PhraseShare) * covered / all);
        return score + (conditionSaid ? ConditionBonus : 0) - (!conditionSaid && !name.StandsAlone ? ConditionNotSaid : 0);
    }

    private double ConditionLikeness(LarderName name, Dictionary<int, double> like)
    {
        var most = 0.0;
        foreach (var (word, likeness) in like)
        {
            if (likeness > most && name.When.Any(condition => Phrase.Holds(condition, words[word])))
            {
                most = likeness;
            }
        }

        return most;
    }

    private double WeightOf(string word, Dictionary<int, double> like)
    {
        if (Around.Contains(word) || char.IsDigit(word[0]) && like.Count == 0)
        {
            return AroundWeight;
        }

        // A word that is in no name weighs as a rare one: not finding it says much.
        return like.Count == 0 ? 1 + Rare : like.Max(each => weights[each.Key] * each.Value);
    }

    /// <summary>The words of the larder that a word may be: itself, what it begins, and what it is but for a letter or two.</summary>
    /// <param name="shortest">Letters from which on a word is taken for a beginning.</param>
    private Dictionary<int, double> Likenesses(string asked, int shortest)
    {
        var like = new Dictionary<int, double>();
        var slips = Slips(asked.Length);
        for (var i = 0; i < words.Length; i++)
        {
            var word = words[i];
            if (word == asked)
            {
                like[i] = 1;
            }
            else if (asked.Length >= shortest && word.StartsWith(asked, StringComparison.Ordinal))
            {
                like[i] = PrefixLikeness;
            }
            else if (slips > 0 && Math.Abs(word.Length - asked.Length) <= slips && word[0] == asked[0] && !char.IsDigit(word[0]))
            {
                var distance = Phrase.Distance(asked, word);
                if (distance <= slips)
                {
                    like[i] = 1 - (1.5 * distance / asked.Length);
                }
            }
        }

        return like;
    }

    private static int Slips(int length) => length switch
    {
        < 4 => 0,
        < 7 => 1,
        _ => 2,
    };
}
