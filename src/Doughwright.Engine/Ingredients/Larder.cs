using System.Security.Cryptography;
using System.Text;

namespace Doughwright.Engine.Ingredients;

/// <summary>All ingredients that are known, their names, and what peeling and cooking leave of them. Immutable.</summary>
public sealed class Larder
{
    private static readonly Lazy<Larder> TheShipped =
        new(() => Load(Tsv.Embedded("larder.tsv"), Tsv.Embedded("names.tsv"), Tsv.Embedded("preparation.tsv")));

    private readonly Dictionary<string, Ingredient> byId;
    private readonly Dictionary<string, Preparation> preparations;
    private readonly NameIndex names;

    private Larder(string version, Ingredient[] ingredients, Dictionary<string, Preparation> preparations, NameIndex names)
    {
        Version = version;
        Ingredients = ingredients;
        byId = ingredients.ToDictionary(ingredient => ingredient.Id, StringComparer.Ordinal);
        this.preparations = preparations;
        this.names = names;
    }

    /// <summary>The larder that comes with the program.</summary>
    public static Larder Shipped => TheShipped.Value;

    /// <summary>Hash of everything in it: two larders with the same version give the same answers.</summary>
    public string Version { get; }

    public IReadOnlyList<Ingredient> Ingredients { get; }

    /// <summary>The row with this id, or null.</summary>
    public Ingredient? WithId(string id) => byId.GetValueOrDefault(id);

    /// <summary>What peeling or cooking gives this row; null when it is used as bought.</summary>
    public Preparation? PreparationOf(Ingredient ingredient) => preparations.GetValueOrDefault(ingredient.Id);

    /// <summary>The raw row that a cooked one was; null for what is not cooked.</summary>
    public Ingredient? RawOf(Ingredient ingredient) =>
        PreparationOf(ingredient) is { Step: PreparationStep.Cook, From: { } from } ? byId[from] : null;

    /// <summary>Finds what a person means by a name, with the conditions written beside it: "potato" and "boiled".</summary>
    public LarderMatch Find(string phrase, IReadOnlyCollection<string> conditions)
    {
        var words = Phrase.Words(phrase);
        var listed = names.Listed(words, conditions, out var chosen);
        if (chosen)
        {
            return new(MatchKind.Exact, listed[0], [], []);
        }

        if (listed.Count > 0)
        {
            var differInCooking = listed.Any(row => RawOf(row) is { } raw && listed.Contains(raw));
            return new(differInCooking ? MatchKind.RawOrCookedNotSaid : MatchKind.NotClear, null, listed, []);
        }

        // One word alone fits too much: "cream" is no cream cheese.
        var holding = words.Length > 1 ? names.WithAllWords(words) : [];
        return holding.Count switch
        {
            1 => new(MatchKind.ReadAs, holding[0], [], []),
            > 1 => new(MatchKind.NotClear, null, holding, []),
            _ => new(MatchKind.Unknown, null, [], names.Nearest(words)),
        };
    }

    /// <summary>Reads a larder from its three tables.</summary>
    /// <exception cref="FormatException">A table is broken.</exception>
    internal static Larder Load(string ingredientTable, string nameTable, string preparationTable)
    {
        var ingredients = Tsv.Read(ingredientTable).Rows.Select(LarderRow.Ingredient).ToArray();
        var known = ingredients.ToDictionary(ingredient => ingredient.Id, StringComparer.Ordinal);
        var preparations = Tsv.Read(preparationTable).Rows.Select(LarderRow.Preparation).ToDictionary(row => row.Id);
        var names = Tsv.Read(nameTable).Rows.Select(row => (row["name"], Known(known, row["id"]), row.List("when", ',')));
        foreach (var row in preparations.Values)
        {
            Known(known, row.Id);
            _ = row.From is null ? null : Known(known, row.From);
        }

        return new(Hash(ingredientTable, nameTable, preparationTable), ingredients, preparations, new(names));
    }

    private static Ingredient Known(Dictionary<string, Ingredient> known, string id) =>
        known.GetValueOrDefault(id) ?? throw new FormatException($"A table names the row {id}, which does not exist.");

    private static string Hash(params string[] tables)
    {
        var content = string.Join('\n', tables).Replace("\r", "", StringComparison.Ordinal);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content)))[..12];
    }
}
