using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Shelf;

/// <summary>A folder of before there were books: what was done there can be taken back in the book, what was taken away be brought back, and what no book can hold is told.</summary>
public sealed class OlderFolderTests : IDisposable
{
    private readonly DataFolder data = new(Directory.CreateTempSubdirectory("older-").FullName);

    [Fact]
    public void EarlierTexts_AreEarlierStates_WithWhatWasDoneAndWhen()
    {
        Put("recipes/loaf.yaml", "three");
        Earlier("20260301T081500Z", "one", "did", "two", "Add masher to the tools");
        Earlier("20260302T090000Z", "two", "did", "three", "Make it 10 pieces");
        using var shelf = Open();
        var states = shelf.Book.Papers.States(PaperSort.Recipe, "loaf");
        Assert.Equal(["Make it 10 pieces", "Add masher to the tools", "Laid into the book"], states.Select(state => state.Did));
        Assert.Equal(["three", "two", "one"], states.Select(state => shelf.Book.Papers.TextOf(state.Id)));
        Assert.Equal([2, 1, 1], states.Select(state => state.At.Day));
        Assert.Equal(new DateTimeOffset(2026, 3, 2, 9, 0, 0, TimeSpan.Zero), states[0].At);

        // What was done before the book was is taken back in it.
        var undone = Assert.IsType<WriteAnswer.Written>(shelf.RecipeTexts.Undo("loaf", states[0].Id));
        Assert.Equal("two"u8.ToArray(), shelf.Recipe("loaf"));
        Assert.IsType<WriteAnswer.Written>(shelf.RecipeTexts.Undo("loaf", undone.State));
        Assert.Equal("one"u8.ToArray(), shelf.Recipe("loaf"));
        Assert.Empty(shelf.Book.Verify());
        Assert.Empty(shelf.Left.All());
    }

    /// <summary>Ten of one second stand in their order, not in that of letters.</summary>
    [Fact]
    public void ChangesOfOneSecond_KeepTheirOrder()
    {
        Put("recipes/loaf.yaml", "t11");
        for (var number = 1; number <= 11; number++)
        {
            Earlier("20260301T081500Z" + (number == 1 ? "" : $"-{number}"), $"t{number - 1}", "did", $"t{number}", $"step {number}");
        }

        using var shelf = Open();
        Assert.Equal(
            Enumerable.Range(0, 12).Select(number => $"t{number}"),
            shelf.Book.Papers.States(PaperSort.Recipe, "loaf").Reverse().Select(state => shelf.Book.Papers.TextOf(state.Id)));
    }

    [Fact]
    public void WhatAnotherHandChanged_OrWasTakenBack_IsSaidSo()
    {
        Put("recipes/loaf.yaml", "by hand");
        Earlier("20260301T081500Z", "one", "did", "two", "Add masher to the tools");
        Earlier("20260301T081600Z", "two", "back", "one", "Add masher to the tools");
        Earlier("20260301T081700Z", "one", "did", "two", "Add masher to the tools");
        // Without its note it is a text all the same.
        Put("recipes/earlier/loaf/20260301T081800Z.yaml", "two");
        using var shelf = Open();
        var states = shelf.Book.Papers.States(PaperSort.Recipe, "loaf").Reverse().ToArray();
        Assert.Equal(
            ["Laid into the book", "Add masher to the tools", "Taken back: Add masher to the tools", "Add masher to the tools", "Changed outside the desk"],
            states.Select(state => state.Did));
        Assert.True(states[^1].At > DateTimeOffset.UtcNow.AddHours(-1));
    }

    [Fact]
    public void KitchensTakenAway_CanBeBroughtBack()
    {
        Put("kitchens/cottage.yaml", "now");
        Put("kitchens/cottage.yaml.taken-away", "before");
        Put("kitchens/attic.yaml.taken-away", "latest");
        Put("kitchens/attic.yaml.taken-away-1", "oldest");
        Put("kitchens/attic.yaml.taken-away-2", "older");
        using var shelf = Open();
        Assert.Equal(["cottage"], shelf.Kitchens);
        Assert.Equal(["attic", "attic-2", "attic-3", "cottage-2"], shelf.KitchenTexts.TakenAway().Select(paper => paper.Name));
        Assert.True(shelf.KitchenTexts.PutBack("attic"));
        Assert.True(shelf.KitchenTexts.PutBack("attic-3"));
        Assert.True(shelf.KitchenTexts.PutBack("cottage-2"));
        Assert.Equal("latest"u8.ToArray(), shelf.Kitchen("attic"));
        Assert.Equal("oldest"u8.ToArray(), shelf.Kitchen("attic-3"));
        Assert.Equal("before"u8.ToArray(), shelf.Kitchen("cottage-2"));
        Assert.Empty(shelf.Book.Verify());
    }

