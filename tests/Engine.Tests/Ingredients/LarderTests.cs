using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Ingredients;

public class LarderTests
{
    [Theory]
    [InlineData("strong white flour", "wheat-flour-bread-unenriched")]
    [InlineData("Bread Flour", "wheat-flour-bread-unenriched")]
    [InlineData("plain flour", "wheat-flour-all-purpose-unenriched")]
    [InlineData("all-purpose flour", "wheat-flour-all-purpose-unenriched")]
    [InlineData("wholemeal rye flour", "rye-grain")]
    [InlineData("butter", "butter-unsalted")]
    [InlineData("soft butter", "butter-unsalted")]
    [InlineData("salted butter", "butter-salted")]
    [InlineData("egg", "egg-whole")]
    [InlineData("Eggs, free-range", "egg-whole")]
    [InlineData("whole egg", "egg-whole")]
    [InlineData("egg yolks", "egg-yolk")]
    [InlineData("milk", "milk-whole-unfortified")]
    [InlineData("semi-skimmed milk", "milk-2-percent")]
    [InlineData("caster sugar", "sugar-granulated")]
    [InlineData("confectioner's sugar", "sugar-powdered")]
    [InlineData("salt", "salt")]
    [InlineData("easy-bake yeast", "yeast-instant")]
    [InlineData("instant yeast", "yeast-instant")]
    [InlineData("fresh yeast", "yeast-compressed")]
    [InlineData("boiled potatoes", "potato-boiled-peeled")]
    [InlineData("water", "water")]
    [InlineData("cold whole milk", "milk-whole-unfortified")]
    public void Find_PlainAndTradeNames_GiveTheirRow(string name, string id)
    {
        var match = Larder.Shipped.Find(name, []);
        Assert.Equal((MatchKind.Exact, id), (match.Kind, match.Ingredient?.Id));
    }

    [Theory]
    [InlineData("potato", "boiled", "potato-boiled-peeled")]
    [InlineData("potatoes", "cooked", "potato-boiled-peeled")]
    [InlineData("potato", "raw", "potato-raw")]
    [InlineData("potato", "baked", "potato-baked-flesh")]
    [InlineData("potato", "boiled in the skin", "potato-boiled-in-skin")]
    [InlineData("milk", "skimmed", "milk-skim-unfortified")]
    [InlineData("yeast", "instant", "yeast-instant")]
    public void Find_WithACondition_ChoosesTheRow(string name, string condition, string id) =>
        Assert.Equal(id, Larder.Shipped.Find(name, ["peeled", condition]).Ingredient?.Id);

    [Theory]
    [InlineData("potato", MatchKind.RawOrCookedNotSaid)]
    [InlineData("pumpkin", MatchKind.RawOrCookedNotSaid)]
    [InlineData("flour", MatchKind.NotClear)]
    [InlineData("yeast", MatchKind.NotClear)]
    [InlineData("dried yeast", MatchKind.NotClear)]
    [InlineData("rye flour", MatchKind.NotClear)]
    public void Find_WhenSeveralFit_TakesNone(string name, MatchKind kind)
    {
        var match = Larder.Shipped.Find(name, ["peeled"]);
        Assert.Equal(kind, match.Kind);
        Assert.Null(match.Ingredient);
        Assert.True(match.Candidates.Count > 1);
    }

    [Fact]
    public void Find_RawAndBoiledBothSaid_TakesNone() =>
        Assert.Equal(MatchKind.RawOrCookedNotSaid, Larder.Shipped.Find("potato", ["raw", "boiled"]).Kind);

    [Fact]
    public void Find_MisspeltName_OffersTheNearestAndTakesNone()
    {
        var match = Larder.Shipped.Find("buttr", []);
        Assert.Equal(MatchKind.Unknown, match.Kind);
        Assert.Null(match.Ingredient);
        Assert.Contains("butter", match.Nearest);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ,. ")]
    [InlineData("xyzzy")]
    public void Find_Nonsense_IsUnknown(string name) => Assert.Equal(MatchKind.Unknown, Larder.Shipped.Find(name, [""]).Kind);

    [Fact]
    public void Find_AllWordsInOneName_SaysHowItWasRead()
    {
        var match = Larder.Shipped.Find("virgin oil", []);
        Assert.Equal((MatchKind.ReadAs, "oil-olive"), (match.Kind, match.Ingredient?.Id));
    }

    [Fact]
    public void EveryRow_IsFoundByItsOwnName() =>
        Assert.All(Larder.Shipped.Ingredients, row => Assert.Equal(row.Id, Larder.Shipped.Find(row.Name, []).Ingredient?.Id));

    [Fact]
    public void UnknownStaysNull() => Assert.Null(Larder.Shipped.WithId("semolina-unenriched")!.Composition.Sugars);

    /// <summary>Household weights of the source (USDA SR28 WEIGHT, read): one large egg 50 g, its yolk 17 g, its white 33 g.</summary>
    [Theory]
    [InlineData("egg-whole", 50)]
    [InlineData("egg-yolk", 17)]
    [InlineData("egg-white", 33)]
    public void PieceOfAnEgg_IsTheHouseholdMeasure(string id, double grams) =>
        Assert.Equal(grams, Larder.Shipped.WithId(id)!.Piece!.Value.Grams);

    [Fact]
    public void Version_ChangesWithTheContent()
    {
        static Larder WithWater(string water) => Larder.Load(
            Header + $"\nw\twater\twater\t\t{water}\t0\t0\t0\t0\t0\t0\t0\t0\t0\t\t\t\t\t\tlarder\tby definition",
            "name\tid\twhen\nwater\tw",
            "id\tfrom\tstep\tfactor\tsource\tobtained\tnote");
        Assert.Equal(WithWater("100").Version, WithWater("100").Version);
        Assert.NotEqual(WithWater("100").Version, WithWater("99.9").Version);
    }

    [Fact]
    public void Load_NameOfAMissingRow_IsAFaultOfTheTable() => Assert.Throws<FormatException>(() =>
        Larder.Load(Header, "name\tid\twhen\nwater\tw", "id\tfrom\tstep\tfactor\tsource\tobtained\tnote"));

    /// <summary>
    /// 200 g peeled raw (79.25 % water in the source) weighed again at 170 g holds 75.6 % water: computed, so it tests the formula only.
    /// </summary>
    [Fact]
    public void WeighedPotato_KeepsItsSolids()
    {
        var raw = Larder.Shipped.WithId("potato-raw")!.Composition;
        var cooked = SolidsBalance.Cooked(raw, Mass.FromGrams(200), Mass.FromGrams(170))!;
        Assert.Equal(75.6, cooked.Water!.Value, 0.05);
        Assert.Equal(raw.Protein!.Value * 200, cooked.Protein!.Value * 170, 1e-9);
        Assert.Null(SolidsBalance.Cooked(raw, Mass.FromGrams(200), Mass.FromGrams(30)));
    }

    private const string Header =
        "id\tname\trole\tyeast\twater\tprotein\tfat\tcarbohydrate\tsugars\tfibre\tash\tsalt" +
        "\tlactose\talcohol\tspecific-heat\tmelts\tpiece\tallergens\tndb\tsource\tobtained\tdate\tnote";
}
