using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Tests.Text;

/// <summary>Authors' names at the head of a label and within a sentence.</summary>
public sealed class CapitalTests
{
    [Theory]
    [InlineData("Scald", "scald")]
    [InlineData("NFDM", "NFDM")]
    [InlineData("Old Dough", "Old Dough")]
    [InlineData("potato", "potato")]
    [InlineData("W", "W")]
    [InlineData("", "")]
    public void Small_LeavesWhatHasACapitalFurtherOn(string name, string within) => Assert.Equal(within, Capital.Small(name));
}
