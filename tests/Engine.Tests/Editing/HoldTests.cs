using Doughwright.Engine.Editing;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Editing;

/// <summary>The sentence can hold a line, or the proportions, while it changes; a line says how warm it goes in.</summary>
public class HoldTests
{
    private static string Done(string text, Func<Recipe, EditAnswer> change) => Assert.IsType<EditedText.Changed>(Editor.Carry(text, change)).Text;

    private static string Refused(string text, Func<Recipe, EditAnswer> change) => Assert.IsType<EditedText.Refused>(Editor.Carry(text, change)).Reasons[0].Kind;

    private static Formula Of(string text) => Formula.Balance(RecipeText.Read(text).Recipe!, Larder.Shipped);

    private static double Grams(string text, string line) => Of(text).FindComponent("dough")!.Lines.Single(one => one.Id == line).Mass.Grams;

    [Fact]
    public void HeldLine_StaysAtItsWeight_AndTheDoughComesToTheSentence()
    {
        var before = Of(Texts.PotatoRolls);
        var held = HoldEdits.Choices(before.Recipe).First(one => one.Line.Name.Contains("potato", StringComparison.OrdinalIgnoreCase)).Held;
        var text = Done(Texts.PotatoRolls, recipe => HoldEdits.Make(recipe, held, one => RecipeEdits.Pieces(one, "15")));
        var after = Of(text);
        Assert.Equal(15, after.Recipe.Make!.Pieces);
        var (part, line) = (held.Split('/')[0], held.Split('/')[1]);
        Assert.Equal(Line(before, part, line), Line(after, part, line));
        // Within the rounding of each line to a gram.
        Assert.True(Math.Abs(after.Dough.Grams - (before.Dough.Grams * 1.5)) <= 0.5 * after.Components.Sum(one => one.Lines.Count), $"{after.Dough.Grams}");
        Assert.True(Grams(text, "butter") > 75 && Grams(text, "butter") < 110);

        static double Line(Formula formula, string part, string line) => formula.FindComponent(part)!.Lines.Single(one => one.Id == line).Mass.Grams;
    }

    [Fact]
    public void Proportions_StayWithinTheRounding()
    {
        var text = Done(Texts.PotatoRolls, recipe => HoldEdits.Make(recipe, HoldEdits.Proportions, one => RecipeEdits.Pieces(one, "20")));
        var (before, after) = (Of(Texts.PotatoRolls), Of(text));
        Assert.All(before.Components.SelectMany(part => part.Lines.Where(line => line.Source.Mass is not null).Select(line => (Part: part.Id, Line: line))), at =>
            Assert.Equal(at.Line.Mass.Grams * 2, after.FindComponent(at.Part)!.Lines.Single(one => one.Id == at.Line.Id).Mass.Grams, tolerance: 0.05 * at.Line.Mass.Grams));
        // There and back is where it began.
        Assert.Equal(before.Dough.Grams, Of(Done(text, recipe => HoldEdits.Make(recipe, HoldEdits.Proportions, one => RecipeEdits.Pieces(one, "10")))).Dough.Grams, tolerance: 1);
    }

    [Fact]
    public void TypedPercentages_StayTyped_AndFollow()
    {
        var text = Done(Texts.PotatoRolls, recipe => LineEdits.Share(recipe, "dough", "butter", "12.5"));
        text = Done(text, recipe => HoldEdits.Make(recipe, HoldEdits.Proportions, one => RecipeEdits.Pieces(one, "20")));
        Assert.Contains("butter: 12.5 %, soft", text, StringComparison.Ordinal);
        Assert.Equal(80, Grams(text, "butter"), 9);
    }

    [Fact]
    public void NothingHeld_ChangesTheSentenceAlone()
    {
        var text = Done(Texts.PotatoRolls, recipe => HoldEdits.Make(recipe, HoldEdits.Nothing, one => RecipeEdits.Piece(one, "82")));
        Assert.Single(text.Split('\n').Except(Texts.PotatoRolls.Split('\n')));
    }

    [Fact]
    public void HeldWeight_ChangesTheRest_NotTheDough()
    {
        var held = HoldEdits.Choices(RecipeText.Read(Texts.PotatoRolls).Recipe!).First(one => one.Held == "dough/butter").Held;
        var text = Done(Texts.PotatoRolls, recipe => HoldEdits.HeldAt(recipe, held, "80"));
        Assert.Equal(80, Grams(text, "butter"));
        Assert.Equal(Of(Texts.PotatoRolls).Dough.Grams, Of(text).Dough.Grams, tolerance: 5);
        Assert.True(Grams(text, "sugar") < Grams(Texts.PotatoRolls, "sugar"));
        Assert.Equal("edit-held-too-much", Refused(Texts.PotatoRolls, recipe => HoldEdits.HeldAt(recipe, held, "2000")));
        Assert.Equal("edit-held-weight", Refused(Texts.PotatoRolls, recipe => HoldEdits.HeldAt(recipe, held, "12 %")));
        Assert.Equal("edit-held-gone", Refused(Texts.PotatoRolls, recipe => HoldEdits.HeldAt(recipe, "dough/rum", "12")));
    }

