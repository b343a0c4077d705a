using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Balance;

/// <summary>The figures as printed, grams and percent to one decimal, the same in picture and table. What is printed adds up.</summary>
internal sealed class MakeupFigures
{
    private readonly RoundedTable grams;
    private readonly IReadOnlyList<double>? percents;

    public MakeupFigures(Makeup makeup, Formula formula)
    {
        grams = RoundedTable.Of([.. makeup.Rows.Select(row => (double[])[.. MatterOf.All.Select(matter => Math.Max(0, MatterOf.Grams(row, matter) ?? 0))])]);
        percents = formula.Flour > Mass.Zero
            ? Show.ShareOut([.. MatterOf.All.Select(matter => Math.Max(0, 100 * MatterOf.Total(makeup, matter) / formula.Flour.Grams))], 1)
            : null;
    }

    public double Cell(int row, Matter matter) => grams.Cell(row, (int)matter);

    public double Line(int row) => grams.RowTotal(row);

    public double Total(Matter matter) => grams.ColumnTotal((int)matter);

    public double Dough => grams.Total;

    /// <summary>On all flour; null without flour.</summary>
    public double? Percent(Matter matter) => percents?[(int)matter];

    /// <summary>All of them together.</summary>
    public double? PercentOfDough => percents?.Sum();
}
