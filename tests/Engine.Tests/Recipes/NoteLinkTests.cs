using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Live;
using Doughwright.Engine.Recipes.Notes;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Recipes;

/// <summary>Steps that link to notes, and the names that a note can use there.</summary>
public class NoteLinkTests
{
    private static readonly string Rolls = Texts.Read("demo/recipes/potato-rolls.yaml");

    private static Recipe Read(string text) => RecipeText.Read(text).Recipe!;

    [Fact]
    public void Links_AreReadAndWrittenAsTyped_AndNameTheStateAnew()
    {
        var with = Read(Rolls.Replace("learn: scalding", "learn: Scalding, bowls", StringComparison.Ordinal));
        Assert.Equal(["Scalding", "bowls"], with.FindStep("scald")!.Learn);
        Assert.Contains("\n    learn: Scalding, bowls\n", RecipeText.Write(with), StringComparison.Ordinal);
        Assert.NotEqual(StateId.Of(with), StateId.Of(Read(Rolls)));
    }

    [Fact]
    public void ATextByItself_KeepsItsLinksWithoutAFinding() => Assert.Empty(RecipeText.Read(Rolls.Replace("learn: scalding", "learn: nowhere", StringComparison.Ordinal)).Findings);

    [Fact]
    public void TooManyLinks_AreTold_AndTheFirstAreKept()
    {
        var reading = RecipeText.Read(Rolls.Replace("learn: scalding", "learn: a, b, c, d, e", StringComparison.Ordinal));
        Assert.Equal("learn-many", Assert.Single(reading.Findings).Kind);
        Assert.Equal(NoteLinks.MostOfStep, reading.Recipe!.FindStep("scald")!.Learn.Count);
    }

    [Fact]
    public void MissingNote_IsToldWithItsStepAndTheNearest()
    {
        var recipe = Read(Rolls.Replace("learn: scalding", "learn: scaldng", StringComparison.Ordinal));
        string[] there = ["scalding", "dough-temperature", "reading-a-proof"];
        var finding = Assert.Single(NoteLinks.Missing(recipe, name => there.Contains(Slug.Of(name)), () => there));
        Assert.Equal(("note-not-in-book", "steps.scald.learn", "scaldng", "scalding"), (finding.Kind, finding.Place, finding.Arguments["name"], finding.Arguments["nearest"]));
        Assert.True(finding.Position.IsKnown);
        Assert.Empty(NoteLinks.Missing(Read(Rolls), name => there.Contains(Slug.Of(name)), () => there));
    }

    /// <summary>One note stands in many recipes, so it says "this" where a recipe's own words would name the step.</summary>
    [Theory]
    [InlineData("this time", LiveKind.StepTime)]
    [InlineData("This Part Temperature", LiveKind.PartTemperature)]
    [InlineData("this cue", LiveKind.StepCue)]
    [InlineData("bulk time", LiveKind.StepTime)]
    public void ThisMeansTheStep_AndAllOtherNamesAreThoseOfTheRecipe(string words, LiveKind kind)
    {
        var recipe = Read(Rolls);
        Assert.Equal(kind, NoteNames.Find(recipe, words, "scald")!.Kind);
        Assert.Equal(words == "bulk time", NoteNames.Find(recipe, words, null) is not null);
        Assert.Equal(words != "bulk time", NoteNames.IsOfStep(words));
        Assert.Equal(words == "bulk time", LiveNames.Find(recipe, words, "scald") is not null);
    }
}
