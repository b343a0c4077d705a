using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Wording;

public class SaidOnceTests
{
    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    private static string Fill(string words, double now, double low, double high) => Voice.Fill(words, name => name switch
    {
        "now" => Duration.FromMinutes(now),
        "low" => Duration.FromMinutes(low),
        "high" => Duration.FromMinutes(high),
        _ => null,
    });

    [Theory]
    [InlineData(20, 18, 22, "about 20\u00a0min (18\u00a0min to 22\u00a0min) is worked out")]
    [InlineData(20.1, 19.8, 20.4, "about 20\u00a0min is worked out")]
    [InlineData(20.1, 19.3, 19.4, "about 20\u00a0min (19\u00a0min) is worked out")]
    public void BracketThatOnlyRepeatsTheFigureBeforeIt_IsLeftOut(double now, double low, double high, string said) =>
        Assert.Equal(said, Fill("about {now} ({low} to {high}) is worked out", now, low, high));

    [Theory]
    [InlineData(2, 3, "2\u00a0min to 3\u00a0min more")]
    [InlineData(2.1, 2.2, "2\u00a0min more")]
    public void RangeWhoseEndsReadAlike_IsOneFigure(double low, double high, string said) => Assert.Equal(said, Fill("{low} to {high} more", 0, low, high));

    /// <summary>What is not known stays for a test to find, and ways from one place to another are no ranges.</summary>
    [Fact]
    public void OtherWords_StayAsTheyAre()
    {
        Assert.Equal("{start} ({end})", Fill("{start} ({end})", 1, 1, 1));
        Assert.Equal("1\u00a0min then 1\u00a0min", Fill("{low} then {high}", 1, 1, 1));
    }
}
