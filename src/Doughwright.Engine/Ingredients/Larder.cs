using System.Security.Cryptography;
using System.Text;

namespace Doughwright.Engine.Ingredients;

/// <summary>All ingredients that are known, their names, and what peeling and cooking leave of them. Immutable.</summary>
public sealed class Larder
{
    private const int MostNearest = 3;
    private const double LeastNearest = 0.5;

    private static readonly Lazy<Larder> TheShipped =
        new(() => Load(Tsv.Embedded("larder.tsv"), Tsv.Embedded("names.tsv"), Tsv.Embedded("preparation.tsv"), Tsv.Embedded("measures.tsv")));

    private readonly Dictionary<string, Ingredient> byId;
    private readonly Dictionary<string, Preparation> preparations;
    private readonly NameIndex names;
    private readonly NameSearch search;
    private readonly MeasureTable measures;
    private readonly Dictionary<string, Ingredient> own = new(StringComparer.Ordinal);
    private readonly Larder? everywhere;

    private Larder(string version, Ingredient[] ingredients, Dictionary<string, Preparation> preparations, LarderName[] names, MeasureTable measures)
    {
        Version = version;
        Ingredients = ingredients;
        byId = ingredients.ToDictionary(ingredient => ingredient.Id, StringComparer.Ordinal);
        this.preparations = preparations;
        this.names = new(names);
        search = new(names);
        this.measures = measures;
    }

    private Larder(Larder shipped, IReadOnlyList<Ingredient> added)
    {
        Region = shipped.Region;
        Version = Hash([shipped.Version, .. added.Select(OwnText.Of)]);
        Ingredients = [.. shipped.Ingredients, .. added];
        byId = new(shipped.byId, StringComparer.Ordinal);
        (preparations, names, measures, own) = (shipped.preparations, shipped.names, shipped.measures, new(shipped.own, StringComparer.Ordinal));
        search = shipped.search;
        everywhere = shipped.everywhere?.With(added);
        foreach (var ingredient in added)
        {
            byId.TryAdd(ingredient.Id, ingredient);
            own.TryAdd(Phrase.Normal(ingredient.Name), ingredient);
        }
    }

    private Larder(Larder larder, Region region)
    {
        (byId, preparations, names, search, measures, own) = (larder.byId, larder.preparations, larder.names, larder.search, larder.measures, larder.own);
        (Ingredients, Region, everywhere) = (larder.Ingredients, region, larder);
        Version = Hash(larder.Version, RegionCodes.CodeOf(region));
    }

    /// <summary>The larder that comes with the program.</summary>
    public static Larder Shipped => TheShipped.Value;

    /// <summary>Hash of everything in it: two larders with the same version give the same answers.</summary>
    public string Version { get; }

    public IReadOnlyList<Ingredient> Ingredients { get; }

    /// <summary>Where the words that it is asked about were written, unless a question says otherwise; null leaves that open.</summary>
    public Region? Region { get; }

    /// <summary>
    /// This larder and some ingredients of an author's own, which go before rows of the same name. Of two with one name the first is kept.
    /// </summary>
    public Larder With(IEnumerable<Ingredient> ownIngredients) => ownIngredients.ToArray() is { Length: > 0 } added ? new(this, added) : this;

    /// <summary>This larder for words that were written in a region; null leaves open where.</summary>
    public Larder In(Region? region) => region == Region ? this : region is { } there ? new(everywhere ?? this, there) : everywhere ?? this;

    /// <summary>The row with this id, or null.</summary>
    public Ingredient? WithId(string id) => byId.GetValueOrDefault(id);

    /// <summary>What peeling or cooking gives this row; null when it is used as bought.</summary>
    public Preparation? PreparationOf(Ingredient ingredient) => preparations.GetValueOrDefault(ingredient.Id);

    /// <summary>The raw row that a cooked one was; null for what is not cooked.</summary>
    public Ingredient? RawOf(Ingredient ingredient) =>
        PreparationOf(ingredient) is { Step: PreparationStep.Cook, From: { } from } ? byId[from] : null;

    /// <summary>All household measures and packs of an ingredient.</summary>
    public IReadOnlyList<Measure> MeasuresOf(Ingredient ingredient) => measures.Of(ingredient);

    /// <summary>
    /// What one household measure of an ingredient weighs, by the words people write: "tbsp", "cup, sifted", "large", "sachet".
    /// A volume the source does not have is worked out from one that it has, of the same ingredient in the same form, never from another ingredient.
    /// </summary>
    /// <param name="region">Where the words were written; it decides what a cup, a pint, a sachet or a large egg is. Null means the larder's own.</param>
    public MeasureMatch MeasureOf(Ingredient ingredient, string unit, Region? region = null) => measures.Find(ingredient, unit, region ?? Region);

