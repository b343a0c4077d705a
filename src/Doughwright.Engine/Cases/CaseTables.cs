using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Cases;

/// <summary>Tables that lie beside the text of a case: comma-separated, the first line names each column with its unit.</summary>
/// <param name="beside">The text of a file by its name; null where there is none.</param>
/// <param name="findings">Gets what is wrong in the tables.</param>
internal sealed class CaseTables(Func<string, string?> beside, List<Finding> findings)
{
    public IReadOnlyList<CaseRow> Read(Phrase name, CaseQuantity quantity)
    {
        if (name.Text.Length is 0 or > 100 || name.Text[0] == '.' || !name.Text.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '.' or '-' or '_'))
        {
            name.Fault(CaseFaults.TableName);
            return [];
        }

        if (beside(name.Text) is not { } text)
        {
            name.Log.Wrong(CaseFaults.TableMissing, name.Place, name.Position, ("file", name.Text));
            return [];
        }

        var (lines, log) = SourceText.Of(text);
        var rows = Rows([.. lines.Where(line => !line.IsBlank && !line.IsComment)], name.Text, quantity, log);
        findings.AddRange(log.Findings);
        return rows;
    }

    private static IReadOnlyList<CaseRow> Rows(IReadOnlyList<SourceLine> lines, string file, CaseQuantity quantity, FindingLog log)
    {
        if (log.Findings.Count > 0)
        {
            return [];
        }

        var head = lines.Count == 0 ? [] : Cells(lines[0], file, log);
        var units = head.Select(UnitOf).ToArray();
        if (head.Count is not (2 or 3) || units.Any(unit => unit is null))
        {
            var at = lines.Count == 0 ? new Position(1, 1) : new(lines[0].Number, 1);
            log.Fault(CaseFaults.TableHead, file, at, ("along", quantity.Along!.Name), ("of", quantity.Name));
            return [];
        }

        if (lines.Count - 1 > CaseRow.Most)
        {
            log.Wrong(CaseFaults.RowsTooMany, file, new(lines[CaseRow.Most + 1].Number, 1), ("count", lines.Count - 1), ("most", CaseRow.Most));
            return [];
        }

        var rows = new List<CaseRow>();
        foreach (var line in lines.Skip(1))
        {
            var cells = Cells(line, file, log);
            if (cells.Count != head.Count)
            {
                log.Fault(CaseFaults.TableRow, file, new(line.Number, 1), ("found", cells.Count), ("wanted", head.Count));
                continue;
            }

            Phrase Figure(int index) => cells[index] with { Text = $"{cells[index].Text} {units[index]}".TrimEnd() };
            var within = cells.Count == 3 ? CaseTolerance.Read(Figure(2), quantity.Of) : null;
            if (quantity.Along!.Read(Figure(0)) is var (place, atUnit) && quantity.Of.Read(Figure(1)) is var (value, unit) && (cells.Count == 2 || within is not null))
            {
                rows.Add(new(place, atUnit, value, value, unit, within?.At(value)));
            }
        }

        if (rows.Count == 0 && log.Findings.Count == 0)
        {
            log.Wrong(CaseFaults.RowsMissing, file, new(1, 1), ("wanted", "rows"));
        }

        return rows;
    }

    /// <summary>What a column is given in: "core (C)" is C, "growth" a plain number. Null when a bracket is left open.</summary>
    private static string? UnitOf(Phrase head)
    {
        var open = head.Text.IndexOf('(');
        return open < 0 ? "" : head.Text.EndsWith(')') ? head.Text[(open + 1)..^1].Trim() : null;
    }

    private static List<Phrase> Cells(SourceLine line, string file, FindingLog log)
    {
        var whole = new Phrase(line.Text, new(line.Number, 1), file, log);
        var cells = new List<Phrase>();
        var start = 0;
        for (var i = 0; i <= line.Text.Length; i++)
        {
            if (i == line.Text.Length || line.Text[i] == ',')
            {
                cells.Add(whole.Part(start, i));
                start = i + 1;
            }
        }

        return cells;
    }
}
