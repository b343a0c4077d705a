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

    /// <summary>Times and ends as pages print them are taken as a text writes them.</summary>
    [Theory]
    [InlineData("shape", "hands", "1 1/2 h", "    hands: 90 min")]
    [InlineData("shape", "hands", "1½ h", "    hands: 90 min")]
    [InlineData("shape", "hands", "25 minutes", "    hands: 25 min")]
    [InlineData("shape", "hands", "about 25 min", "    hands: 25 min")]
    [InlineData("bulk", "ends", "1 1/4 hours", "    ends: after 75 min")]
    [InlineData("bulk", "ends", "after 1½ h", "    ends: after 90 min")]
    [InlineData("bulk", "ends", "about 50 minutes", "    ends: by its cue, about 50 min")]
    [InlineData("bulk", "ends", "by its cue, about 2½ h", "    ends: by its cue, about 150 min")]
    [InlineData("scald", "ends", "26 °C", "    ends: at 26 C")]
    [InlineData("bake", "ends", "95 °C", "    ends: core at 95 C")]
    [InlineData("bulk", "fold", "at ½ h, 3 minutes by hand", "    fold: at 30 min, 3 min by hand")]
    [InlineData("bulk", "measured", "1 3/4 h on 10 November", "    measured: 105 min on 10 November")]
    public void WhatPagesPrint_IsTakenAsATextWritesIt(string step, string key, string typed, string line) =>
        Assert.Equal([line], Came(Done(recipe => StepEdits.Say(recipe, step, key, typed)).Text));

    /// <summary>What can be no time or end is refused with how it is written.</summary>
    [Theory]
    [InlineData("bulk", "ends", "5 to 7 min", "edit-end-range", "6 min")]
    [InlineData("bulk", "ends", "by its cue, about 5–7 min", "edit-end-range", "6 min")]
    [InlineData("scald", "ends", "at 60 to 65 °C", "edit-end-range", "62.5 °C")]
    [InlineData("shape", "hands", "5 min to 8 min", "edit-range", "6.5 min")]
    [InlineData("bulk", "measured", "1 to 1 1/2 h", "edit-range", "1.25 h")]
    [InlineData("bulk", "ends", "until thick", "edit-end-is-cue", null)]
    [InlineData("shape", "hands", "-5 min", "edit-negative", null)]
    [InlineData("shape", "hands", "1/3 h", "fraction", null)]
    [InlineData("shape", "hands", "5", "unit-missing", null)]
    public void WhatIsNoTimeOrEnd_IsRefused_WithHowItIsWritten(string step, string key, string typed, string kind, string? middle)
    {
        var reason = Assert.Single(Assert.IsType<EditedText.Refused>(Editor.Carry(Texts.PotatoRolls, recipe => StepEdits.Say(recipe, step, key, typed))).Reasons);
        Assert.Equal((kind, middle), (reason.Kind, reason.Arguments.GetValueOrDefault("middle") as string));
    }

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
