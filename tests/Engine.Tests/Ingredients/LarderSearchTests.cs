using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Tests.House;

namespace Doughwright.Engine.Tests.Ingredients;

/// <summary>Finding a row by the words people use, and what the strict look-up makes of regional names.</summary>
public class LarderSearchTests(ITestOutputHelper output)
{
    /// <summary>A hundred phrases with the row each means, written before there was a search. Names of the table were added with them known.</summary>
    [Fact]
    public void Search_TopHit_IsRightForNinetyFiveOfAHundredPhrases() => Assert.InRange(Missed("larder-phrases.tsv", 100), 0, 5);

    /// <summary>Phrases that neither the search nor the names had seen.</summary>
    [Fact]
    public void Search_TopHit_IsRightForNineInTenUnseenPhrases() => Assert.InRange(Missed("larder-phrases-later.tsv", 69), 0, 69 / 10);

    private int Missed(string file, int count)
    {
        var phrases = Tsv.Read(File.ReadAllText(Tree.PathTo("tests", "data", file))).Rows.Select(row => (Phrase: row["phrase"], Id: row["id"])).ToArray();
        Assert.Equal(count, phrases.Length);
        Assert.All(phrases, each => Assert.NotNull(Larder.Shipped.WithId(each.Id)));
        var missed = 0;
        foreach (var (phrase, id) in phrases)
        {
            var hits = Larder.Shipped.Search(phrase);
            if (hits.Count == 0 || hits[0].Ingredient.Id != id)
            {
                missed++;
                output.WriteLine($"{phrase}: wanted {id}, got {string.Join(", ", hits.Take(3).Select(hit => FormattableString.Invariant($"{hit.Ingredient.Id} ({hit.Name}, {hit.Likeness:0.00})")))}");
            }
        }

        output.WriteLine($"{count - missed} of {count}");
        return missed;
    }

    /// <summary>How much of it is no part of its name, and names are written in one word or in two.</summary>
    [Theory]
    [InlineData("1 cup of flour", "flour")]
    [InlineData("250 g butter", "butter")]
    [InlineData("poppyseed", "poppy seeds")]
    [InlineData("1 % milk", "1 % milk")]
    public void Search_FindsWhatIsMeant(string typed, string meant) =>
        Assert.Equal(Larder.Shipped.Search(meant)[0].Ingredient.Id, Larder.Shipped.Search(typed)[0].Ingredient.Id);

    [Fact]
    public void Search_OwnName_IsTheTopHit() => Assert.All(
        Larder.Shipped.Ingredients, row => Assert.Equal(row.Id, Larder.Shipped.Search(row.Name).FirstOrDefault()?.Ingredient.Id));

    /// <summary>Where the strict look-up is sure, the search says the same.</summary>
    [Fact]
    public void Search_AgreesWithFind_WhereFindIsSure() => Assert.All(
        Tsv.Read(Tsv.Embedded("names.tsv")).Rows.Select(row => row["name"]),
        name => Assert.True(Larder.Shipped.Find(name, []) is not { Kind: MatchKind.Exact, Ingredient: { } row } || Larder.Shipped.Search(name)[0].Ingredient == row, name));

    [Theory]
    [InlineData("")]
    [InlineData("  ,;!")]
    [InlineData("qqqqxxxx")]
    [InlineData("\u202e\u0000")]
    public void Search_Nonsense_FindsNothing(string phrase) => Assert.Empty(Larder.Shipped.Search(phrase));

    [Fact]
    public void Search_IsRankedAndBounded()
    {
        var hits = Larder.Shipped.Search("flour", most: 5);
        Assert.Equal(5, hits.Count);
        Assert.Equal(hits.OrderByDescending(hit => hit.Likeness).Select(hit => hit.Likeness), hits.Select(hit => hit.Likeness));
        Assert.All(hits, hit => Assert.InRange(hit.Likeness, 0, 1));
        Assert.Equal(hits.Count, hits.Select(hit => hit.Ingredient).Distinct().Count());
    }

