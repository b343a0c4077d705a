using Doughwright.App.Text;

namespace Doughwright.App.Tests.Text;

public class PageTests
{
    [Fact]
    public void NoBreakSpace_IsNeverBroken() =>
        Assert.Equal(["about", "1\u00a0h\u00a045\u00a0min"], Page.Wrap("about 1\u00a0h\u00a045\u00a0min", 12));

    [Fact]
    public void LongWord_IsCutAtTheEdge() => Assert.Equal(["aaaa", "aaaa", "aa b"], Page.Wrap("aaaaaaaaaa b", 4));

    [Fact]
    public void WideLetters_TakeTwoColumns_AndMarksNone()
    {
        Assert.Equal(4, Page.WidthOf("\u9eba\u5305"));
        Assert.Equal(1, Page.WidthOf("e\u0301"));
    }

    [Fact]
    public void Columns_LineUp()
    {
        var page = new Page();
        var table = new Table(new("Name", Align.Left), new("g", Align.Right));
        table.Add("flour", "400");
        table.Add("\u9eba", "7");
        table.AddTotal("together", "407");
        table.WriteTo(page, 0);
        Assert.All(page.ToString().TrimEnd('\n').Split('\n'), line => Assert.Equal(13, Page.WidthOf(line)));
    }
}
