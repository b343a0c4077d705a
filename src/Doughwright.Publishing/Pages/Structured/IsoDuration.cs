using System.Globalization;
using System.Text;
using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pages.Structured;

/// <summary>Durations as ISO 8601 writes them, for programs: "PT1H45M". Whole minutes; no parts above the day, because a month has no length.</summary>
internal static class IsoDuration
{
    /// <param name="time">Zero or longer.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is below zero.</exception>
    public static string Of(Duration time)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(time.Minutes, 0);
        var minutes = (long)Math.Round(time.Minutes, MidpointRounding.AwayFromZero);
        (long Count, char Unit)[] clock = [(minutes / 60 % 24, 'H'), (minutes % 60, 'M')];
        var written = new StringBuilder("P");
        if (minutes >= 1440)
        {
            written.Append(CultureInfo.InvariantCulture, $"{minutes / 1440}D");
        }

        if (clock.Any(part => part.Count > 0) || minutes == 0)
        {
            written.Append('T');
        }

        foreach (var (count, unit) in clock.Where(part => part.Count > 0))
        {
            written.Append(CultureInfo.InvariantCulture, $"{count}{unit}");
        }

        return minutes == 0 ? written.Append("0M").ToString() : written.ToString();
    }
}
