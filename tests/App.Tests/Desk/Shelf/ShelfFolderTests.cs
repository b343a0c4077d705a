using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Opening;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Shelf;

/// <summary>What a new book begins with, and that nobody else writes in one that is open.</summary>
public sealed class ShelfFolderTests : IDisposable
{
    private readonly DataFolder data = new(Directory.CreateTempSubdirectory("shelf-").FullName);

    [Fact]
    public void FirstRun_LaysTheShippedTexts()
    {
        using var shelf = Open();
        Assert.Contains("potato-rolls", shelf.Recipes);
        Assert.Contains("mountain", shelf.Kitchens);
        Assert.Equal(File.ReadAllBytes(House.PotatoRolls), shelf.Recipe("potato-rolls"));
    }

    [Fact]
    public void TextsThatLayInTheFolder_AreLaidIntoTheBook_AndStayThere()
    {
        Put("mine", "x");
        using (var shelf = Open())
        {
            Assert.Equal(["mine"], shelf.Recipes);
            Assert.Contains("mountain", shelf.Kitchens);
        }

        Put("later", "y");
        using var again = Open();
        Assert.Equal(["mine"], again.Recipes);
        Assert.Equal("x", File.ReadAllText(Path.Join(data.Recipes, "mine.yaml")));
    }

    [Fact]
    public void BookThatIsOpen_IsNotOpenedAgain_AndSaysSo()
    {
        using var shelf = Open();
        Assert.Equal(BookTrouble.InUse, Assert.Throws<BookException>(Open).Trouble);
    }

    [Fact]
    public void FileWhereTheFolderShouldBe_IsAFault()
    {
        var file = new DataFolder(Path.Join(data.Root, "x"));
        File.WriteAllText(file.Root, "a file where the folder should be");
        Assert.ThrowsAny<IOException>(() => ShelfFolder.Open(file, TimeProvider.System, Words.Shipped));
        Assert.Equal([file.Root], Directory.GetFileSystemEntries(data.Root));
    }

    [Fact]
    public void WhatIsNoText_IsToldWithItsTrouble()
    {
        Put("good", "x");
        Put("with space", "x");
        Put("größe", "x");
        Put("%2e%2e", "x");
        Put("CON", "x");
        Put("..", "x");
        Put("a\nb", "x");
        Put("a%2Fb", "x");
        var inside = data.Recipes;
        Directory.CreateDirectory(Path.Join(inside, "folder.yaml"));
        File.CreateSymbolicLink(Path.Join(inside, "link.yaml"), "/etc/hostname");
        File.CreateSymbolicLink(Path.Join(inside, "broken.yaml"), "/nowhere/at/all");
        File.WriteAllBytes(Path.Join(inside, "huge.yaml"), new byte[TextFolder.LargestText + 1]);
        File.WriteAllBytes(Path.Join(inside, "latin.yaml"), [0x47, 0x72, 0xfc, 0xdf]);
        File.WriteAllText(Path.Join(inside, "notes.txt"), "x");

        using var shelf = Open();

        Assert.Equal(["%2e%2e", "CON", "good", "größe", "with space"], shelf.Recipes);
        var left = shelf.Left.All().ToDictionary(text => text.Name, text => text.Trouble);
        Assert.Equal(8, left.Count);
        Assert.All(["..", "a\nb", "a%2Fb"], name => Assert.Equal(TextTrouble.Name, left[name]));
        Assert.Equal(TextTrouble.Folder, left["folder"]);
        Assert.Equal(TextTrouble.Link, left["link"]);
        Assert.Equal(TextTrouble.Link, left["broken"]);
        Assert.Equal(TextTrouble.TooLarge, left["huge"]);
        Assert.Equal(TextTrouble.NotUtf8, left["latin"]);
    }

    [Theory]
    [InlineData("../secret")]
    [InlineData("..")]
    [InlineData("")]
    [InlineData("/etc/hostname")]
    [InlineData("potato-rolls.yaml")]
    [InlineData("POTATO-ROLLS")]
    public void NameThatIsNotThere_ReadsNothing(string name)
    {
        using var shelf = Open();
        Assert.Null(shelf.Recipe(name));
    }

    public void Dispose() => Directory.Delete(data.Root, recursive: true);

    private ShelfFolder Open() => ShelfFolder.Open(data, TimeProvider.System, Words.Shipped);

    private void Put(string name, string text)
    {
        Directory.CreateDirectory(data.Recipes);
        File.WriteAllText(Path.Join(data.Recipes, name + ".yaml"), text);
    }
}
