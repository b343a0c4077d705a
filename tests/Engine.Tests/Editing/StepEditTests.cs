using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Editing;

/// <summary>The method is written step by step; what a step says is read by the grammar of the text.</summary>
public class StepEditTests
{
    private static EditedText.Changed Done(Func<Recipe, EditAnswer> change) => Assert.IsType<EditedText.Changed>(Editor.Carry(Texts.PotatoRolls, change));

    private static string[] Came(string after)
    {
        var old = Texts.PotatoRolls.Split('\n').ToList();
        return [.. after.Split('\n').Where(line => line.Length > 0 && !old.Remove(line))];
    }

    [Theory]
    [InlineData("bulk", "ends", "at 1.8 times its volume", "    ends: at 1.8 times its volume")]
    [InlineData("bulk", "cue", "doubled, a wet finger's dent stays", "    cue: doubled, a wet finger's dent stays")]
    [InlineData("bulk", "where", "proofing place", "    where: proofing place")]
    [InlineData("shape", "hands", "20 min", "    hands: 20 min")]
    [InlineData("bake", "oven", "350 F static", "    oven: 350 F static")]
    [InlineData("shape", "words", "Round them.\n\nTight.", "    words: |", "      Round them.", "      Tight.")]
    [InlineData("mix", "measured", "27 C on 3 May, seen 2 times", "    measured: 27 C on 3 May, seen 2 times")]
    public void WhatAStepSays_ChangesItsOwnLines(string step, string key, string typed, params string[] lines) =>
        Assert.Equal(lines, Came(Done(recipe => StepEdits.Say(recipe, step, key, typed)).Text));

    [Fact]
    public void NothingTyped_TakesTheKeyOut()
    {
        var done = Done(recipe => StepEdits.Say(recipe, "bulk", "cue", " "));
        Assert.DoesNotContain("at the tape on the bowl", done.Text, StringComparison.Ordinal);
        Assert.Equal("step-silent", done.Deed.Kind);
    }

    [Theory]
    [InlineData("bulk", "ends", "when it is nice", "end-not-understood")]
    [InlineData("bulk", "of", "jam", "step-of-unknown-part")]
    [InlineData("bake", "oven", "170", "unit-missing")]
    [InlineData("bulk", "kind", "sleep", "unknown-kind")]
    [InlineData("peel", "kind", "", "kind-missing")]
    public void WhatIsNotUnderstood_IsRefused(string step, string key, string typed, string kind) =>
        Assert.Contains(
            Assert.IsType<EditedText.Refused>(Editor.Carry(Texts.PotatoRolls, recipe => StepEdits.Say(recipe, step, key, typed))).Reasons, reason => reason.Kind == kind);

    [Fact]
    public void Steps_AreAddedMovedAndTakenOut()
    {
        var added = Done(recipe => StepEdits.Add(recipe, "bulk", "rest", "dough", "Bench rest"));
        Assert.Equal(["  bench-rest:", "    name: Bench rest", "    kind: rest", "    of: dough"], Came(added.Text));
        var steps = RecipeText.Read(added.Text).Recipe!.Steps.Select(step => step.Id).ToList();
        Assert.Equal(steps.IndexOf("bulk") + 1, steps.IndexOf("bench-rest"));
        var moved = Assert.IsType<EditedText.Changed>(Editor.Carry(added.Text, recipe => StepEdits.Move(recipe, "bench-rest", -1)));
        Assert.Equal("bulk", RecipeText.Read(moved.Text).Recipe!.Steps[steps.IndexOf("bench-rest")].Id);
        var without = Assert.IsType<EditedText.Changed>(Editor.Carry(moved.Text, recipe => StepEdits.TakeOut(recipe, "bench-rest")));
        Assert.Equal(RecipeText.Write(RecipeText.Read(Texts.PotatoRolls).Recipe!), RecipeText.Write(RecipeText.Read(without.Text).Recipe!));
    }

    /// <summary>Whatever a step of the repository says is taken again as it is shown, and changes nothing.</summary>
    [Fact]
    public void WhatIsSaid_SaidAgain_IsNoChange()
    {
        foreach (var path in Texts.All("demo/recipes"))
        {
            var text = Texts.Read(path);
            var recipe = RecipeText.Read(text).Recipe!;
            foreach (var step in recipe.Steps)
            {
                foreach (var (key, words) in StepEdits.Said(recipe, step).Where(said => said.Key != "variants"))
                {
                    Assert.True(Editor.Carry(text, one => StepEdits.Say(one, step.Id, key, words)) is EditedText.Same, $"{path} {step.Id} {key}: {words}");
                }
            }
        }
    }
}
