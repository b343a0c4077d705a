using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>
/// Total formula, each part on its own base, and the final dough, side by side as far as they fit. What is printed in a column adds up to its last row.
/// </summary>
internal sealed class FormulaTables(Formula formula, Voice voice)
{
    private const int PairsBeside = 4;

    /// <summary>One column pair: weights and percentages by row key.</summary>
    private sealed record Block(string Head, IReadOnlyDictionary<string, Cell> Cells);

    /// <param name="Typed">What was typed in another measure than that of the table, of one line alone; null for sums.</param>
    /// <param name="IsKnown">Whether all of it could be weighed; what could not is no part of a sum.</param>
    private sealed record Cell(double Grams, double? Percent, string? Typed = null, bool IsKnown = true);

    /// <summary>Names of the rows by key, in the order of the recipe; parts after ingredients.</summary>
    private readonly Dictionary<string, string> names = [];

    public void WriteTo(Page page)
    {
        var inside = formula.Components.Where(component => component.ShareInDough > 0).ToArray();
        Block[] blocks = [Total(inside), .. inside.Select(Own)];
        foreach (var chunk in blocks.Chunk(PairsBeside))
        {
            page.Gap();
            Write(page, chunk);
        }

        foreach (var component in formula.Components.Where(component => component.ShareInDough == 0))
        {
            page.Gap();
            Write(page, [Own(component)]);
        }
    }

    /// <summary>Every ingredient of the dough once, on all its flour.</summary>
    private Block Total(IReadOnlyList<ComponentFormula> inside)
    {
        var cells = new Dictionary<string, Cell>();
        foreach (var component in inside)
        {
            foreach (var line in component.Lines.Where(line => line.Source.Uses is null))
            {
                var key = Key(line);
                names.TryAdd(key, line.Name);
                var grams = line.Mass.Grams * component.ShareInDough;
                var sum = grams + (cells.TryGetValue(key, out var before) ? before.Grams : 0);
                cells[key] = new(
                    sum,
                    formula.Flour > Mass.Zero ? 100 * sum / formula.Flour.Grams : null,
                    IsKnown: line.IsMassKnown && before is not { IsKnown: false });
            }
        }

        return new(voice.Words["head.total-formula"], cells);
    }

    private Block Own(ComponentFormula component)
    {
        var cells = new Dictionary<string, Cell>();
        foreach (var line in component.Lines)
        {
            var key = Key(line);
            names.TryAdd(key, line.Source.Uses is null ? line.Name : voice.Say("row-of-part", ("name", line.Name)));
            var before = cells.GetValueOrDefault(key);
            cells[key] = new(
                (before?.Grams ?? 0) + line.Mass.Grams,
                !line.IsMassKnown ? before?.Percent ?? 0 : line.Percent is { } percent ? (before?.Percent ?? 0) + percent.Value : null,
                before is null ? TypedMeasure.Of(line, voice.Measures) : null,
                line.IsMassKnown && before is not { IsKnown: false });
        }

        return new(component.Name, cells);
    }

    private static string Key(LineFormula line) =>
        line.Source.Uses is { } part ? "part " + part : "line " + line.Kind;

    private void Write(Page page, IReadOnlyList<Block> blocks)
    {
        var rows = names.Keys.Where(key => blocks.Any(block => block.Cells.ContainsKey(key)))
            .OrderBy(key => key.StartsWith("part ", StringComparison.Ordinal))
            .ToArray();
        var columns = new List<Table.Column> { new(voice.Words["head.ingredient"], Align.Left) };
        var cells = rows.ToDictionary(row => row, row => new List<string> { names[row] });
        var totals = new List<string> { voice.Words["together"] };
        foreach (var block in blocks)
        {
            columns.Add(new(block.Head, Align.Right, voice.Measures == MeasureSystem.Us ? "" : voice.Words["head.grams"]));
            columns.Add(new("", Align.Right, voice.Words["head.percent"]));
            var (grams, gramsTotal) = Grams(block);
            var (percents, percentTotal) = Percents(block);
            foreach (var row in rows)
            {
                var cell = block.Cells.GetValueOrDefault(row);
                var weight = cell is { IsKnown: false } ? voice.Words["not-known"] : grams.GetValueOrDefault(row, "");
                cells[row].Add(cell?.Typed is { } typed ? voice.Say("row-typed", ("typed", typed), ("weight", weight)) : weight);
                cells[row].Add(cell is { IsKnown: false } ? "" : percents.GetValueOrDefault(row, ""));
            }

            totals.Add(gramsTotal);
            totals.Add(percentTotal);
        }

        var table = new Table([.. columns]);
        foreach (var row in rows)
        {
            table.Add([.. cells[row]]);
        }

        table.AddTotal([.. totals]);
        table.WriteTo(page, 0);
    }

    private (Dictionary<string, string> Cells, string Total) Grams(Block block)
    {
        var keys = block.Cells.Keys.ToArray();
        var grams = block.Cells.Values.Select(cell => cell.Grams).ToArray();
        if (voice.Measures == MeasureSystem.Us || grams.Any(value => value < 0))
        {
            var shown = keys.ToDictionary(key => key, key => Show.Mass(Mass.FromGrams(block.Cells[key].Grams), voice.Measures));
            return (shown, Show.Mass(Mass.FromGrams(grams.Sum()), voice.Measures));
        }

        // Whole grams unless a small one needs its decimal; then the sum has one too.
        var decimals = grams.Any(value => value < 10 && Math.Abs(value - Math.Round(value)) >= 0.05) ? 1 : 0;
        var shares = Show.ShareOut(grams, decimals);
        return (keys.Zip(shares).ToDictionary(pair => pair.First, pair => Show.Number(pair.Second, decimals)), Show.Number(shares.Sum(), decimals));
    }

    private (Dictionary<string, string> Cells, string Total) Percents(Block block)
    {
        if (block.Cells.Values.Any(cell => cell.Percent is null or < 0))
        {
            return ([], voice.Words["not-known"]);
        }

        var shares = Show.ShareOut([.. block.Cells.Values.Select(cell => cell.Percent!.Value)], 1);
        return (block.Cells.Keys.Zip(shares).ToDictionary(pair => pair.First, pair => Show.Number(pair.Second, 1)), Show.Number(shares.Sum(), 1));
    }
}
