using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Strips;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The clock on the wall: when a bake must begin, and where the nights lie. The engine knows elapsed time only.</summary>
internal sealed class ShelfClock(TimeProvider time)
{
    private const int UsualHour = 16;
    private static readonly TimeOnly NightFalls = new(22, 30);
    private static readonly TimeOnly NightEnds = new(6, 0);

    /// <summary>Day and time here.</summary>
    public DateTime Now => time.GetLocalNow().DateTime;

    /// <summary>What the clock here showed at a moment.</summary>
    public DateTime Here(DateTimeOffset moment) => TimeZoneInfo.ConvertTime(moment, time.LocalTimeZone).DateTime;

    /// <summary>Afternoon of the next Saturday.</summary>
    public DateTime UsualReady
    {
        get
        {
            var now = Now;
            var saturday = now.Date.AddDays((DayOfWeek.Saturday - now.DayOfWeek + 7) % 7).AddHours(UsualHour);
            return saturday > now ? saturday : saturday.AddDays(7);
        }
    }

    /// <summary>What the clock shows so long before another time here. A night on which the clocks are changed has its own length.</summary>
    public DateTime Before(DateTime here, Duration elapsed) => TimeZoneInfo.ConvertTimeFromUtc(Moment(here).AddMinutes(-elapsed.Minutes), time.LocalTimeZone);

    /// <summary>Nights before a time here, the longest ago first.</summary>
    public IReadOnlyList<Night> Nights(DateTime ready, Duration span)
    {
        var nights = new List<Night>();
        for (var evening = Before(ready, span).Date.AddDays(-1); evening <= ready.Date; evening = evening.AddDays(1))
        {
            var falls = Ahead(ready, evening + NightFalls.ToTimeSpan());
            var ends = Ahead(ready, evening.AddDays(1) + NightEnds.ToTimeSpan());
            if (ends < span && falls > Duration.Zero)
            {
                nights.Add(new(falls < span ? falls : span, ends > Duration.Zero ? ends : Duration.Zero));
            }
        }

        return nights;
    }

    private Duration Ahead(DateTime ready, DateTime here) => Duration.FromMinutes((Moment(ready) - Moment(here)).TotalMinutes);

    /// <summary>A time that the clock leaves out in spring is the time it shows instead.</summary>
    private DateTime Moment(DateTime here)
    {
        var zone = time.LocalTimeZone;
        var shown = DateTime.SpecifyKind(here, DateTimeKind.Unspecified);
        while (zone.IsInvalidTime(shown))
        {
            shown = shown.AddMinutes(30);
        }

        return TimeZoneInfo.ConvertTimeToUtc(shown, zone);
    }
}