    /// <summary>Finds what a person means by a name, with the conditions written beside it: "potato" and "boiled". It never guesses, and "vegan butter" is no butter.</summary>
    /// <param name="region">Where the name was written; it decides where a name means different things in different places. Null means the larder's own.</param>
    public LarderMatch Find(string phrase, IReadOnlyCollection<string> conditions, Region? region = null)
    {
        region ??= Region;
        var words = Phrase.Words(phrase);
        if (own.TryGetValue(string.Join(' ', words), out var mine) && OwnMeans(mine, words, conditions))
        {
            return new(MatchKind.Exact, mine, [], []);
        }

        var listed = names.Listed(words, conditions, region, out var chosen);
        if (chosen)
        {
            return new(MatchKind.Exact, listed[0].Ingredient, [], []) { Note = listed[0].Note };
        }

        if (listed.Count > 0)
        {
            Ingredient[] rows = [.. listed.Select(name => name.Ingredient)];
            var differInCooking = rows.Any(row => RawOf(row) is { } raw && rows.Contains(raw));
            return new(differInCooking ? MatchKind.RawOrCookedNotSaid : MatchKind.NotClear, null, rows, []);
        }

        // One word alone fits too much: "cream" is no cream cheese.
        var holding = words.Length > 1 ? names.WithAllWords(words, Exclusion.In(words, conditions), region) : [];
        return holding.Count switch
        {
            1 => new(MatchKind.ReadAs, holding[0], [], []),
            > 1 => new(MatchKind.NotClear, null, holding, []),
            _ => new(MatchKind.Unknown, null, [], Nearest(phrase, region)),
        };
    }

    /// <summary>
    /// Rows whose names are like a phrase, the likest first: for a person to choose from. Slips of the finger, other word orders and words about packs and
    /// preparation are forgiven; whether something is raw or cooked counts. Of "gluten-free flour" only names that say "gluten-free" are given.
    /// </summary>
    public IReadOnlyList<LarderHit> Search(string phrase, Region? region = null, int most = 10) => Found(phrase, region ?? Region, most, isTyping: false);

    /// <summary>The same for a phrase that is still being typed: its last word may be the beginning of any longer one. "bu" gives butter.</summary>
    public IReadOnlyList<LarderHit> Complete(string phrase, int most = 10) => Found(phrase, Region, most, isTyping: true);

    private LarderHit[] Found(string phrase, Region? region, int most, bool isTyping)
    {
        var mine = own.Count == 0 ? [] : new NameSearch([.. own.Values.Select(each => LarderName.Of(each.Name, each, [], [], ""))]).Find(phrase, region, most, isTyping);
        return [.. mine.Concat(search.Find(phrase, region, most, isTyping)).OrderByDescending(hit => hit.Likeness).Take(most)];
    }

    // An author's own "butter" is no match for "butter, vegan": such a row says in its name what it is not.
    private static bool OwnMeans(Ingredient mine, string[] words, IReadOnlyCollection<string> conditions) =>
        Exclusion.In(words, conditions).All(Exclusion.In(Phrase.Words(mine.Name)).Contains);

    private string[] Nearest(string phrase, Region? region) => [.. Search(phrase, region, MostNearest).Where(hit => hit.Likeness >= LeastNearest).Select(hit => hit.Name)];

    /// <summary>Reads a larder from its tables.</summary>
    /// <exception cref="FormatException">A table is broken.</exception>
    internal static Larder Load(string ingredientTable, string nameTable, string preparationTable, string measureTable = "id")
    {
        var ingredients = Tsv.Read(ingredientTable).Rows.Select(LarderRow.Ingredient).ToArray();
        var known = ingredients.ToDictionary(ingredient => ingredient.Id, StringComparer.Ordinal);
        var preparations = Tsv.Read(preparationTable).Rows.Select(LarderRow.Preparation).ToDictionary(row => row.Id);
        var names = Tsv.Read(nameTable).Rows
            .Select(row => LarderName.Of(row["name"], Known(known, row["id"]), row.List("when", ','), RegionCodes.Read(row.Optional("region")), row.Optional("note")))
            .ToArray();
        foreach (var row in preparations.Values)
        {
            Known(known, row.Id);
            _ = row.From is null ? null : Known(known, row.From);
        }

        var measures = new MeasureTable(Tsv.Read(measureTable).Rows);
        foreach (var id in measures.Ids)
        {
            Known(known, id);
        }

        return new(Hash(ingredientTable, nameTable, preparationTable, measureTable), ingredients, preparations, names, measures);
    }

    private static Ingredient Known(Dictionary<string, Ingredient> known, string id) =>
        known.GetValueOrDefault(id) ?? throw new FormatException($"A table names the row {id}, which does not exist.");

    private static string Hash(params string[] tables)
    {
        var content = string.Join('\n', tables).Replace("\r", "", StringComparison.Ordinal);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content)))[..12];
    }
}
