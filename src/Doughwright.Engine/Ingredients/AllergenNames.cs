namespace Doughwright.Engine.Ingredients;

/// <summary>Names of the allergens behind the larder's codes.</summary>
public static class AllergenNames
{
    private static readonly Lazy<Dictionary<string, string>> Names =
        new(() => Tsv.Read(Tsv.Embedded("allergens.tsv")).Rows.ToDictionary(row => row["code"], row => row["name"]));

    /// <summary>All codes, of the European list and of that of the United States.</summary>
    public static IReadOnlyCollection<string> Codes => Names.Value.Keys;

    /// <summary>Whether the code says that it depends on the supplier.</summary>
    public static bool Depends(string code) => code.EndsWith('?');

    /// <summary>How a person is told: "wheat (gluten)".</summary>
    /// <exception cref="ArgumentOutOfRangeException">No allergen has this code: the larder's table is broken.</exception>
    public static string Of(string code) =>
        Names.Value.GetValueOrDefault(code.TrimEnd('?'))
            ?? throw new ArgumentOutOfRangeException(nameof(code), code, "No allergen has this code.");
}
