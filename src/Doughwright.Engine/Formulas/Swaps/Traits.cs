using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What an ingredient does beside bringing water, sugar and fat.</summary>
internal enum Trait
{
    /// <summary>Firm when cold.</summary>
    SetsCold,

    /// <summary>Holds air when beaten with sugar.</summary>
    Creams,

    ButterFlavour,

    /// <summary>Sets when baked.</summary>
    SetsHot,

    /// <summary>Binds fat and water.</summary>
    Emulsifies,

    /// <summary>Holds air when whipped.</summary>
    Foams,

    Sour,

    Browns,

    /// <summary>Sweeter than sugar, by the same dry weight.</summary>
    Sweeter,

    /// <summary>Makes a web that holds gas.</summary>
    Gluten,

    /// <summary>Makes gas of its own: soda, baking powder.</summary>
    Raises,

    /// <summary>Makes its gas only with something sour.</summary>
    NeedsAcid,

    /// <summary>So fine that it dissolves in a cold cream or glaze.</summary>
    Fine,
}

/// <summary>The table of traits. Source: swap-traits.</summary>
internal static class Traits
{
    private static readonly Lazy<(string Id, Trait[] Traits)[]> Table = new(() =>
    [
        .. Tsv.Read(Tsv.Embedded("swap-traits.tsv")).Rows.Select(row => (row["id"], row.List("does", ' ').Select(word => Enum.Parse<Trait>(word)).ToArray())),
    ]);

    /// <summary>What it does; nothing that is known of, for what is not in the table.</summary>
    public static IReadOnlyList<Trait> Of(Ingredient? ingredient) =>
        ingredient is null ? [] : Table.Value.FirstOrDefault(row => Means(row.Id, ingredient.Id)).Traits ?? [];

    /// <summary>Whether a row of a table is about an ingredient: by its id, or by the beginning of it before a star.</summary>
    internal static bool Means(string pattern, string id) =>
        pattern.EndsWith('*') ? id.AsSpan().StartsWith(pattern.AsSpan(0, pattern.Length - 1), StringComparison.Ordinal) : pattern == id;
}