    [Fact]
    public void Search_FindsOwnIngredients() => Assert.Equal(
        "own-rye-crumb", Larder.Shipped.With([new Label { Name = "Rye crumb", Role = Role.Starchy, Fat = 1 }.Read().Ingredient!]).Search("rye crumbs")[0].Ingredient.Id);

    [Theory]
    [InlineData("cornflour", Region.Britain, "cornstarch")]
    [InlineData("cornflour", Region.UnitedStates, "corn-flour-whole")]
    [InlineData("vegetable oil", Region.Britain, "oil-canola")]
    [InlineData("vegetable oil", Region.UnitedStates, "oil-soybean")]
    [InlineData("tomato purée", Region.Britain, "tomato-paste")]
    [InlineData("tomato purée", Region.UnitedStates, "tomato-puree")]
    public void Find_NameOfTwoRegions_IsNotClearWithoutOne(string name, Region region, string id)
    {
        Assert.Equal(id, Larder.Shipped.Find(name, [], region).Ingredient?.Id);
        var open = Larder.Shipped.Find(name, []);
        Assert.Equal(MatchKind.NotClear, open.Kind);
        Assert.Contains(open.Candidates, row => row.Id == id);
    }

    /// <summary>
    /// Types of flour by ash of the dry matter: the window of the type, and the row that is taken for it lies in it.
    /// Windows: DIN 10355 (405 to 1600; rye 997 to 1740), Austrian food codex B 20, French decree 63-720, Italian decree 187 of 2001, as read in tables that
    /// quote them; rye windows of Germany and France from memory.
    /// </summary>
    [Theory]
    [InlineData("type 405", 0, 0.50)]
    [InlineData("550", 0.51, 0.63)]
    [InlineData("flour type 812", 0.64, 0.90)]
    [InlineData("Weizenmehl Type 1050", 0.91, 1.20)]
    [InlineData("1600", 1.21, 1.80)]
    [InlineData("rye flour type 815", 0, 0.90)]
    [InlineData("Roggenmehl 997", 0.91, 1.10)]
    [InlineData("rye 1150", 1.11, 1.30)]
    [InlineData("rye flour type 1370", 1.31, 1.60)]
    [InlineData("rye 1740", 1.61, 1.80)]
    [InlineData("T45", 0, 0.50)]
    [InlineData("T55", 0.50, 0.60)]
    [InlineData("farine T65", 0.62, 0.75)]
    [InlineData("T80", 0.75, 0.90)]
    [InlineData("T110", 1.00, 1.20)]
    [InlineData("T150", 1.40, 3)]
    [InlineData("T85", 0.75, 1.25)]
    [InlineData("T130", 1.20, 1.50)]
    [InlineData("00 flour", 0, 0.55)]
    [InlineData("tipo 0", 0, 0.65)]
    [InlineData("tipo 1", 0, 0.80)]
    [InlineData("W480", 0.33, 0.58)]
    [InlineData("W700", 0.63, 0.79)]
    [InlineData("W1600", 1.50, 1.75)]
    [InlineData("R960", 0.88, 1.12)]
    [InlineData("R2500", 2.0, 3.0)]
    public void FlourTypes_HaveTheAshOfTheirWindow(string name, double low, double high)
    {
        var match = Larder.Shipped.Find(name, []);
        Assert.Equal(MatchKind.Exact, match.Kind);
        var c = match.Ingredient!.Composition;
        Assert.InRange(c.Ash!.Value / (100 - c.Water!.Value) * 100, low - 0.005, high + 0.005);
        Assert.NotEmpty(match.Note);
    }

    [Theory]
    [InlineData("quark")]
    [InlineData("potato starch")]
    [InlineData("mascarpone")]
    [InlineData("double cream")]
    public void KnownByNameOnly_SaysSoAndHasNoFigure(string name)
    {
        var match = Larder.Shipped.Find(name, []);
        Assert.Equal(MatchKind.Exact, match.Kind);
        Assert.False(match.Ingredient!.HasFigures);
        Assert.Contains("own ingredient", match.Ingredient.Evidence.Note, StringComparison.Ordinal);
    }
}
