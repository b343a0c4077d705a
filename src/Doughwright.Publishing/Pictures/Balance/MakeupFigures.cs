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
            ? Alike([.. MatterOf.All.Select(matter => Math.Max(0, 100 * MatterOf.Total(makeup, matter) / formula.Flour.Grams))])
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

    /// <summary>
    /// Water and the like stand elsewhere as well, so each is rounded as it is there, and the rest takes what is then missing from the rounded sum.
    /// Where there is too little of the rest for that, all share it.
    /// </summary>
    private static IReadOnlyList<double> Alike(IReadOnlyList<double> parts)
    {
        var tenths = parts.Select(Tenths).ToArray();
        tenths[(int)Matter.Rest] += Tenths(parts.Sum()) - tenths.Sum();
        return tenths[(int)Matter.Rest] < 0 || (parts[(int)Matter.Rest] > 0 && tenths[(int)Matter.Rest] == 0)
            ? Show.ShareOut(parts, 1)
            : [.. tenths.Select(value => value / 10)];
    }

    private static double Tenths(double value) => Math.Round(Math.Round(value * 10, 6), MidpointRounding.AwayFromZero);
}
