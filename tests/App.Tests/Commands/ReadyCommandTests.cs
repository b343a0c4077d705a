using System.Text.Json;

namespace Doughwright.App.Tests.Commands;

/// <summary>ready FILE: the clock, what is refused, and what stands on the page.</summary>
public class ReadyCommandTests
{
    private static Run Of(params string[] options) => Run.Of(["ready", House.PotatoRolls, .. options]);

    [Theory]
    [InlineData("ready-by-morning", "--start", "22:00", "--by", "5:00")]
    [InlineData("ready-in-the-cottage", "--start", "14:00", "--by", "20:00", "--kitchen", "winter-cottage", "--measures", "us")]
    [InlineData("ready-too-soon", "--start", "12:00", "--by", "13:00")]
    public void Page_IsAsApproved(string name, params string[] options) => Golden.Check(name, Of(options).Output);

    [Theory]
    [InlineData("22:00", "7:00", 9 * 60)]
    [InlineData("7:00", "22:00", 15 * 60)]
    [InlineData("22:00", "22:00", 24 * 60)]
    [InlineData("22:00", "07:00+1d", 33 * 60)]
    public void Hours_RunToTheNextSuchHour_AndADayLaterWhenAsked(string start, string by, double minutes)
    {
        using var json = JsonDocument.Parse(Of("--start", start, "--by", by, "--json").Output);
        Assert.Equal(minutes, json.RootElement.GetProperty("wantedMinutes").GetDouble());
    }

    [Fact]
    public void BothHours_MustBeSaid_AndAreToldAtOnce()
    {
        var run = Of();
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--start 22:00", run.Messages, StringComparison.Ordinal);
        Assert.Contains("--by 07:00", run.Messages, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("7", "is no time of day")]
    [InlineData("7:00+0d", "does not say which day")]
    [InlineData("7:00+14d", "does not say which day")]
    [InlineData("7:00+1", "does not say which day")]
    [InlineData("25:00", "is no time of day")]
    public void WhatIsNoHour_IsTold(string by, string told)
    {
        var run = Of("--start", "22:00", "--by", by);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(told, run.Messages, StringComparison.Ordinal);
    }

    /// <summary>Heating that goes off at night is felt by the answer: more yeast for the same hour.</summary>
    [Fact]
    public void AirByTheClock_IsThatOfTheStart()
    {
        double Dose(params string[] air)
        {
            using var json = JsonDocument.Parse(Of(["--start", "22:00", "--by", "5:00", .. air, "--json"]).Output);
            return json.RootElement.GetProperty("ways")[0].GetProperty("doses")[0].GetProperty("grams").GetDouble();
        }

        Assert.True(Dose("--air", "21C@7:00,16C@22:30") > 1.2 * Dose());
    }
}
