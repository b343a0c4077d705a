using System.Text.Json.Nodes;
using Doughwright.App.Commands;
using Doughwright.App.Tests.Book;
using Doughwright.Book.Papers;
using Doughwright.Engine.Ingredients;
using Json.Schema;

namespace Doughwright.App.Tests.Commands;

/// <summary>larder WORDS where a book is: the author's own ingredients and lots of flour are looked through, and told as such.</summary>
public sealed class LarderOfBookTests : IDisposable
{
    private const string Lot =
        "doughwright: 1\ningredient: harbour mill white\ncounts as: flour\nlot: bag of 3 November\nabsorption: 61 %, at 14 % moisture\ncarbohydrate: 71 g\nof which sugars: 1 g\nfibre: 3 g\nfat: 1.1 g\n"
        + "protein: 12.4 g\nsalt: 0 g\nallergens: wheat-gluten\n";

    private const string Mallow = "doughwright: 1\ningredient: cottage mallow\ncounts as: sugar\ntotal carbohydrate: 81 g\n";

    private const string Butter = "doughwright: 1\ningredient: butter\ncounts as: fat\nfat: 84 g\n";

    private readonly TestBook book = new();

    public void Dispose() => book.Dispose();

    [Fact]
    public void LotOfFlour_IsFound_AndSaysThatItIsTheAuthorsOwn_WithItsLotAndWater()
    {
        Lay(("harbour-mill-white", Lot));
        var told = Told("harbour mill white");
        Assert.StartsWith("Harbour mill white", told, StringComparison.Ordinal);
        Assert.Contains("Counts as flour. One of your own.", told, StringComparison.Ordinal);
        Assert.Contains("protein 12.4 %", told, StringComparison.Ordinal);
        Assert.Contains("Lot: bag of 3 November.", told, StringComparison.Ordinal);
        Assert.Contains("Takes up 61.0 % of its weight in water (at 14 % moisture).", told, StringComparison.Ordinal);
        Assert.Contains("Allergens, as they were written down from its label: wheat", told, StringComparison.Ordinal);
        Assert.Contains("there it stands under own", told, StringComparison.Ordinal);
        Assert.DoesNotContain("on the European list", told, StringComparison.Ordinal);
    }

    [Fact]
    public void OwnIngredientOfTheLardersName_GoesBeforeIt()
    {
        Lay(("butter", Butter));
        var told = Told("butter");
        Assert.Contains("One of your own.", told, StringComparison.Ordinal);
        Assert.Contains("not the larder’s unsalted butter", told, StringComparison.Ordinal);
        Assert.Contains("Which allergens it holds is not said", told, StringComparison.Ordinal);
    }

    [Fact]
    public void OwnIngredientNearTheWords_IsMarkedAmongThoseNear()
    {
        Lay(("cottage-mallow", Mallow), ("harbour-mill-white", Lot));
        Assert.Contains("harbour mill white (your own)", Told("mill flour white strong"), StringComparison.Ordinal);
        Assert.DoesNotContain("strong white flour (your own)", Told("mill flour white strong"), StringComparison.Ordinal);
    }

    [Fact]
    public void WithoutWords_AllOfThemAreListed_AlsoWhatIsNotUnderstood()
    {
        Lay(("cottage-mallow", Mallow), ("harbour-mill-white", Lot), ("odd", "doughwright: 1\ningredient: odd\ncounts as: moonlight\n"));
        var told = Told();
        Assert.Contains("Your own, in the book " + book.Path, told, StringComparison.Ordinal);
        Assert.Contains("cottage mallow: Counts as sugar. One of your own.", told, StringComparison.Ordinal);
        Assert.Contains("harbour mill white: Counts as flour. One of your own. Lot: bag of 3 November.", told, StringComparison.Ordinal);
        Assert.Contains("odd: Its text is not understood.", told, StringComparison.Ordinal);
        Assert.Contains("Not looked through, because their texts are not understood: odd.", Told("zzzyx"), StringComparison.Ordinal);
        Assert.Contains("Not looked through, because their texts are not understood: odd.", Told("mallow"), StringComparison.Ordinal);
    }

    [Fact]
    public void BookWithoutAny_SaysSo()
    {
        Lay();
        Assert.Contains($"The book {book.Path} holds no ingredient of your own.", Told(), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatWasTakenAway_IsNotFound()
    {
        Lay(("cottage-mallow", Mallow));
        using (var open = book.Open())
        {
            open.Papers.TakeAway(PaperSort.Ingredient, "cottage-mallow");
        }

        Assert.DoesNotContain("One of your own", Told("cottage mallow"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData]
    [InlineData("harbour mill white")]
    [InlineData("butter")]
    public void AsJson_FitsItsSchema_AndSaysWhoseEachIs(params string[] words)
    {
        Lay(("harbour-mill-white", Lot), ("odd", "doughwright: 1\nnothing: 1\n"));
        var run = Run.Of(["larder", "--json", "--folder", book.Folder, .. words]);
        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Messages));
        var schema = JsonSchema.FromText(File.ReadAllText(House.PathTo("tests", "data", "schema", "larder.json")));
        using var json = System.Text.Json.JsonDocument.Parse(run.Output);
        Assert.True(schema.Evaluate(json.RootElement).IsValid, run.Output);
        var told = JsonNode.Parse(run.Output)!;
        Assert.Equal(book.Path, (string?)told["book"]);
        Assert.Equal(["harbour-mill-white:True", "odd:False"], told["own"]!.AsArray().Select(own => $"{own!["paper"]}:{(bool)own["understood"]!}"));
        Assert.NotEqual(Larder.Shipped.Version, (string?)told["larder"]);
        foreach (var hit in told["hits"]!.AsArray())
        {
            Assert.Equal((string?)hit!["name"] == "harbour mill white" ? "harbour-mill-white" : null, (string?)hit["own"]?["paper"]);
        }

        Assert.Equal(words is ["harbour mill white"], told["hits"]!.AsArray().Any(hit => (string?)hit!["own"]?["lot"] == "bag of 3 November" && (double?)hit["own"]!["absorptionPercent"] == 61));
    }

    [Fact]
    public void FolderWithoutABook_IsToldAsAFault()
    {
        var run = Run.Of("larder", "butter", "--folder", book.In("nowhere"));
        Assert.Equal((ExitCode.CommandLine, ""), (run.ExitCode, run.Output));
        Assert.Contains("nowhere", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void BookThatCannotBeRead_IsToldAsAFault_AndNotPassedOver()
    {
        File.WriteAllText(book.Path, "no book at all, though it is called one");
        var run = Run.Of("larder", "butter", "--folder", book.Folder);
        Assert.Equal((ExitCode.CommandLine, ""), (run.ExitCode, run.Output));
        Assert.Contains(book.Path, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void UserWithoutABook_HasTheLarderThatComesWithTheProgram()
    {
        var told = JsonNode.Parse(Run.Of("larder", "butter", "--json").Output)!;
        Assert.Null(told["book"]);
        Assert.Equal(Larder.Shipped.Version, (string?)told["larder"]);
        Assert.All(told["hits"]!.AsArray(), hit => Assert.Null(hit!["own"]));
    }

    private void Lay(params (string Name, string Text)[] papers)
    {
        using var open = book.Open();
        foreach (var (name, text) in papers)
        {
            open.Papers.Lay(PaperSort.Ingredient, [name], text, "written down");
        }
    }

    /// <summary>What the command says, on one line.</summary>
    private string Told(params string[] words)
    {
        var run = Run.Of(["larder", "--folder", book.Folder, .. words]);
        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Messages));
        return string.Join(' ', run.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}
