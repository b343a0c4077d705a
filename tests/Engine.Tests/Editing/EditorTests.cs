using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Editing;

/// <summary>A change on the sheet changes its own lines of the text and says what it did.</summary>
public class EditorTests
{
    private static EditedText.Changed Done(string text, Func<Recipe, EditAnswer> change) => Assert.IsType<EditedText.Changed>(Editor.Carry(text, change));

    private static string Refused(string text, Func<Recipe, EditAnswer> change) => Assert.IsType<EditedText.Refused>(Editor.Carry(text, change)).Reasons[0].Kind;

    /// <summary>The lines that are gone and those that came.</summary>
    private static (string[] Gone, string[] Came) Difference(string before, string after)
    {
        var (old, now) = (before.Split('\n').ToList(), after.Split('\n').ToList());
        return ([.. old.Where(line => !now.Remove(line))], [.. after.Split('\n').Where(line => !old.Remove(line))]);
    }

    private static void AssertDifference(string before, string after, string[] gone, string[] came)
    {
        var difference = Difference(before, after);
        Assert.Equal(gone, difference.Gone);
        Assert.Equal(came, difference.Came);
    }

    [Fact]
    public void Weight_ChangesOneLine_AndSaysFromAndTo()
    {
        var text = Texts.PotatoRollsWith("    butter: 50 g, soft", "    # From the farm.\n    butter: 50 g, soft   # not salted");
        var done = Done(text, recipe => LineEdits.Weigh(recipe, "dough", "butter", "60"));
        AssertDifference(text, done.Text, ["    butter: 50 g, soft   # not salted"], ["    butter: 60 g, soft   # not salted"]);
        Assert.Equal(("line-amount", "butter", "50\u00a0g", "60\u00a0g"), (done.Deed.Kind, done.Deed.Arguments["line"], done.Deed.Arguments["from"], done.Deed.Arguments["to"]));
    }

    [Fact]
    public void Percentage_StaysTyped_AndItsWeightFollowsTheFlour()
    {
        var typed = Done(Texts.PotatoRolls, recipe => LineEdits.Share(recipe, "dough", "butter", "12.5"));
        Assert.Contains("    butter: 12.5 %, soft\n", typed.Text, StringComparison.Ordinal);
        var more = Done(typed.Text, recipe => LineEdits.Weigh(recipe, "dough", "strong-white-flour", "400"));
        AssertDifference(typed.Text, more.Text, ["    strong white flour: 320 g"], ["    strong white flour: 400 g"]);
        Assert.Equal(50, RecipeText.Read(more.Text).Recipe!.FindComponent("dough")!.Lines.First(line => line.Id == "butter").Mass!.Value.Grams, 9);
    }

    [Fact]
    public void PercentageInAPartWithoutFlour_NamesItsLargestLineAsBase()
    {
        var text = Texts.PotatoRollsWith("    milk: 15 g\n", "    milk: 15 g\n    sugar: 3 g\n");
        var done = Done(text, recipe => LineEdits.Share(recipe, "wash", "sugar", "10"));
        AssertDifference(text, done.Text, ["    sugar: 3 g"], ["    base: milk", "    sugar: 10 %"]);
    }

    [Theory]
    [InlineData("2 oz", "2 oz")]
    [InlineData("1 lb 4 oz", "1 lb 4 oz")]
    [InlineData(" 55.5 ", "55.5 g")]
    [InlineData("2 tbsp", "2 tbsp")]
    public void TypedUnit_Stays(string typed, string written) =>
        Assert.Contains($"    butter: {written}, soft\n", Done(Texts.PotatoRolls, recipe => LineEdits.Weigh(recipe, "dough", "butter", typed)).Text, StringComparison.Ordinal);

    [Theory]
    [InlineData("-5", "edit-negative")]
    [InlineData("7,5", "decimal-comma")]
    [InlineData("", "edit-amount-missing")]
    [InlineData("all of it", "edit-all-of-no-part")]
    [InlineData("600 kg", "dough-outside-limits")]
    public void WeightThatCannotBe_IsRefused(string typed, string kind) => Assert.Equal(kind, Refused(Texts.PotatoRolls, recipe => LineEdits.Weigh(recipe, "dough", "butter", typed)));

    [Fact]
    public void EmptiedPercentage_StaysWhatItWas() =>
        Assert.Equal("edit-amount-missing", Refused(Texts.PotatoRolls, recipe => LineEdits.Share(recipe, "dough", "butter", " ")));

