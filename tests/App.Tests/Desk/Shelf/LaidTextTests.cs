using System.Text;
using Doughwright.App.Desk.Shelf;

namespace Doughwright.App.Tests.Desk.Shelf;

public class LaidTextTests
{
    [Theory]
    [InlineData("Potato rolls", "potato-rolls")]
    [InlineData("../../etc/passwd", "etc-passwd")]
    [InlineData("Grüße aus dem Süden", "grüße-aus-dem-süden")]
    [InlineData("!!!", "recipe")]
    [InlineData("", "recipe")]
    [InlineData("<script>alert(1)</script>", "script-alert-1-script")]
    public void Title_GivesAName(string title, string name) => Assert.Equal(name, TextNames.Of(title, "recipe"));

    [Fact]
    public void LongTitle_GivesANameThatAFileSystemTakes()
    {
        foreach (var letter in new[] { "a", "ß", "語", "𝒜" })
        {
            var name = TextNames.Of(string.Concat(Enumerable.Repeat(letter, 300)), "recipe");
            Assert.InRange(Encoding.UTF8.GetByteCount(TextNames.InTurn(name).Skip(1000).First() + TextNames.Ending), 10, 255);
            Assert.DoesNotContain('\ufffd', name);
        }
    }

    [Fact]
    public void NameOfADevice_GetsANumber() => Assert.Equal("con-2", TextNames.InTurn("con").First());

    [Fact]
    public void SecondText_NeverReplacesTheFirst()
    {
        using var scratch = new Scratch();
        var texts = scratch.Folder.RecipeTexts;
        Assert.Equal("loaf", texts.Lay("loaf", "one", ""));
        Assert.Equal("loaf-2", texts.Lay("loaf", "two", ""));
        Assert.Equal("loaf-3", texts.Lay("loaf", "three", ""));
        Assert.Equal("one"u8.ToArray(), texts.Read("loaf"));
    }

    [Fact]
    public void SameText_IsNotLaidTwice()
    {
        using var scratch = new Scratch().Put("mine", "one\r\n\ufeff");
        Assert.Equal("mine", scratch.Folder.RecipeTexts.Lay("loaf", "one\r\n\ufeff", ""));
        Assert.Equal(["mine"], scratch.Folder.Recipes);
    }

    [Fact]
    public void TextThatWasTakenAway_KeepsItsName()
    {
        using var scratch = new Scratch().Put("loaf", "one");
        Assert.True(scratch.Folder.RecipeTexts.TakeAway("loaf"));
        Assert.Equal("loaf-2", scratch.Folder.RecipeTexts.Lay("loaf", "one", ""));
        Assert.True(scratch.Folder.RecipeTexts.PutBack("loaf"));
        Assert.Equal(["loaf", "loaf-2"], scratch.Folder.Recipes);
    }

    [Fact]
    public void ManyAtOnce_AllStandInTheBook()
    {
        using var scratch = new Scratch();
        var texts = scratch.Folder.RecipeTexts;
        Parallel.For(0, 40, i => texts.Lay("loaf", (i / 2).ToString(System.Globalization.CultureInfo.InvariantCulture), ""));
        Assert.Equal(20, texts.Names().Select(name => Encoding.UTF8.GetString(texts.Read(name)!)).Distinct().Count());
        Assert.Equal(20, texts.Names().Count);
    }
}
