using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Shelf;

public class ShelfClockTests
{
    private static readonly Voice Metric = new(Words.Shipped, MeasureSystem.Metric);

    /// <summary>A place whose clocks go one hour ahead at 2:00 on 29 March and back at 3:00 on 25 October 2026.</summary>
    private static readonly TimeZoneInfo Summery = TimeZoneInfo.CreateCustomTimeZone(
        "Pellhaven", TimeSpan.Zero, "Pellhaven", "Pellhaven", "Pellhaven summer",
        [
            TimeZoneInfo.AdjustmentRule.CreateAdjustmentRule(
                new(2026, 1, 1), new(2026, 12, 31), TimeSpan.FromHours(1),
                TimeZoneInfo.TransitionTime.CreateFixedDateRule(new(1, 1, 1, 2, 0, 0), 3, 29),
                TimeZoneInfo.TransitionTime.CreateFixedDateRule(new(1, 1, 1, 3, 0, 0), 10, 25)),
        ]);

    [Theory]
    [InlineData("2026-11-25T10:00", "2026-11-28T16:00")]
    [InlineData("2026-11-28T15:59", "2026-11-28T16:00")]
    [InlineData("2026-11-28T16:00", "2026-12-05T16:00")]
    [InlineData("2026-11-29T00:00", "2026-12-05T16:00")]
    public void UsualReady_IsTheNextSaturdayAfternoon(string now, string ready) =>
        Assert.Equal(At(ready), ClockAt(now, TimeZoneInfo.Utc).UsualReady);

    [Theory]
    [InlineData("2026-11-28T16:00", 398, "2026-11-28T09:22")]
    [InlineData("2026-03-29T10:00", 600, "2026-03-28T23:00")]
    [InlineData("2026-10-25T10:00", 600, "2026-10-25T01:00")]
    [InlineData("2026-03-29T02:30", 60, "2026-03-29T01:00")]
    public void BakeBegins_SoLongBefore_AcrossTheChangesOfTheClock(string ready, double minutes, string begin)
    {
        // 2:30 on the first night does not exist there; it is 3:00 instead. On the second night the hour from 2:00 is there twice.
        var before = ClockAt("2026-01-01T00:00", Summery).Before(At(ready), Duration.FromMinutes(minutes));
        Assert.Equal(At(begin), before);
    }

    [Fact]
    public void Nights_LieWhereTheyFall()
    {
        var nights = ClockAt("2026-01-01T00:00", TimeZoneInfo.Utc).Nights(At("2026-11-28T16:00"), Duration.FromHours(40));
        Assert.Equal([(40.0, 34.0), (17.5, 10.0)], nights.Select(night => (night.Falls.Hours, night.Ends.Hours)));
    }

    [Fact]
    public void NightInWhichTheBreadIsReady_EndsWithIt() => Assert.Equal(
        [(1.5, 0.0)],
        ClockAt("2026-01-01T00:00", TimeZoneInfo.Utc).Nights(At("2026-11-28T00:00"), Duration.FromHours(6)).Select(night => (night.Falls.Hours, night.Ends.Hours)));

    [Fact]
    public void ShortDay_HasNoNight() => Assert.Empty(ClockAt("2026-01-01T00:00", TimeZoneInfo.Utc).Nights(At("2026-11-28T16:00"), Duration.FromHours(8)));

    [Fact]
    public void MomentInWords_IsRoundedToTheMinute()
    {
        Assert.Equal("Sat 9:54", ClockWords.DayAndTime(At("2026-11-28T09:53").AddSeconds(40), Metric));
        Assert.Equal("Sun 0:00", ClockWords.DayAndTime(At("2026-11-28T23:59").AddSeconds(30), Metric));
    }

    internal static ShelfClock ClockAt(string now, TimeZoneInfo zone) => new(new Fixed(new DateTimeOffset(At(now), zone.GetUtcOffset(At(now))), zone));

    internal static DateTime At(string text) => DateTime.ParseExact(text, "yyyy-MM-dd'T'HH:mm", System.Globalization.CultureInfo.InvariantCulture);

    private sealed class Fixed(DateTimeOffset now, TimeZoneInfo zone) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => zone;

        public override DateTimeOffset GetUtcNow() => now.ToUniversalTime();
    }
}
