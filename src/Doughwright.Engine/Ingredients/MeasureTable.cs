using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Ingredients;

/// <summary>Household measures of every ingredient, and what a person means by one.</summary>
internal sealed class MeasureTable
{
    // Two figures this near are one measure: the source rounds spoons to 0.1 g.
    private const double SameGrams = 0.05;

    private readonly Dictionary<string, Row[]> byIngredient;

    public MeasureTable(IEnumerable<Tsv.Row> rows)
    {
        byIngredient = rows.GroupBy(row => row["id"], Row.Read, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.ToArray(), StringComparer.Ordinal);
    }

    public IEnumerable<string> Ids => byIngredient.Keys;

    public IReadOnlyList<Measure> Of(Ingredient ingredient) => [.. RowsOf(ingredient).Select(row => row.Measure)];

    public MeasureMatch Find(Ingredient ingredient, string written, Region? region)
    {
        var words = Phrase.Words(written);
        if (words is ["level", .. var levelled])
        {
            words = levelled;
        }

        var regions = RegionCodes.Take(ref words) ?? (region is { } shopping ? [shopping] : []);
        var rows = RowsOf(ingredient);
        var known = rows.Select(row => row.Measure).ToArray();
        var (units, form) = Split(words, regions);
        if (units.Count == 0)
        {
            return new(MeasureMatchKind.Unknown, null, [], known);
        }

        var found = units.SelectMany(unit => unit.Millilitres is null ? Counted(rows, unit, form, regions) : Poured(rows, unit, form)).ToArray();
        var distinct = found.Where((measure, i) => !found.Take(i).Any(earlier => Same(earlier, measure))).ToArray();
        return distinct.Length switch
        {
            0 when units[0].Name == "piece" && form.Length == 0 && ingredient.Piece is { } piece => Exact(Whole(ingredient, piece), known),
            0 => new(MeasureMatchKind.NotHeld, null, [], known),
            1 => Exact(distinct[0], known),
            _ => new(MeasureMatchKind.NotClear, null, distinct, known),
        };
    }

    private Row[] RowsOf(Ingredient ingredient) => byIngredient.GetValueOrDefault(ingredient.Id) ?? [];

    private static MeasureMatch Exact(Measure measure, IReadOnlyList<Measure> known) => new(MeasureMatchKind.Exact, measure, [], known);

    private static bool Same(Measure a, Measure b) => a.Unit == b.Unit || (Math.Abs(a.Mass.Grams - b.Mass.Grams) < SameGrams && a.Regions.SequenceEqual(b.Regions));

    private static Measure Whole(Ingredient ingredient, Mass piece) => new("piece", piece, [], ingredient.Evidence);

    /// <summary>The unit is the longest run of words that is one; what is left says the form: "sifted".</summary>
    private static (IReadOnlyList<HouseholdUnit> Units, string[] Form) Split(string[] words, Region[] regions)
    {
        for (var length = words.Length; length > 0; length--)
        {
            for (var start = 0; start + length <= words.Length; start++)
            {
                var units = HouseholdUnit.Meant(string.Join(' ', words[start..(start + length)]), regions);
                if (units.Count > 0)
                {
                    return (units, [.. words[..start], .. words[(start + length)..]]);
                }
            }
        }

        return ([], []);
    }

    private static IEnumerable<Measure> Counted(Row[] rows, HouseholdUnit unit, string[] form, Region[] regions)
    {
        var counted = Plainest([.. rows.Where(row => row.Unit.Name == unit.Name && row.Holds(form))], form);
        // One piece of what comes in sizes is asked about; the middle size is not taken unasked.
        if (counted.Length == 0 && unit.Name == "piece" && form.Length == 0)
        {
            counted = [.. rows.Where(row => row.Unit.Name is "small" or "medium" or "large" && row.Regions.Count == 0)];
        }

        var here = counted.Where(row => row.Regions.Any(regions.Contains)).ToArray();
        var anywhere = counted.Where(row => row.Regions.Count == 0).ToArray();
        var fitting = regions.Length == 0 ? counted : here.Length > 0 ? here : anywhere;
        return fitting.Select(row => row.Measure);
    }

    /// <summary>What a volume of it weighs: as the source has it, or worked out from the nearest volume the source has, in every form it has.</summary>
    private static IEnumerable<Measure> Poured(Row[] rows, HouseholdUnit unit, string[] form)
    {
        var poured = rows.Where(row => row.Unit.Millilitres is not null && row.Holds(form)).ToArray();
        if (poured.Length == 0)
        {
            return [];
        }

        var least = poured.Min(row => Ratio(row.Unit, unit));
        var nearest = Plainest([.. poured.Where(row => Ratio(row.Unit, unit) <= least)], form);
        return nearest.Select(row => row.Unit.Name == unit.Name ? row.Measure : row.WorkedOutFor(unit));
    }

    /// <summary>Rows that say no more about the form than was asked: "packed" is not "not packed". All rows when each says more.</summary>
    private static Row[] Plainest(Row[] rows, string[] form)
    {
        var plain = rows.Where(row => row.FormWords.Length == form.Length).ToArray();
        return plain.Length > 0 ? plain : rows;
    }

    private static double Ratio(HouseholdUnit a, HouseholdUnit b)
    {
        var ratio = a.Millilitres!.Value / b.Millilitres!.Value;
        return ratio < 1 ? 1 / ratio : ratio;
    }

    private sealed record Row(HouseholdUnit Unit, string Form, string[] FormWords, Measure Measure)
    {
        public IReadOnlyList<Region> Regions => Measure.Regions;

        public bool Holds(string[] form) => form.All(FormWords.Contains);

        public static Row Read(Tsv.Row row)
        {
            var unit = HouseholdUnit.All.FirstOrDefault(each => each.Name == row["unit"])
                ?? throw new FormatException($"The measures of {row["id"]} name the unit {row["unit"]}, which does not exist.");
            if (row.NumberOrNull("amount") is not (> 0 and { } amount) || row.NumberOrNull("grams") is not (> 0 and { } grams))
            {
                throw new FormatException($"The measure {row["unit"]} of {row["id"]} weighs nothing.");
            }

            var regions = RegionCodes.Read(row["region"]);
            var evidence = new Evidence(row["source"], row.TextOrNull("ndb"), row["obtained"], null, row["note"]);
            return new(unit, row["form"], Phrase.Words(row["form"]), new(Named(unit, row["form"], regions), Mass.FromGrams(grams / amount), regions, evidence));
        }

        public Measure WorkedOutFor(HouseholdUnit other)
        {
            var factor = other.Millilitres!.Value / Unit.Millilitres!.Value;
            var evidence = Measure.Evidence with { Obtained = "worked out", Note = Measure.Unit };
            return new(Named(other, Form, Regions), Measure.Mass * factor, Regions, evidence);
        }

        private static string Named(HouseholdUnit unit, string form, IReadOnlyList<Region> regions) =>
            $"{RegionCodes.Before(regions)}{unit.Name}{(form.Length > 0 ? $" {form}" : "")}";
    }
}
