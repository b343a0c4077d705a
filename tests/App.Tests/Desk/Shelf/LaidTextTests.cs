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
        var folder = scratch.Folder.RecipeTexts;
        Assert.Equal("loaf", LaidText.Lay(folder, "loaf", "one"u8.ToArray()));
        Assert.Equal("loaf-2", LaidText.Lay(folder, "loaf", "two"u8.ToArray()));
        Assert.Equal("loaf-3", LaidText.Lay(folder, "loaf", "three"u8.ToArray()));
        Assert.Equal("one"u8.ToArray(), folder.Read("loaf"));
    }

    [Fact]
    public void SameBytes_AreNotLaidTwice()
    {
        using var scratch = new Scratch().Put("mine", "one\r\n\ufeff");
        Assert.Equal("mine", LaidText.Lay(scratch.Folder.RecipeTexts, "loaf", File.ReadAllBytes(Path.Join(scratch.Data.Recipes, "mine.yaml"))));
        Assert.Equal(["mine"], scratch.Folder.Recipes);
    }

    [Fact]
    public void NamesTakenByWhatIsNoText_AreLeftAlone()
    {
        using var scratch = new Scratch();
        Directory.CreateDirectory(Path.Join(scratch.Data.Recipes, "loaf.yaml"));
        File.CreateSymbolicLink(Path.Join(scratch.Data.Recipes, "loaf-2.yaml"), Path.Join(scratch.Data.Root, "elsewhere"));
        Assert.Equal("loaf-3", LaidText.Lay(scratch.Folder.RecipeTexts, "loaf", "one"u8.ToArray()));
        Assert.False(File.Exists(Path.Join(scratch.Data.Root, "elsewhere")));
    }

    [Fact]
    public void ManyAtOnce_AllLie_AndNothingUnfinishedIsLeft()
    {
        using var scratch = new Scratch();
        var folder = scratch.Folder.RecipeTexts;
        Parallel.For(0, 40, i => LaidText.Lay(folder, "loaf", Encoding.UTF8.GetBytes((i / 2).ToString(System.Globalization.CultureInfo.InvariantCulture))));
        Assert.Equal(20, folder.Names().Select(name => Encoding.UTF8.GetString(folder.Read(name)!)).Distinct().Count());
        Assert.Equal(20, Directory.EnumerateFileSystemEntries(scratch.Data.Recipes).Count());
    }

    [Fact]
    public void FolderThatCannotBeWritten_IsAFault_AndLeavesNothing()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch.Data.Recipes, "a file where the folder should be");
        Assert.ThrowsAny<IOException>(() => LaidText.Lay(scratch.Folder.RecipeTexts, "loaf", "one"u8.ToArray()));
        Assert.Equal([scratch.Data.Recipes], Directory.EnumerateFileSystemEntries(scratch.Data.Root));
    }
}
