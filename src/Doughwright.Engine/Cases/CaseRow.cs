using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Cases;

/// <summary>One measured figure as read, in the base of its dimension.</summary>
/// <param name="At">Where along the series; null for a single figure.</param>
/// <param name="Within">How far off an answer may be at this point alone; null where the series says it.</param>
internal sealed record CaseRow(double? At, FigureUnit? AtUnit, double Low, double High, FigureUnit Unit, double? Within)
{
    public const int Most = 1000;

    private const string To = " to ";
    private const string WithinWord = "within";

    /// <summary>Rows in the text: "30 min, 24.6 C", "2 h, 4 to 8 %", "30 min, 24.6 C, within 0.5 K".</summary>
    public static IReadOnlyList<CaseRow> Read(IReadOnlyList<Phrase> lines, CaseQuantity quantity)
    {
        if (lines.Count > Most)
        {
            lines[Most].Log.Wrong(CaseFaults.RowsTooMany, lines[Most].Place, lines[Most].Position, ("count", lines.Count), ("most", Most));
            return [];
        }

        return [.. lines.Select(line => Row(line, quantity)).OfType<CaseRow>()];
    }

    /// <summary>A single figure, or a range: "9 min", "12 h to 16 h".</summary>
    public static CaseRow? Figure(Phrase words, CaseQuantity quantity)
    {
        if (words.Around(To) is not var (before, after))
        {
            return quantity.Of.Read(words) is var (value, unit) ? new(null, null, value, value, unit, null) : null;
        }

        // "12 to 16 h": the unit may stand once.
        var first = before with { Text = HasUnit(before.Text) || quantity.Of.Units[0].Symbol.Length == 0 ? before.Text : $"{before.Text} {UnitOf(after.Text)}" };
        if ((quantity.Of.Read(first), quantity.Of.Read(after)) is not (var (low, _), var (high, at)))
        {
            return null;
        }

        if (low < high)
        {
            return new(null, null, low, high, at, null);
        }

        words.Log.Wrong(CaseFaults.RangeBackwards, words.Place, words.Position, ("words", words.Text));
        return null;
    }

    private static CaseRow? Row(Phrase line, CaseQuantity quantity)
    {
        var pieces = line.Split();
        if (pieces.Count is not (2 or 3) || (pieces.Count == 3 && pieces[2].After(WithinWord) is null))
        {
            line.Fault(CaseFaults.RowWrong, ("along", quantity.Along!.Name), ("of", quantity.Name));
            return null;
        }

        var at = quantity.Along!.Read(pieces[0]);
        var figure = Figure(pieces[1], quantity);
        var within = pieces.Count == 3 ? CaseTolerance.Read(pieces[2].After(WithinWord)!, quantity.Of) : null;
        return at is not var (place, unit) || figure is null || (pieces.Count == 3 && within is null)
            ? null
            : figure with { At = place, AtUnit = unit, Within = within?.At((figure.Low + figure.High) / 2) };
    }

    private static bool HasUnit(string text) => UnitOf(text).Length > 0;

    private static string UnitOf(string text) => text.TrimStart().TrimStart([.. "0123456789.,-\u2212 "]).Trim();
}
