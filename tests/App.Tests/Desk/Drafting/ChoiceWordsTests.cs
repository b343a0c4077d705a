using Doughwright.App.Desk.Drafting.Views;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>What is chosen on the sheet reads as words; the text keeps its own.</summary>
public class ChoiceWordsTests
{
    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    public static TheoryData<string> Keys => ["kind", "where", "way", "cover", "on"];

    [Theory]
    [MemberData(nameof(Keys))]
    public void EveryChoiceOfAStep_HasWords(string key) =>
        Assert.All(StepEdits.Choices(key)!, raw => Assert.Contains(Words.Shipped.Entries.Values, words => words == ChoiceWords.Of(key, raw, Voice)));

    [Fact]
    public void EveryKindOfPart_HasWords() => Assert.All(PartEdits.Kinds, raw => Assert.NotEmpty(ChoiceWords.OfPart(raw, Voice)));

    [Theory]
    [InlineData("where", "proofing place", "in the proofing place")]
    [InlineData("way", "machine", "by machine")]
    [InlineData("cover", "cloth", "under a cloth")]
    [InlineData("kind", "proof", "final proof")]
    [InlineData("ends", "at 28 C", "at 28 C")]
    [InlineData("where", "", "")]
    public void Choice_ReadsAsInASentence(string key, string raw, string words) => Assert.Equal(words, ChoiceWords.Of(key, raw, Voice));

    [Fact]
    public void Fields_ShowTheWords_AndKeepTheWordOfTheText()
    {
        var recipe = Samples.Recipe;
        var step = recipe.Steps.First(one => one.Kind == StepKind.Mix);
        var fields = StepField.All(recipe, step, StepEdits.Said(recipe, step), Voice).ToDictionary(field => field.Key);
        Assert.Contains(("food processor", "in a food processor"), fields["way"].Choices);
        Assert.Contains(("proof", "final proof"), fields["kind"].Choices);
        Assert.Contains(("room", "in the room"), fields["where"].Choices);
    }

    /// <summary>What is offered is what the text takes: a step that names a vessel of its kitchen reads as that vessel.</summary>
    [Fact]
    public void VesselsOfTheKitchen_AreOffered_AndTakenByTheirNames()
    {
        var text = File.ReadAllText(House.PotatoRolls).Replace("  scale:", "  vessels:\n    the big bowl: steel bowl, 750 g, 6 l\n    aunt's tin: aluminium tin, 300 g\n  scale:", StringComparison.Ordinal);
        var recipe = RecipeText.Read(text).Recipe!;
        var bulk = recipe.FindStep("bulk")!;
        var offered = Offered(recipe, bulk);
        Assert.Equal(["the big bowl", "aunt's tin"], offered.Select(one => one.Value));
        Assert.Equal("steel bowl, 750 g, 6 l", offered[0].Name.Replace('\u00a0', ' '));
        Assert.All(offered, one =>
        {
            var changed = Assert.IsType<EditedText.Changed>(Editor.Carry(text, each => StepEdits.Say(each, "bulk", "vessel", one.Value)));
            Assert.Equal(one.Value, RecipeText.Read(changed.Text).Recipe!.FindStep("bulk")!.Vessel!.Name);
        });
        Assert.Empty(Offered(Samples.Recipe, Samples.Recipe.FindStep("bulk")!));

        static IReadOnlyList<(string Value, string Name)> Offered(Recipe recipe, Step step) => StepField.All(recipe, step, StepEdits.Said(recipe, step), Voice).Single(field => field.Key == "vessel").Offers;
    }
}
