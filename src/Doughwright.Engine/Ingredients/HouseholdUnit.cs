using System.Globalization;

namespace Doughwright.Engine.Ingredients;

/// <summary>A unit of household volume, or the name of a thing that is counted.</summary>
/// <param name="Name">Without doubt: "US cup".</param>
/// <param name="Millilitres">Null for what is counted.</param>
/// <param name="Words">Everything people write for it, in normal form.</param>
/// <param name="Regions">Where its plain word means this one.</param>
/// <param name="Everywhere">Whether the plain word means this one where no region says otherwise.</param>
internal sealed record HouseholdUnit(
    string Name, double? Millilitres, IReadOnlyList<string> Words, IReadOnlyList<Region> Regions, bool Everywhere, Evidence Evidence)
{
    private static readonly Lazy<HouseholdUnit[]> TheAll = new(() => [.. Tsv.Read(Tsv.Embedded("units.tsv")).Rows.Select(Read)]);

    public static IReadOnlyList<HouseholdUnit> All => TheAll.Value;

    /// <summary>The units that a word may mean: several for "cup" when no region is given.</summary>
    public static IReadOnlyList<HouseholdUnit> Meant(string word, IReadOnlyList<Region> regions)
    {
        var named = All.FirstOrDefault(unit => Phrase.Normal(unit.Name) == word);
        if (named is { Everywhere: false })
        {
            return [named];
        }

        var meant = All.Where(unit => unit.Words.Contains(word)).ToArray();
        if (meant.Length < 2)
        {
            return meant;
        }

        var here = meant.Where(unit => unit.Regions.Any(regions.Contains)).ToArray();
        var plain = meant.Where(unit => unit.Everywhere).ToArray();
        return here.Length > 0 ? here : plain.Length > 0 ? plain : meant;
    }

    private static HouseholdUnit Read(Tsv.Row row)
    {
        var regions = row["regions"];
        double? millilitres = row.TextOrNull("ml") is { } text ? double.Parse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) : null;
        return new(
            row["unit"],
            millilitres,
            [.. row.List("words", ',').Append(row["unit"]).Select(Phrase.Normal)],
            RegionCodes.Read(regions.Replace("*", "", StringComparison.Ordinal)),
            regions.Contains('*'),
            new(row["source"], null, row["obtained"], null, row["note"]));
    }
}
