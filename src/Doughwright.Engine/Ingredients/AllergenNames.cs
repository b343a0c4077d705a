namespace Doughwright.Engine.Ingredients;

/// <summary>Names of the allergens behind the larder's codes.</summary>
public static class AllergenNames
{
    private static readonly Lazy<Dictionary<string, (string Name, bool European)>> Names = new(() =>
        Tsv.Read(Tsv.Embedded("allergens.tsv")).Rows.ToDictionary(row => row["code"], row => (row["name"], row["list"] != "us")));

    /// <summary>The codes of the European list.</summary>
    public static IReadOnlyCollection<string> Codes => [.. Names.Value.Where(each => each.Value.European).Select(each => each.Key)];

    /// <summary>Whether the code says that it depends on the supplier.</summary>
    public static bool Depends(string code) => code.EndsWith('?');

    /// <summary>How a person is told: "wheat (gluten)".</summary>
    /// <exception cref="ArgumentOutOfRangeException">No allergen has this code: the larder's table is broken.</exception>
    public static string Of(string code) =>
        Names.Value.TryGetValue(code.TrimEnd('?'), out var allergen)
            ? allergen.Name
            : throw new ArgumentOutOfRangeException(nameof(code), code, "No allergen has this code.");
}