    [Fact]
    public void WhatIsLeft_IsToldAtEachStart_UntilItIsGoneOrDoneWith()
    {
        Put("recipes/loaf.yaml", "now");
        Spoil("recipes/latin.yaml");
        Spoil("recipes/of\na line.yaml");
        Spoil("recipes/earlier/loaf/20260301T081500Z.yaml");
        Spoil("kitchens/attic.yaml.taken-away-1");
        string[] files = ["kitchens/attic.yaml.taken-away-1", "recipes/earlier/loaf/20260301T081500Z.yaml", "recipes/latin.yaml", "recipes/of\na line.yaml"];
        using (var shelf = Open())
        {
            Assert.Equal(files, Left(shelf));
        }

        File.Delete(In("kitchens/attic.yaml.taken-away-1"));
        Put("recipes/latin.yaml", "put right");
        using (var again = Open())
        {
            Assert.Equal(files[1..], Left(again));
            Assert.Null(again.Left.All().Single(text => text.Name == "latin").Trouble);
            Assert.True(again.Left.Forget("recipes/latin.yaml"));
            Assert.False(again.Left.Forget("recipes/latin.yaml"));
        }

        using var last = Open();
        Assert.Equal([files[1], files[3]], Left(last));
        Assert.All(last.Left.All(), text => last.Left.Forget(text.File));
        Assert.Empty(last.Left.All());
        Assert.True(File.Exists(In("recipes/latin.yaml")));
    }

    /// <summary>While the book holds nothing, the folder is looked at again at each start; what the author has done with is still not told again.</summary>
    [Fact]
    public void WhatIsDoneWith_IsNotToldAgain_WhileTheBookIsEmpty()
    {
        Spoil("recipes/latin.yaml");
        Directory.CreateDirectory(In("kitchens"));
        using (var shelf = Open())
        {
            Assert.Equal(0, shelf.Book.Size().Papers);
            Assert.True(shelf.Left.Forget("recipes/latin.yaml"));
        }

        using var again = Open();
        Assert.Equal(0, again.Book.Size().Papers);
        Assert.Empty(Left(again));
    }

    /// <summary>A book that holds nothing yet begins with what can be read by now.</summary>
    [Fact]
    public void BookThatIsStillEmpty_TakesInWhatWasPutRight()
    {
        Directory.CreateDirectory(data.Kitchens);
        Spoil("recipes/latin.yaml");
        using (var shelf = Open())
        {
            Assert.Empty(shelf.Recipes);
            Assert.Equal(["recipes/latin.yaml"], Left(shelf));
        }

        Put("recipes/latin.yaml", "put right");
        using var again = Open();
        Assert.Equal(["latin"], again.Recipes);
        Assert.Empty(Left(again));
    }

    [Theory]
    [InlineData("../../etc/x.yaml")]
    [InlineData("recipes/../../x.yaml")]
    [InlineData("x.yaml")]
    [InlineData("recipes/x.txt")]
    [InlineData("recipes/x.yaml.taken-away-0")]
    public void LineOfTheListThatNamesNoText_IsLeftOut(string line)
    {
        using var shelf = Open();
        File.WriteAllText(data.Left, Uri.EscapeDataString(line) + "\n");
        Put("x.yaml", "x");
        Put("recipes/x.txt", "x");
        Assert.Empty(shelf.Left.All());
    }

    public void Dispose() => Directory.Delete(data.Root, recursive: true);

    private static string[] Left(ShelfFolder shelf) => [.. shelf.Left.All().Select(text => text.File).Order(StringComparer.Ordinal)];

    private ShelfFolder Open() => ShelfFolder.Open(data, TimeProvider.System, Words.Shipped);

    private string In(string file) => Path.Join(data.Root, file);

    private void Put(string file, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(file))!);
        File.WriteAllText(In(file), text);
    }

    /// <summary>A text that is not UTF-8.</summary>
    private void Spoil(string file)
    {
        Put(file, "");
        File.WriteAllBytes(In(file), [0x47, 0x72, 0xfc, 0xdf]);
    }

    private void Earlier(string stamp, string text, string how, string after, string verb)
    {
        Put($"recipes/earlier/loaf/{stamp}.yaml", text);
        Put($"recipes/earlier/loaf/{stamp}.then.txt", $"{how}\n{StateId.OfText(after)}\n{verb}\n");
    }
}
