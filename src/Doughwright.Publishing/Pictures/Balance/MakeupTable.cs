using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Balance;

/// <summary>The make-up of a dough in figures. The shares of every line, and the totals, add up as printed.</summary>
internal static class MakeupTable
{
    public static FigureTable Of(Makeup makeup, Formula formula, Voice voice)
    {
        var figures = new MakeupFigures(makeup, formula);
        var matters = MatterOf.All.Where(matter => matter != Matter.Unknown || MatterOf.Total(makeup, matter) > 0).ToList();
        var unit = voice.Say("unit.grams");
        var dough = new FigureRow(
            voice.Say("makeup.dough"),
            [.. matters.Select(matter => Cell(figures.Total(matter), true, voice)), Show.Number(figures.Dough, 1)],
            RowTone.Sum);
        return new(
            voice.Say("makeup.caption"),
            [
                new(voice.Say("makeup.head-line")),
                .. matters.Select(matter => new FigureHead(MakeupWords.Name(matter, makeup, voice), unit)),
                new(voice.Say("makeup.head-total"), unit),
            ],
            [.. makeup.Rows.Select((row, index) => Row(row, index, figures, matters, formula, voice))],
            figures.PercentOfDough is not { } all ? [dough] :
            [
                dough,
                new(voice.Say("makeup.percent"), [.. matters.Select(matter => Cell(figures.Percent(matter) ?? 0, true, voice)), Show.Number(all, 1)]),
            ]);
    }

    private static FigureRow Row(MakeupRow row, int index, MakeupFigures figures, IReadOnlyList<Matter> matters, Formula formula, Voice voice) => new(
        MakeupWords.Line(row, formula),
        [.. matters.Select(matter => Cell(figures.Cell(index, matter), MatterOf.Grams(row, matter) is not null, voice)), Show.Number(figures.Line(index), 1)]);

    private static string Cell(double value, bool known, Voice voice) =>
        !known ? voice.Words["not-known-short"] : value == 0 ? FigureTable.Nothing : Show.Number(value, 1);
}