    [Theory]
    [InlineData("1 1/2", "1.5 g")]
    [InlineData("1½ oz", "1.5 oz")]
    [InlineData("50 grams", "50 g")]
    [InlineData("1 1/2 tbsp", "1 1/2 tbsp")]
    public void WeightAsPrinted_IsTakenAsATextWritesIt(string typed, string written) =>
        Assert.Contains(
            $"    sugar: {written}\n", Done(Texts.PotatoRolls, recipe => LineEdits.Weigh(recipe, "dough", "sugar", typed)).Text, StringComparison.Ordinal);

    [Fact]
    public void OnlyWeighedFlour_CannotBeAPercentage() =>
        Assert.Equal("percent-without-base", Refused(Texts.PotatoRolls, recipe => LineEdits.Share(recipe, "dough", "strong-white-flour", "80")));

    [Fact]
    public void Renaming_FollowsIntoTheOrderOfTheMix()
    {
        var done = Done(Texts.PotatoRolls, recipe => LineEdits.Rename(recipe, "dough", "butter", "margarine"));
        var (_, came) = Difference(Texts.PotatoRolls, done.Text);
        Assert.Equal(["    margarine: 50 g, soft", "    order: scald, potato, egg, sugar, instant yeast, salt, margarine, strong white flour"], came);
    }

    [Theory]
    [InlineData("sunflower seed 30 g, raw", "    sunflower seed: 30 g, raw")]
    [InlineData("30 g sunflower seed", "    sunflower seed: 30 g")]
    [InlineData("7.5 % sunflower oil", "    sunflower oil: 7.5 %")]
    [InlineData("sunflower oil: 2 tbsp", "    sunflower oil: 2 tbsp")]
    [InlineData("wash", "    wash: all of it")]
    [InlineData("wash 10 g", "    wash: 10 g")]
    public void LineInWords_IsAdded(string typed, string line) =>
        Assert.Contains(line, Difference(Texts.PotatoRolls, Done(Texts.PotatoRolls, recipe => LineEdits.Add(recipe, "dough", typed)).Text).Came);

    [Theory]
    [InlineData("sunflower seed", "edit-line-not-understood")]
    [InlineData("30 g", "edit-line-not-understood")]
    [InlineData("butter 10 g", "edit-line-there")]
    [InlineData("jam all of it", "edit-all-of-no-part")]
    public void LineInWordsThatSayTooLittle_IsRefused(string typed, string kind) => Assert.Equal(kind, Refused(Texts.PotatoRolls, recipe => LineEdits.Add(recipe, "dough", typed)));

    [Fact]
    public void PartThatIsTakenOut_TakesItsLinesAndStepsWithIt()
    {
        var done = Done(Texts.PotatoRolls, recipe => PartEdits.TakeOut(recipe, "scald"));
        Assert.Equal("part-taken-out-step", done.Deed.Kind);
        var more = Done(Texts.PotatoRolls, recipe => PartEdits.TakeOut(recipe, "potato"));
        Assert.Equal(("part-taken-out-steps", 3), (more.Deed.Kind, more.Deed.Arguments["steps"]));
        Assert.DoesNotContain("mash", more.Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("scald", done.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void PartThatIsAdded_StandsAfterTheOneThatIsNamed()
    {
        var done = Done(Texts.PotatoRolls, recipe => PartEdits.Add(recipe, "filling", "", "dough", "poppy seed 40 g"));
        Assert.Contains("    instant yeast: 4 g\n  filling:\n    poppy seed: 40 g\n  wash:\n", done.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void FlourThatPercentagesAreOf_CannotBeTakenOut()
    {
        var typed = Done(Texts.PotatoRolls, recipe => LineEdits.Share(recipe, "dough", "butter", "12.5"));
        Assert.Equal("percent-without-base", Refused(typed.Text, recipe => LineEdits.TakeOut(recipe, "dough", "strong-white-flour")));
    }

    [Fact]
    public void LastLineOfAPart_CannotBeTakenOut() => Assert.Equal("edit-last-line", Refused(Texts.PotatoRolls, recipe => LineEdits.TakeOut(recipe, "wash", "milk")));

    [Fact]
    public void WhatItMakes_IsChangedPieceByPiece()
    {
        var done = Done(Texts.PotatoRolls, recipe => RecipeEdits.Pieces(recipe, "1"));
        Assert.Contains("make: 1 roll of 80 g\n", done.Text, StringComparison.Ordinal);
        Assert.Contains("make: 1 roll of 3 oz\n", Done(done.Text, recipe => RecipeEdits.Piece(recipe, "3 oz")).Text, StringComparison.Ordinal);
        Assert.Equal("piece-outside-limits", Refused(done.Text, recipe => RecipeEdits.Piece(recipe, "4")));
    }

    [Fact]
    public void WhatIsSaidAlready_IsNoChange() => Assert.IsType<EditedText.Same>(Editor.Carry(Texts.PotatoRolls, recipe => LineEdits.Weigh(recipe, "dough", "butter", "50")));
}
