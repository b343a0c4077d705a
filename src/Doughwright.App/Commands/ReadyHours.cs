using System.Globalization;
using Doughwright.Engine.Quantities;

namespace Doughwright.App.Commands;

/// <summary>When work starts and when it is to be ready. The clock ends here: the engine knows the time between the two.</summary>
/// <param name="Start">Minutes after midnight.</param>
internal sealed record ReadyHours(int Start, Duration Wanted)
{
    private const int MinutesOfDay = 24 * 60;

    /// <summary>As long as a step may be.</summary>
    private const int MostDays = 14;

    /// <summary>Both must be said. "07:00" is the next seven o'clock after the start, "07:00+1d" that of the day after it.</summary>
    public static ReadyHours? Read(Given given, Options options)
    {
        var start = Said(given, options.Start, "start-wanted") is { } from ? AirText.Clock(given, options.Start.Name, from) : null;
        if (Said(given, options.By, "by-wanted") is not { } typed)
        {
            return null;
        }

        var plus = typed.IndexOf('+');
        var days = plus < 0 ? 0 : Days(given, options.By.Name, typed, typed[(plus + 1)..].Trim());
        var by = AirText.Clock(given, options.By.Name, (plus < 0 ? typed : typed[..plus]).Trim());
        if (start is not { } first || by is not { } end || days is not { } later)
        {
            return null;
        }

        var minutes = (end - first + MinutesOfDay) % MinutesOfDay;
        return new(first, Duration.FromMinutes((minutes == 0 ? MinutesOfDay : minutes) + (later * MinutesOfDay)));
    }

    /// <summary>Time of day so long after the start, with the days that have passed since its midnight.</summary>
    public (string Clock, int Days) After(Duration elapsed)
    {
        var minutes = Start + (int)Math.Round(elapsed.Minutes, MidpointRounding.AwayFromZero);
        var (days, left) = (minutes / MinutesOfDay, minutes % MinutesOfDay);
        return (string.Create(CultureInfo.InvariantCulture, $"{left / 60}:{left % 60:00}"), days);
    }

    private static string? Said(Given given, System.CommandLine.Option<string[]> option, string fault)
    {
        if (!given.Has(option))
        {
            given.Faults.Add(fault, ("example", given.Example(option)));
        }

        return given.One(option);
    }

    private static int? Days(Given given, string option, string typed, string days)
    {
        if (days.EndsWith('d') && int.TryParse(days[..^1].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and < MostDays)
        {
            return count;
        }

        given.Faults.Add("by-days-wanted", ("option", option), ("given", typed), ("most", MostDays - 1));
        return null;
    }
}
