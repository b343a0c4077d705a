using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Shelf;

public class ShelfAskedTests
{
    private static readonly Voice Metric = new(Words.Shipped, MeasureSystem.Metric);

    [Fact]
    public void NothingAsked_IsTheUsual()
    {
        var asked = Read();
        Assert.Equal(ShelfClockTests.At("2026-11-28T16:00"), asked.Ready);
        Assert.Equal("16:00", asked.TimeTyped);
        Assert.Null(asked.Kitchen);
        Assert.Null(asked.TimeRefused);
        Assert.Empty(asked.Refused);
    }

    [Theory]
    [InlineData("7:05", "2026-11-30T07:05", "7:05")]
    [InlineData("07:05", "2026-11-30T07:05", "7:05")]
    [InlineData("18", "2026-11-30T18:00", "18:00")]
    [InlineData(" 6.30 ", "2026-11-30T06:30", "6:30")]
    [InlineData("0:00", "2026-11-30T00:00", "0:00")]
    public void Asked_IsUsed(string time, string ready, string shown)
    {
        var asked = Read(("day", "2026-11-30"), ("time", time), ("kitchen", "mountain"));
        Assert.Equal(ShelfClockTests.At(ready), asked.Ready);
        Assert.Equal(shown, asked.TimeTyped);
        Assert.Equal("mountain", asked.Kitchen);
        Assert.Null(asked.TimeRefused);
    }

    [Theory]
    [InlineData("24:00")]
    [InlineData("noon")]
    [InlineData("7:5:3")]
    [InlineData("-1")]
    [InlineData("<b>")]
    public void TimeThatIsNone_IsRefused_AndStaysInItsField(string time)
    {
        var asked = Read(("time", time));
        Assert.Equal(ShelfClockTests.At("2026-11-28T16:00"), asked.Ready);
        Assert.Equal(time, asked.TimeTyped);
        Assert.Contains(time, asked.TimeRefused, StringComparison.Ordinal);
        Assert.Contains("16:00", asked.TimeRefused, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("day", "2026-02-30")]
    [InlineData("day", "saturday")]
    [InlineData("day", "9999-12-31")]
    [InlineData("day", "0001-01-01")]
    [InlineData("kitchen", "moon")]
    [InlineData("kitchen", "../mountain")]
    public void OtherValueThatIsNone_IsRefusedWithItsReason(string name, string value)
    {
        var asked = Read((name, value));
        Assert.Equal(ShelfClockTests.At("2026-11-28T16:00"), asked.Ready);
        Assert.Null(asked.Kitchen);
        Assert.Contains(value, Assert.Single(asked.Refused), StringComparison.Ordinal);
    }

    [Fact]
    public void DayOfALink_StaysInTheList_WithItsDate()
    {
        var sentence = ShelfSentence.Of(Read(("day", "2026-11-14")), Clock, [], null, Metric);
        Assert.Equal(new Choice("2026-11-14", "Saturday 14 November", true), sentence.Days[0]);
        Assert.Equal(8, sentence.Days.Count);
        Assert.Equal([Words.Shipped["shelf.past"]], sentence.Said);
    }

    [Fact]
    public void Days_AreTheNextSeven_EachByItsName()
    {
        var sentence = ShelfSentence.Of(Read(), Clock, [], null, Metric);
        Assert.Equal(["Wednesday", "Thursday", "Friday", "Saturday", "Sunday", "Monday", "Tuesday"], sentence.Days.Select(day => day.Name));
        Assert.Equal("2026-11-28", Assert.Single(sentence.Days, day => day.IsChosen).Value);
    }

    [Fact]
    public void Sentence_KeepsEverySign_AndEveryControl()
    {
        var parts = SentencePart.Cut("Ready on {day} at {time}, in the {kitchen}: begin.");
        Assert.Equal([null, "day", null, "time", null, "kitchen", null], parts.Select(part => part.Slot));
        Assert.Equal("Ready on  at , in the : begin.", string.Concat(parts.Select(part => part.Words)));
        Assert.Equal(":", parts[5].Words);
    }

    private static ShelfClock Clock => ShelfClockTests.ClockAt("2026-11-25T10:00", TimeZoneInfo.Utc);

    private static ShelfAsked Read(params (string Name, string Value)[] values) =>
        ShelfAsked.Read(name => values.FirstOrDefault(value => value.Name == name).Value, Clock, ["mountain", "winter-cottage"], named => named, Metric);
}
