using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Tests.Pictures;

public class TextWidthTests
{
    [Fact]
    public void Widths_AddUp_AndGrowWithTheType()
    {
        Assert.Equal(TextWidth.Of("ab", 10, Face.Label), TextWidth.Of("a", 10, Face.Label) + TextWidth.Of("b", 10, Face.Label), 1e-9);
        Assert.Equal(2 * TextWidth.Of("Scald", 10, Face.Cue), TextWidth.Of("Scald", 20, Face.Cue), 1e-9);
        Assert.Equal(0, TextWidth.Of("", 10, Face.Label));
    }

    /// <summary>As a browser measures it with the faces of the desk, kerning included: 68.58 and 78.99 at 10 units.</summary>
    [Fact]
    public void Widths_AreThoseOfTheFaces()
    {
        Assert.InRange(TextWidth.Of("Scald and potato", 10, Face.Label), 68.5, 70.5);
        Assert.InRange(TextWidth.Of("Scald and potato", 10, Face.Figures), 78.9, 81);
    }

    [Fact]
    public void LettersTheFacesLack_AreTakenAsWide()
    {
        Assert.Equal(20, TextWidth.Of("\u9eba\u5305", 10, Face.Label), 1e-9);
        Assert.InRange(TextWidth.Of("é", 10, Face.Label), TextWidth.Of("e", 10, Face.Label), 10);
    }

    [Fact]
    public void Fitted_NeverExceedsItsRoom_AndKeepsWhatFits()
    {
        Assert.Equal("Scald", Lettering.Name.Fitted("Scald", 200));
        for (var width = 20; width < 300; width += 7)
        {
            var text = Lettering.Name.Fitted("Potato, boiled, peeled and mashed", width);
            Assert.InRange(Lettering.Name.WidthOf(text), 0, width);
            Assert.True(text.EndsWith('…') || text.EndsWith("mashed", StringComparison.Ordinal));
        }
    }
}
