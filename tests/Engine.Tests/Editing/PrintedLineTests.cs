using CsCheck;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Editing;

/// <summary>Lines as cook books print them: what is clear is taken, and what is not is refused with what is wrong and how it is written.</summary>
public class PrintedLineTests
{
    private static readonly string InTheStates = Texts.PotatoRolls.Replace("title: Potato rolls\n", "title: Potato rolls\nregion: US\n", StringComparison.Ordinal);

    private static readonly string InGermany = Texts.PotatoRolls.Replace("title: Potato rolls\n", "title: Potato rolls\nregion: DE\n", StringComparison.Ordinal);

    private static EditedText Typed(string typed, string text, string part = "dough") => Editor.Carry(text, recipe => LineEdits.Add(recipe, part, typed));

    private static string Added(string typed, string text)
    {
        var done = Assert.IsType<EditedText.Changed>(Typed(typed, text));
        var old = text.Split('\n').ToList();
        return done.Text.Split('\n').First(line => line.Length > 0 && !old.Remove(line)).Trim();
    }

    private static Finding Reason(string typed, string text) => Assert.Single(Assert.IsType<EditedText.Refused>(Typed(typed, text)).Reasons);

    /// <summary>A weight in front goes before any measure that the words behind it may be.</summary>
    [Theory]
    [InlineData("160 g whole milk", "whole milk: 160 g")]
    [InlineData("50 g whole egg", "whole egg: 50 g")]
    [InlineData("30 g large raisins", "large raisins: 30 g")]
    [InlineData("25 g small oats", "small oats: 25 g")]
    [InlineData("10 g medium rye flour", "medium rye flour: 10 g")]
    [InlineData("1 lb 4 oz whole milk", "whole milk: 1 lb 4 oz")]
    [InlineData("5 % whole milk", "whole milk: 5 %")]
    public void WeightInFront_Wins(string typed, string line) => Assert.Equal(line, Added(typed, Texts.PotatoRolls));

    [Theory]
    [InlineData("2 1/2 oz cream", "cream: 2.5 oz")]
    [InlineData("1/4 oz dry yeast", "dry yeast: 0.25 oz")]
    [InlineData("1½ lb wholemeal flour", "wholemeal flour: 1.5 lb")]
    [InlineData("1 lb 4 1/2 oz wholemeal flour", "wholemeal flour: 1 lb 4.5 oz")]
    [InlineData("12 1/2 % honey", "honey: 12.5 %")]
    [InlineData("1 kg of honey", "honey: 1 kg")]
    [InlineData("honey: 1 1/2 oz", "honey: 1.5 oz")]
    [InlineData("20 grams honey", "honey: 20 g")]
    [InlineData("honey 2 ounces", "honey: 2 oz")]
    [InlineData("1½ tsp honey", "honey: 1½ tsp")]
    [InlineData("1 1/2 tbsp of honey", "honey: 1 1/2 tbsp")]
    [InlineData("8 oz (227 g) honey", "honey: 8 oz")]
    [InlineData("1 tbsp (21 g) honey", "honey: 21 g")]
    [InlineData("honey (21 g)", "honey: 21 g")]
    [InlineData("1 banana (120 g), mashed", "banana: 120 g, mashed")]
    public void WhatIsPrinted_IsTakenAsATextWritesIt(string typed, string line) => Assert.Equal(line, Added(typed, Texts.PotatoRolls));

    /// <summary>A cup is what it is in the region of the recipe; the name keeps its words.</summary>
    [Theory]
    [InlineData("1 1/2 cups milk", "milk: 1 1/2 cups")]
    [InlineData("½ cup water", "water: ½ cup")]
    [InlineData("2 cups whole milk", "whole milk: 2 cups")]
    [InlineData("1 cup packed brown sugar", "brown sugar: 1 cup packed")]
    [InlineData("2 large egg yolks", "egg yolks: 2 large")]
    public void Measure_IsOfTheThingThatTheLarderHas(string typed, string line) => Assert.Equal(line, Added(typed, InTheStates));

