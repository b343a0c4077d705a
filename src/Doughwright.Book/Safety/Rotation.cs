using System.Globalization;

namespace Doughwright.Book.Safety;

/// <summary>Which copies of the day are kept: one of each of the last days, and one of each of the last weeks.</summary>
internal static class Rotation
{
    private const string Days = "yyyy-MM-dd";

    /// <summary>So many of the last days that have a copy keep it.</summary>
    private const int DaysKept = 7;

    /// <summary>So many of the last weeks that have a copy keep their latest.</summary>
    private const int WeeksKept = 4;

    public static string NameOf(DateTimeOffset now) => now.UtcDateTime.ToString(Days, CultureInfo.InvariantCulture);

    /// <summary>
    /// Of files named by their day, those that are neither among the last days nor the latest of one of the last weeks. Others are never let go, and those of
    /// days that are still to come neither push any out nor go: the clock was wrong, then or now.
    /// </summary>
    public static IEnumerable<string> TooOld(IEnumerable<string> files, DateTimeOffset now)
    {
        var today = DateOnly.FromDateTime(now.UtcDateTime);
        var dated = files
            .Select(file => (File: file, IsDay: DateOnly.TryParseExact(Path.GetFileNameWithoutExtension(file), Days, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day), Day: day))
            .Where(file => file.IsDay && file.Day <= today)
            .OrderByDescending(file => file.Day)
            .ToArray();
        var weeks = dated
            .GroupBy(file => (ISOWeek.GetYear(file.Day.ToDateTime(default)), ISOWeek.GetWeekOfYear(file.Day.ToDateTime(default))))
            .Take(WeeksKept)
            .Select(week => week.First().File);
        return dated.Select(file => file.File).Except(dated.Take(DaysKept).Select(file => file.File).Concat(weeks));
    }
}
