using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Ingredients;

/// <summary>Reads single rows of the larder's tables and refuses what cannot be true.</summary>
internal static class LarderRow
{
    public static Ingredient Ingredient(Tsv.Row row)
    {
        var id = row["id"];
        double? Share(string column) => row.NumberOrNull(column) is { } share ? Within(share, 0, 100, id, column) : null;
        return new()
        {
            Id = id,
            Name = row["name"],
            Role = Enum.TryParse<Role>(row["role"], ignoreCase: true, out var role) ? role : throw Broken(id, "role"),
            Yeast = row["yeast"] switch
            {
                "" => null,
                "fresh" => YeastKind.Fresh,
                "active-dry" => YeastKind.ActiveDry,
                "instant" => YeastKind.Instant,
                _ => throw Broken(id, "yeast"),
            },
            Composition = new(
                Share("water"),
                Share("protein"),
                Share("fat"),
                Share("carbohydrate"),
                Share("sugars"),
                Share("fibre"),
                Share("ash"),
                Share("salt"),
                Share("lactose"),
                Share("alcohol")),
            HandbookSpecificHeat = row.NumberOrNull("specific-heat") is { } heat
                ? SpecificHeat.FromJoulesPerGramKelvin(Within(heat, 0.5, 4.3, id, "specific-heat"))
                : null,
            MeltsAsButter = row["melts"] switch
            {
                "" => false,
                "butter" => true,
                _ => throw Broken(id, "melts"),
            },
            Piece = row.NumberOrNull("piece") is { } grams ? Mass.FromGrams(Within(grams, 1, 1000, id, "piece")) : null,
            Allergens = row.List("allergens", ';'),
            AllergensUnitedStates = row.Optional("allergens-us").Split(';', StringSplitOptions.RemoveEmptyEntries),
            Evidence = new(row["source"], row.TextOrNull("ndb"), row["obtained"], row.TextOrNull("date"), row["note"]),
        };
    }

    public static Preparation Preparation(Tsv.Row row)
    {
        var step = Enum.TryParse<PreparationStep>(row["step"], ignoreCase: true, out var parsed) ? parsed : throw Broken(row["id"], "step");
        double? factor = row.NumberOrNull("factor") is { } number ? Within(number, 0.05, 5, row["id"], "factor") : null;
        return new(row["id"], row.TextOrNull("from"), step, factor, row.TextOrNull("source"), row["note"]);
    }

    private static double Within(double value, double low, double high, string id, string column) =>
        value >= low && value <= high ? value : throw Broken(id, column);

    private static FormatException Broken(string id, string column) => new($"The larder's row {id} has an impossible {column}.");
}