    [Theory]
    [InlineData("1,5 dl buttermilk", "decimal-comma", "piece", "1,5")]
    [InlineData("7,5 g fennel", "decimal-comma", "offer", "7.5")]
    [InlineData("1/3 oz cream", "fraction", "typed", "1/3 oz")]
    [InlineData("rye flour 500", "edit-unit-missing", "number", "500")]
    [InlineData("500 rye flour", "edit-unit-missing", "number", "500")]
    [InlineData("-5 g cumin", "edit-negative", "typed", "-5 g")]
    [InlineData("cumin -5 g", "edit-negative", "typed", "-5 g")]
    [InlineData("zest of 1 lemon", "edit-amount-inside", "typed", "zest of 1 lemon")]
    [InlineData("2-3 g cumin", "edit-range", "middle", "2.5 g")]
    [InlineData("2 to 3 tbsp honey", "edit-range", "middle", "2.5 tbsp")]
    [InlineData("500 gr rye flour", "unit-unknown", "offer", "500 g")]
    [InlineData("2 bananas (120 g)", "edit-bracket-not-clear", "name", "bananas")]
    [InlineData("1 cup 2 tbsp milk", "edit-two-amounts", "typed", "1 cup 2 tbsp milk")]
    [InlineData("1 cup honey 20 g", "edit-two-amounts", "typed", "1 cup honey 20 g")]
    [InlineData("8 oz (100 g) honey", "edit-two-amounts", "typed", "8 oz (100 g) honey")]
    [InlineData("0 g walnuts", "edit-line-of-nothing", "name", "walnuts")]
    [InlineData("🥖 500 g", "edit-name-missing", "was", "")]
    public void WhatIsNotClear_IsRefused_WithWhatIsWrong(string typed, string kind, string argument, string value)
    {
        var reason = Reason(typed, Texts.PotatoRolls);
        Assert.Equal((kind, value), (reason.Kind, reason.Arguments[argument]));
    }

    /// <summary>An egg is counted by its size, and which sizes there are hangs on where the recipe was written.</summary>
    [Theory]
    [InlineData("1 egg yolk", "US large", "European medium, European large, Australian large, Australian extra large")]
    public void CountedThing_WithoutItsSize_IsAskedForIt(string typed, string inTheStates, string elsewhere)
    {
        Assert.Equal(("edit-size-missing", inTheStates), (Reason(typed, InTheStates).Kind, Reason(typed, InTheStates).Arguments["known"]));
        Assert.EndsWith(elsewhere, Assert.IsType<string>(Reason(typed, Texts.PotatoRolls).Arguments["known"]), StringComparison.Ordinal);
    }

    /// <summary>What a refusal proposes can be typed.</summary>
    [Theory]
    [InlineData("2 egg yolks")]
    [InlineData("egg yolks 2")]
    [InlineData("500 rye flour")]
    public void Proposal_IsTaken(string typed)
    {
        var reason = Reason(typed, InGermany);
        var proposal = reason.Kind == "edit-size-missing"
            ? $"{reason.Arguments["called"]} {reason.Arguments["number"]} {reason.Arguments["size"]}"
            : $"{reason.Arguments["name"]} {reason.Arguments["number"]} g";
        Assert.NotEmpty(Added(proposal, InGermany));
    }

    /// <summary>The egg of the dough is there already: it is the same line, however it is counted.</summary>
    [Theory]
    [InlineData("1 egg", "edit-size-missing")]
    [InlineData("2 eggs", "edit-size-missing")]
    [InlineData("1 egg (50 g)", "edit-line-there")]
    public void Egg_IsRead(string typed, string kind) => Assert.Equal(kind, Reason(typed, InTheStates).Kind);

    /// <summary>Whatever is typed, a text is what comes of it or reasons, and never a name that is a number.</summary>
    [Fact]
    public void NoName_IsAnAmount_WhateverIsTyped() => Words.Array[1, 6].Sample(
        words =>
        {
            if (Typed(string.Join(' ', words), InTheStates) is EditedText.Changed done)
            {
                var added = RecipeText.Read(done.Text).Recipe!.FindComponent("dough")!.Lines[^1];
                Assert.Contains(added.Name, char.IsLetter);
                Assert.False(IsAmount(added.Name), string.Join(' ', words) + " → " + added.Name);
            }
        },
        iter: 2_000);

    private static Gen<string> Words =>
        Pick.From("1", "2", "1/2", "½", "g", "oz", "lb", "cups", "tbsp", "of", "whole", "large", "milk", "rye", "flour", "(50 g)", "-", "to", "1,5", "%", "egg");

    private static bool IsAmount(string name) => Engine.Quantities.QuantityText.TryMass(name).Ok || MeasureGrammar.Read(name) is not null;
}