    /// <summary>Flour 1000 g, water 650 g, salt 20 g, oil 30 g, sugar 100 g: 1800 g of dough; water and salt are typed in percent of the flour.</summary>
    private const string InPercent = """
        doughwright: 1
        title: Plain loaves
        make: 2 loaves of 900 g
        home:
          air: 21 C
        parts:
          dough:
            strong white flour: 1000 g
            water: 65 %
            salt: 2 %
            sunflower oil: 30 g
            sugar: 100 g

        """;

    [Fact]
    public void HeldFlour_HoldsItsPercentages_AndTheWeighedLinesGiveWayToTheSentence()
    {
        // 1000 + 650 + 20 stay: of 1800 g doubled, 3600 - 1670 = 1930 g are left for what weighed 130 g.
        var text = Done(InPercent, recipe => HoldEdits.Make(recipe, "dough/strong-white-flour", one => RecipeEdits.Pieces(one, "4")));
        Assert.Equal(3600, Of(text).Dough.Grams, tolerance: 1);
        Assert.Equal((1000, 650), (Grams(text, "strong-white-flour"), Grams(text, "water")));
        Assert.Equal(1930 * 30 / 130.0, Grams(text, "sunflower-oil"), tolerance: 0.5);
    }

    [Fact]
    public void HeldLine_IsReachedWhereTheOthersArePercentagesOfWhatGivesWay()
    {
        // The oil stays 30 g: 1800 - 30 = 1770 g of flour, water, salt and sugar, all in proportion, become 3570 g.
        var text = Done(InPercent, recipe => HoldEdits.Make(recipe, "dough/sunflower-oil", one => RecipeEdits.Pieces(one, "4")));
        Assert.Equal(30, Grams(text, "sunflower-oil"));
        Assert.Equal(1000 * 3570 / 1770.0, Grams(text, "strong-white-flour"), tolerance: 0.5);
        Assert.Equal(3600, Of(text).Dough.Grams, tolerance: 1.5);
        Assert.Contains("water: 65 %", text, StringComparison.Ordinal);
    }

    [Fact]
    public void HeldFlourAtAnotherWeight_TakesItsPercentagesAlong()
    {
        // 1050 g of flour bring 703.5 g of water and salt: 1800 - 1753.5 = 46.5 g are left for oil and sugar, 30 to 100.
        var text = Done(InPercent, recipe => HoldEdits.HeldAt(recipe, "dough/strong-white-flour", "1050"));
        Assert.Equal(1800, Of(text).Dough.Grams, tolerance: 1);
        Assert.Equal(46.5 * 100 / 130, Grams(text, "sugar"), tolerance: 0.5);
        Assert.Equal("edit-held-too-much", Refused(InPercent, recipe => HoldEdits.HeldAt(recipe, "dough/strong-white-flour", "1100")));
    }

    [Fact]
    public void HeldFlour_WithEveryOtherLineAPercentageOfIt_IsRefused_AndSaysWhy()
    {
        var text = InPercent.Replace("    sunflower oil: 30 g\n    sugar: 100 g\n", "", StringComparison.Ordinal);
        Assert.Equal("edit-held-all", Refused(text, recipe => HoldEdits.Make(recipe, "dough/strong-white-flour", one => RecipeEdits.Pieces(one, "4"))));
    }

    [Fact]
    public void Warmth_IsTypedByItself_AndTheRestOfTheLineStays()
    {
        var text = Done(Texts.PotatoRolls, recipe => LineEdits.Warm(recipe, "dough", "butter", "18"));
        Assert.Contains("butter: 50 g, soft, at 18 C", text, StringComparison.Ordinal);
        Assert.Contains("butter: 50 g, soft, from the fridge", Done(text, recipe => LineEdits.Warm(recipe, "dough", "butter", "from the fridge")), StringComparison.Ordinal);
        Assert.Equal(Texts.PotatoRolls, Done(text, recipe => LineEdits.Warm(recipe, "dough", "butter", "")));
        Assert.Equal("edit-warmth-wanted", Refused(Texts.PotatoRolls, recipe => LineEdits.Warm(recipe, "dough", "butter", "lukewarm")));
    }

    [Fact]
    public void Move_CarriesALineOverSeveralPlaces()
    {
        var lines = RecipeText.Read(Texts.PotatoRolls).Recipe!.FindComponent("dough")!.Lines.Select(line => line.Id).ToList();
        var moved = RecipeText.Read(Done(Texts.PotatoRolls, recipe => LineEdits.Move(recipe, "dough", lines[^1], 1 - lines.Count))).Recipe!.FindComponent("dough")!.Lines.Select(line => line.Id);
        Assert.Equal([lines[^1], .. lines[..^1]], moved);
    }
}
