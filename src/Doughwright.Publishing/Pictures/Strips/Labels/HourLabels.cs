using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>The hours along a strip, as far apart as their figures need.</summary>
internal static class HourLabels
{
    private const double Apart = 44;

    /// <summary>In the tall strip the lines end before what is written beside the bench, and begin again in the column of the hours.</summary>
    private const double Beside = 26;
    private const double Column = 24;
    private static readonly int[] Steps = [1, 2, 3, 6, 12, 24];

    /// <summary>Full hours with a place of their own: not those within a folded wait.</summary>
    public static IEnumerable<int> Hours(Sheet sheet)
    {
        var time = sheet.Frame.Time;
        var step = Steps.FirstOrDefault(hours => hours * 60 * time.PerMinute >= Apart, Steps[^1]);
        for (var hour = 0; hour * 60 <= sheet.Plan.End; hour += step)
        {
            if (!time.Folds.Any(fold => fold.From < hour * 60 && hour * 60 < fold.To))
            {
                yield return hour;
            }
        }
    }

    public static string Text(Sheet sheet, int hour) => sheet.Words.Say("strip-hour", ("hour", hour));

    public static void DrawWide(Sheet sheet)
    {
        foreach (var hour in Hours(sheet))
        {
            var x = sheet.Place(hour * 60);
            sheet.Svg.Line("hour", x, 22, x, sheet.Bench + sheet.Drop + WideLayout.UnderBench - 8);
            sheet.Placer.Put(Type.Hour, x + 4, 31, Text(sheet, hour));
        }
    }

    public static void LinesTall(Sheet sheet)
    {
        foreach (var hour in Hours(sheet))
        {
            var y = sheet.Place(hour * 60);
            sheet.Svg.Line("hour", 0, y, sheet.Bench + Beside, y).Line("hour", sheet.Frame.Width - Column, y, sheet.Frame.Width, y);
        }
    }

    public static void FiguresTall(Sheet sheet)
    {
        foreach (var hour in Hours(sheet))
        {
            sheet.Placer.Put(Type.Hour, sheet.Frame.Width, sheet.Place(hour * 60) - 4, Text(sheet, hour), Drawing.Anchor.End);
        }
    }
}
