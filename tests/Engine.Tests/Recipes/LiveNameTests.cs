using Doughwright.Engine.Baking;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Recipes.Live;
using Doughwright.Engine.Recipes.Notes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Recipes;

public class LiveNameTests
{
    private static readonly Engine.Recipes.Recipe Rolls = RecipeText.Read(Texts.PotatoRolls).Recipe!;

    private static readonly Rehearsal Home = Rehearser.Rehearse(Rolls, Larder.Shipped);

    private static object? Value(string words, string? step = null) =>
        LiveNames.Find(Rolls, words, step) is { } name ? LiveValue.Of(name, Home) : "nothing";

    [Theory]
    [InlineData("bulk time", 105)]
    [InlineData("Bulk time", 105)]
    [InlineData("proof time", 70)]
    [InlineData("Final proof time", 70)]
    [InlineData("fold after", 45)]
    [InlineData("bulk fold after", 45)]
    [InlineData("first fold after", 45)]
    public void Times_AreThoseOfTheRehearsal(string words, double minutes) => Assert.Equal(minutes, ((Duration)Value(words)!).Minutes, 1e-6);

    [Theory]
    [InlineData("dough temperature", 26)]
    [InlineData("mix temperature", 26)]
    [InlineData("scald temperature", 28)]
    [InlineData("room temperature", 21)]
    public void Temperatures_AreThoseOfTheRehearsal(string words, double celsius) => Assert.Equal(celsius, ((Temperature)Value(words)!).Celsius, 1e-6);

    [Theory]
    [InlineData("butter", 50)]
    [InlineData("butter weight", 50)]
    [InlineData("butter in dough", 50)]
    [InlineData("strong white flour in scald", 80)]
    [InlineData("scald", 180)]
    [InlineData("piece weight", 80)]
    public void Weights_AreThoseOfTheFormula(string words, double grams) => Assert.Equal(grams, ((Mass)Value(words)!).Grams, 1e-9);

    [Fact]
    public void Line_IsThatOfTheStepsOwnPart()
    {
        Assert.Equal("nothing", Value("strong white flour"));
        Assert.Equal(80, ((Mass)Value("strong white flour", "scald")!).Grams);
        Assert.Equal(320, ((Mass)Value("strong white flour", "mix")!).Grams);
    }

    [Fact]
    public void OvenAndPieces_AreThere()
    {
        Assert.Equal(170, ((Dial)Value("oven")!).Here.Celsius);
        Assert.Equal(10, Value("pieces"));
    }

    [Fact]
    public void ValueElsewhere_IsThatOfTheKitchen()
    {
        var cold = Rehearser.Rehearse(Rolls, Larder.Shipped, new() { Kitchen = Rolls.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(17)) } });
        Assert.True(((Duration)LiveValue.Of(LiveNames.Find(Rolls, "bulk time")!, cold)!).Minutes > 106);
    }

    [Theory]
    [InlineData("one [bulk time] two", "one |[bulk time]| two")]
    [InlineData("[a][b]", "[a]|[b]")]
    [InlineData("open [ and [a] and ] and []", "open [ and |[a]| and ] and []")]
    [InlineData("[[a]]", "[|[a]|]")]
    [InlineData("no brackets", "no brackets")]
    [InlineData("[over\ntwo lines]", "[over\ntwo lines]")]
    public void Prose_IsCutAtItsBrackets_AndNothingIsLost(string prose, string pieces) =>
        Assert.Equal(pieces, string.Join('|', ProsePiece.Of(prose).Select(piece => piece.Text)));

    [Fact]
    public void NearlyAName_IsAHint_AndAnythingElseIsNot()
    {
        var text = Texts.PotatoRolls.Replace("about [bulk time]", "about [bulk tme], [see page 3]");
        var finding = Assert.Single(RecipeChecks.Of(RecipeText.Read(text).Recipe!), finding => finding.Kind == "live-value-nearly");
        Assert.Equal(("bulk tme", "bulk time", "steps.bulk"), (finding.Arguments["name"], finding.Arguments["nearest"], finding.Place));
    }

    [Fact]
    public void SeveralSlipsInOneStep_AreAllTold_EachWithItsOwnName()
    {
        var text = Texts.PotatoRolls.Replace(
            "about [bulk time]", "about [bulk tme], at [oven temperature], with [buter in dough], [piece wieght], [flour], [boilingpoint], [oven temprature], [oven] and [see page 3]", StringComparison.Ordinal);
        Assert.Equal(
            ["bulk tme: bulk time", "oven temperature: oven", "buter in dough: butter in dough", "piece wieght: piece weight", "flour: strong white flour", "boilingpoint: boiling point", "oven temprature: oven"],
            RecipeChecks.Of(RecipeText.Read(text).Recipe!).Where(finding => finding.Kind == "live-value-nearly").Select(finding => $"{finding.Arguments["name"]}: {finding.Arguments["nearest"]}"));
    }

    [Fact]
    public void ALineOfTwoParts_HasToBePlaced()
    {
        var text = Texts.PotatoRolls.Replace("title: Potato rolls\n", "title: Potato rolls\nwords: Sift [strong white flour]\n", StringComparison.Ordinal);
        var finding = Assert.Single(RecipeChecks.Of(RecipeText.Read(text).Recipe!), finding => finding.Kind == "live-value-nearly");
        Assert.Equal("strong white flour in scald", finding.Arguments["nearest"]);
    }

    /// <summary>Every kind of value has a name in the page on the text form, and every name of the grammar is looked for.</summary>
    [Fact]
    public void EveryKind_CanBeNamed() => Assert.Equal(
        Enum.GetValues<LiveKind>(),
        LiveNames.All(Rolls).Select(name => name.Kind)
            .Concat(new[] { NoteNames.ThisStep, NoteNames.ThisPart, NoteNames.ThisCue }.Select(words => NoteNames.Find(Rolls, words, "proof")!.Kind)).Distinct().Order());
}
