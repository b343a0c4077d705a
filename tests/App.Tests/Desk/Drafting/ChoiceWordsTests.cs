using Doughwright.App.Desk.Drafting.Views;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
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
}
