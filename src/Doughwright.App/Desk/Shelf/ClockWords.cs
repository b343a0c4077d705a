using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>Days and times of day in words.</summary>
internal static class ClockWords
{
    /// <summary>"16:00".</summary>
    public static string Time(TimeOnly time, Voice voice) => voice.Text(Duration.FromMinutes(time.Hour * 60 + time.Minute), "column");

    /// <summary>"Fri 17:42", to the nearest minute.</summary>
    public static string DayAndTime(DateTime moment, Voice voice)
    {
        var shown = moment.AddSeconds(30);
        return voice.Say("shelf.day-and-time", ("day", Short(shown.DayOfWeek, voice)), ("time", Time(TimeOnly.FromDateTime(shown), voice)));
    }

    public static string Day(DayOfWeek day, Voice voice) => voice.Words["day." + Voice.Kebab(day.ToString())];

    /// <summary>"Saturday 28 November".</summary>
    public static string Date(DateOnly date, Voice voice) => voice.Say(
        "shelf.date",
        ("weekday", Day(date.DayOfWeek, voice)),
        ("day", date.Day),
        ("month", voice.Words[FormattableString.Invariant($"month.{date.Month}")]));

    private static string Short(DayOfWeek day, Voice voice) => voice.Words["day-short." + Voice.Kebab(day.ToString())];
}
