using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Editing;

/// <summary>What stands beside the method, what was measured and other ways are changed thing by thing; the text keeps all else.</summary>
public class AdviceEditTests
{
    private static string Done(string text, Func<Recipe, EditAnswer> change) => Assert.IsType<EditedText.Changed>(Editor.Carry(text, change)).Text;

    private static string Refused(string text, Func<Recipe, EditAnswer> change) => Assert.IsType<EditedText.Refused>(Editor.Carry(text, change)).Reasons[0].Kind;

    private static Recipe Read(string text) => RecipeText.Read(text).Recipe!;

    /// <summary>Two swaps with comments of the author around them.</summary>
    private static string WithSwaps
    {
        get
        {
            var bare = RecipeText.Write(Read(Texts.PotatoRolls) with { Swaps = [], Without = [], Keeping = [] });
            return bare + "swaps:\n  # asked for every winter\n  - butter by sunflower oil, in dough, not tried, a softer crumb   # from the term\n  - egg by milk, tried on 3 May\n";
        }
    }

    [Fact]
    public void Swap_ChangesInItsOwnLine_AndCommentsStay()
    {
        var text = Done(WithSwaps, recipe => AdviceEdits.Swap(recipe, 0, SwapSaid.Tried, "7 November"));
        Assert.Contains("# asked for every winter", text, StringComparison.Ordinal);
        Assert.Contains("butter by sunflower oil, in dough, tried on 7 November, a softer crumb", text, StringComparison.Ordinal);
        Assert.Contains("# from the term", text, StringComparison.Ordinal);
        Assert.Contains("- egg by milk, tried on 3 May", text, StringComparison.Ordinal);
        Assert.Equal(WithSwaps.Split('\n').Length, text.Split('\n').Length);
    }

    [Fact]
    public void Swap_SaysEachThing_AndUnsaysIt()
    {
        foreach (var (said, typed) in new[] { (SwapSaid.What, "soft butter"), (SwapSaid.By, "olive oil"), (SwapSaid.Part, ""), (SwapSaid.Tried, "1 May"), (SwapSaid.Words, "darker, and softer") })
        {
            var swap = Read(Done(WithSwaps, recipe => AdviceEdits.Swap(recipe, 0, said, typed))).Swaps[0];
            Assert.Equal(typed, AdviceEdits.Said(swap, said));
            Assert.All(Enum.GetValues<SwapSaid>().Where(other => other != said), other => Assert.Equal(AdviceEdits.Said(Read(WithSwaps).Swaps[0], other), AdviceEdits.Said(swap, other)));
        }
    }

    [Fact]
    public void Swap_ThatWouldReadOtherwise_IsRefused()
    {
        Assert.Equal("edit-reads-otherwise", Refused(WithSwaps, recipe => AdviceEdits.Swap(recipe, 0, SwapSaid.By, "oil, melted")));
        Assert.Equal("swap-not-understood", Refused(WithSwaps, recipe => AdviceEdits.Swap(recipe, 0, SwapSaid.By, "")));
        Assert.Equal("swap-of-unknown-part", Refused(WithSwaps, recipe => AdviceEdits.AddSwap(recipe, "butter by oil, in cellar")));
        Assert.Equal("edit-advice-gone", Refused(WithSwaps, recipe => AdviceEdits.Swap(recipe, 5, SwapSaid.By, "oil")));
    }

    [Fact]
    public void SwapWithoutAndKeeping_AreAdded_AndTakenOutAgain()
    {
        var text = WithSwaps;
        foreach (var (add, takeOut) in new (Func<Recipe, EditAnswer>, Func<Recipe, EditAnswer>)[]
        {
            (recipe => AdviceEdits.AddSwap(recipe, "salt by flaky salt, tried on 1 May"), recipe => AdviceEdits.TakeOutSwap(recipe, 2)),
            (recipe => AdviceEdits.AddWithout(recipe, "thermometer", "wait until it feels barely warm"), recipe => AdviceEdits.Without(recipe, "thermometer", "")),
            (recipe => AdviceEdits.AddKeeping(recipe, "in a bag at room temperature, 2 d"), recipe => AdviceEdits.Keeping(recipe, 0, "")),
        })
        {
            var added = Done(text, add);
            Assert.NotEqual(text, added);
            Assert.Equal(RecipeText.Write(Read(text)), RecipeText.Write(Read(Done(added, takeOut))));
        }
    }

