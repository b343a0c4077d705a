using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Cases;

/// <summary>What was measured: one section per quantity, with its figures, how far off an answer may be, and why.</summary>
internal static class SeriesSection
{
    public const string Value = "value";
    public const string Points = "points";
    public const string File = "file";
    public const string Tolerance = "tolerance";
    public const string Because = "because";
    public const string Reference = "reference";

    private static readonly string[] Keys = [Value, Points, File, Tolerance, Because, Reference];

    public static IReadOnlyList<CaseSeries> Read(TextMapping mapping, Position position, CaseKind kind, FindingLog log, CaseTables tables)
    {
        var measured = new Section(mapping, CaseText.MeasuredKey, log, [.. kind.Quantities.Select(quantity => quantity.Name)]);
        var all = new List<CaseSeries>();
        var there = false;
        foreach (var quantity in kind.Quantities)
        {
            there |= measured.Has(quantity.Name);
            if (measured.Keys(quantity.Name) is { } keys
                && ReadOne(new(keys, measured.PlaceOf(quantity.Name), log, Keys), measured.Entry(quantity.Name)!.KeyPosition, quantity, tables) is { } series)
            {
                all.Add(series);
            }
        }

        if (!there)
        {
            log.Wrong(CaseFaults.NothingMeasured, CaseText.MeasuredKey, position, ("known", string.Join(", ", kind.Quantities.Select(quantity => quantity.Name))));
        }

        return all;
    }

    private static CaseSeries? ReadOne(Section section, Position position, CaseQuantity quantity, CaseTables tables)
    {
        var log = section.Log;
        var reference = ReadReference(section, position, quantity);
        var tolerance = section.Words(Tolerance) is { } words ? CaseTolerance.Read(words, quantity.Of) : null;
        var because = section.Prose(Because);
        if (section.Has(Tolerance) && !section.Has(Because))
        {
            log.Wrong(CaseFaults.ReasonMissing, section.Place, position);
        }

        var wanted = quantity.Along is null ? Value : $"{Points}, {File}";
        string[] ways = [.. ((string[])[Value, Points, File]).Where(section.Has)];
        if (ways.Length != 1 || (quantity.Along is null) != (ways[0] == Value))
        {
            var kind = ways.Length > 1 ? CaseFaults.RowsTwice : CaseFaults.RowsMissing;
            log.Wrong(kind, section.Place, position, ("wanted", wanted));
            return null;
        }

        var rows = ways[0] switch
        {
            Value => section.Words(Value) is { } value && CaseRow.Figure(value, quantity) is { } row ? [row] : [],
            Points => CaseRow.Read(section.Items(Points) ?? [], quantity),
            _ => section.Words(File) is { } name ? tables.Read(name, quantity) : [],
        };
        if (rows.Count == 0)
        {
            return null;
        }

        if (tolerance is null && !section.Has(Tolerance) && rows.Any(row => row.Low == row.High && row.Within is null))
        {
            log.Wrong(CaseFaults.ToleranceMissing, section.Place, position);
        }

        return quantity.IsAgainst && reference is null ? null : Series(quantity, rows, tolerance, because, reference);
    }

    private static double? ReadReference(Section section, Position position, CaseQuantity quantity)
    {
        if (quantity.IsAgainst && !section.Has(Reference))
        {
            section.Log.Wrong(CaseFaults.KeyMissing, section.Place, position, ("key", Reference));
        }

        if (section.Words(Reference) is not { } words)
        {
            return null;
        }

        if (quantity.IsAgainst)
        {
            return quantity.Along!.Read(words)?.Value;
        }

        section.Log.Wrong(CaseFaults.NotTogether, section.PlaceOf(Reference), words.Position, ("key", Reference), ("others", quantity.Name));
        return null;
    }

    private static CaseSeries Series(CaseQuantity quantity, IReadOnlyList<CaseRow> rows, CaseTolerance? tolerance, string? because, double? reference)
    {
        var (shown, along) = (rows[0].Unit, rows[0].AtUnit);
        return new()
        {
            Quantity = quantity.Name,
            Unit = shown.Shown,
            Along = quantity.Along?.Name ?? "",
            AlongUnit = along?.Shown ?? "",
            Because = because,
            Of = quantity,
            Shown = shown,
            AlongShown = along,
            Reference = reference,
            // A range that the source gives needs no tolerance; where the case allows one, it counts from the ends.
            Points = [.. rows.Select(row => new CasePoint(
                row.At is { } at ? along!.FromBase(at) : null,
                shown.FromBase(row.Low),
                shown.FromBase(row.High),
                (row.Within ?? tolerance?.At((row.Low + row.High) / 2) ?? 0) / shown.Factor)
            {
                Place = row.At ?? 0,
            })],
        };
    }
}
