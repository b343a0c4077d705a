using Doughwright.App.Desk.Shelf;

namespace Doughwright.App.Tests.Desk.Shelf;

/// <summary>The folder is the user's: whatever lies in it, the shelf says so and goes on.</summary>
public class ShelfFolderTests
{
    [Fact]
    public void FirstRun_LaysTheShippedTexts()
    {
        using var scratch = Scratch.WithTheShipped();
        Assert.Contains("potato-rolls", scratch.Folder.Recipes);
        Assert.Contains("mountain", scratch.Folder.Kitchens);
        Assert.Equal(File.ReadAllBytes(House.PotatoRolls), scratch.Folder.Recipe("potato-rolls"));
    }

    [Fact]
    public void FirstRun_LeavesAFolderAsItIs()
    {
        using var scratch = new Scratch().Put("mine", "x");
        scratch.Folder.Make();
        Assert.Equal(["mine"], scratch.Folder.Recipes);
    }

    [Fact]
    public void RunThatEndedHalfWay_LeavesNothingThatLooksFinished()
    {
        using var scratch = new Scratch();
        var half = Directory.CreateDirectory(scratch.Data.Recipes + ".abc.unfinished").FullName;
        File.WriteAllText(Path.Join(half, "potato-rolls.yaml"), "half");
        Assert.Empty(scratch.Folder.Recipes);
        scratch.Folder.Make();
        Assert.Equal(File.ReadAllBytes(House.PotatoRolls), scratch.Folder.Recipe("potato-rolls"));
    }

    [Fact]
    public void RunThatFails_LeavesNothingBehind()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch.Data.Recipes, "a file where the folder should be");
        Assert.ThrowsAny<IOException>(scratch.Folder.Make);
        Assert.Equal([scratch.Data.Recipes], Directory.GetFileSystemEntries(scratch.Data.Root));
    }

    [Fact]
    public void ManyFirstRunsAtOnce_MakeOneFolder()
    {
        using var scratch = new Scratch();
        Parallel.For(0, 16, _ => new ShelfFolder(scratch.Data).Make());
        Assert.Contains("potato-rolls", scratch.Folder.Recipes);
        Assert.Equal(["kitchens", "recipes"], Directory.EnumerateFileSystemEntries(scratch.Data.Root).Select(Path.GetFileName).Order());
    }

    [Fact]
    public void WhatIsNoText_IsListedWithItsTrouble()
    {
        using var scratch = new Scratch().Put("good", "x").Put("with space", "x").Put("größe", "x").Put("%2e%2e", "x").Put("CON", "x").Put("..", "x").Put("a\nb", "x").Put("a%2Fb", "x");
        var inside = scratch.Data.Recipes;
        Directory.CreateDirectory(Path.Join(inside, "folder.yaml"));
        File.CreateSymbolicLink(Path.Join(inside, "link.yaml"), "/etc/hostname");
        File.CreateSymbolicLink(Path.Join(inside, "broken.yaml"), "/nowhere/at/all");
        File.WriteAllBytes(Path.Join(inside, "huge.yaml"), new byte[TextFolder.LargestText + 1]);
        File.WriteAllText(Path.Join(inside, "notes.txt"), "x");

        var found = scratch.Folder.RecipeTexts.Texts().ToDictionary(text => text.Name, text => text.Trouble);

        Assert.Equal(12, found.Count);
        Assert.All(["good", "with space", "größe", "%2e%2e", "CON"], name => Assert.Null(found[name]));
        Assert.All(["..", "a\nb", "a%2Fb"], name => Assert.Equal(TextTrouble.Name, found[name]));
        Assert.Equal(TextTrouble.Folder, found["folder"]);
        Assert.Equal(TextTrouble.Link, found["link"]);
        Assert.Equal(TextTrouble.Link, found["broken"]);
        Assert.Equal(TextTrouble.TooLarge, found["huge"]);
        Assert.Equal(["%2e%2e", "CON", "good", "größe", "with space"], scratch.Folder.Recipes);
    }

    [Theory]
    [InlineData("../secret")]
    [InlineData("..")]
    [InlineData("")]
    [InlineData("link")]
    [InlineData("/etc/hostname")]
    [InlineData("potato-rolls.yaml")]
    [InlineData("POTATO-ROLLS")]
    public void NameThatIsNotListed_ReadsNothing(string name)
    {
        using var scratch = Scratch.WithTheShipped();
        File.WriteAllText(Path.Join(scratch.Data.Root, "secret.yaml"), "secret");
        File.CreateSymbolicLink(Path.Join(scratch.Data.Recipes, "link.yaml"), Path.Join(scratch.Data.Root, "secret.yaml"));
        Assert.Null(scratch.Folder.Recipe(name));
    }

    [Fact]
    public void NoFolder_HasNoTexts()
    {
        using var scratch = new Scratch();
        Assert.Empty(scratch.Folder.Recipes);
        Assert.Null(scratch.Folder.Recipe("x"));
    }
}