    [Fact]
    public void LeadAndTools_AreSaid_AndTakenOut()
    {
        var text = Done(WithSwaps, recipe => AdviceEdits.Lead(recipe, "Soft because of the scald.\n\nAnd the next day too."));
        Assert.Equal("Soft because of the scald.\n\nAnd the next day too.", Read(text).Words);
        Assert.Null(Read(Done(text, recipe => AdviceEdits.Lead(recipe, " "))).Words);
        Assert.Equal(["scale", "steel bowl"], Read(Done(text, recipe => AdviceEdits.Tools(recipe, "scale\nsteel bowl\n"))).Tools);
        Assert.Null(Read(Done(text, recipe => AdviceEdits.Tools(recipe, ""))).Tools);
    }

    [Fact]
    public void Measured_IsSaidThingByThing()
    {
        var step = Read(Texts.PotatoRolls).Steps.First(one => one.Measured?.Time is not null);
        var text = Done(Texts.PotatoRolls, recipe => MeasuredEdits.Say(recipe, step.Id, MeasuredSaid.Air, "17"));
        text = Done(text, recipe => MeasuredEdits.Say(recipe, step.Id, MeasuredSaid.Times, "3"));
        text = Done(text, recipe => MeasuredEdits.Say(recipe, step.Id, MeasuredSaid.On, "12 November"));
        var measured = Read(text).FindStep(step.Id)!.Measured!;
        Assert.Equal((17.0, 3, "12 November"), (measured.Air!.Value.Celsius, measured.TimesSeen, measured.On));
        Assert.Equal(step.Measured!.Time, measured.Time);
        // Once nothing is measured any more, nothing is said of how.
        foreach (var said in new[] { MeasuredSaid.Temperature, MeasuredSaid.Time }.Where(said => MeasuredEdits.Said(step, said).Length > 0))
        {
            text = Done(text, recipe => MeasuredEdits.Say(recipe, step.Id, said, ""));
        }

        Assert.Null(Read(text).FindStep(step.Id)!.Measured);
        Assert.Equal("edit-measured-nothing", Refused(text, recipe => MeasuredEdits.Say(recipe, step.Id, MeasuredSaid.On, "1 May")));
    }

    [Fact]
    public void OtherWay_SaysWhatIsDoneOtherwise_AndNothingElse()
    {
        var text = Done(Texts.PotatoRolls, recipe => VariantEdits.Add(recipe, "bulk", "in the fridge"));
        Assert.Equal("edit-variant-there", Refused(text, recipe => VariantEdits.Add(recipe, "bulk", "In the fridge")));
        text = Done(text, recipe => VariantEdits.Say(recipe, "bulk", "in-the-fridge", "where", "fridge"));
        text = Done(text, recipe => VariantEdits.Say(recipe, "bulk", "in-the-fridge", "measured", "12 h on 3 May"));
        var bulk = Read(text).FindStep("bulk")!;
        var way = Assert.Single(bulk.Variants).Step;
        Assert.Equal((Where.Fridge, bulk.End, bulk.Cue), (way.Where, way.End, way.Cue));
        Assert.Equal(["name", "where", "measured"], VariantEdits.Said(Read(text), bulk, "in-the-fridge").Keys);
        text = Done(text, recipe => VariantEdits.Say(recipe, "bulk", "in-the-fridge", "where", ""));
        Assert.Equal(bulk.Where, Assert.Single(Read(text).FindStep("bulk")!.Variants).Step.Where);
        Assert.Equal(RecipeText.Write(Read(Texts.PotatoRolls)), RecipeText.Write(Read(Done(text, recipe => VariantEdits.TakeOut(recipe, "bulk", "in-the-fridge")))));
        Assert.Equal("edit-variant-gone", Refused(text, recipe => VariantEdits.Say(recipe, "bulk", "by-moonlight", "where", "fridge")));
    }
}
