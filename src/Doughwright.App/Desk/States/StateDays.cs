using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.States;

/// <summary>Days as states go by them: "12 November", with the year where it is another one than this.</summary>
internal sealed class StateDays(TimeProvider clock, Voice voice)
{
    /// <summary>The day where the desk stands.</summary>
    public DateOnly DayOf(DateTimeOffset at) => DateOnly.FromDateTime(Local(at));

    public string Day(DateTimeOffset at) => Day(DayOf(at));

    public string Day(DateOnly day) => voice.Say(
        day.Year == DayOf(clock.GetUtcNow()).Year ? "states.day" : "states.day-year",
        ("day", day.Day), ("month", voice.Words[FormattableString.Invariant($"month.{day.Month}")]), ("year", FormattableString.Invariant($"{day.Year}")));

    public string Time(DateTimeOffset at) => ClockWords.Time(TimeOnly.FromDateTime(Local(at)), voice);

    /// <summary>"12 November 16:04".</summary>
    public string DayAndTime(DateTimeOffset at) => voice.Say("states.day-and-time", ("day", Day(at)), ("time", Time(at)));

    private DateTime Local(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, clock.LocalTimeZone).DateTime;
}
