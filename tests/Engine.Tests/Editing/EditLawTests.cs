using CsCheck;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Editing;

/// <summary>Laws of every change, on the texts of the repository and by chance.</summary>
public class EditLawTests
{
    private static readonly string[] Readable =
        [.. Texts.Recipes.Where(path => !path.Contains("twelve-faults", StringComparison.Ordinal)).Select(Texts.Read).Where(text => RecipeText.Read(text).Recipe is not null)];

    private static readonly string[] Typed = ["60", "12.5", "0.1", "2 oz", "30 g rum", "butter 50 g", "7 %", "milk", "", "-1", "x: y", "1,5", "99999", "a, b # c"];

    private static readonly Gen<(int Text, int Part, int Line, int Kind, int Typed, int Other)> Chance =
        Gen.Select(Gen.Int[0, 999], Gen.Int[0, 99], Gen.Int[0, 99], Gen.Int[0, 21], Gen.Int[0, 999], Gen.Int[0, 99]);

    private static EditAnswer Change(Recipe recipe, (int Text, int Part, int Line, int Kind, int Typed, int Other) by)
    {
        var part = recipe.Components[by.Part % recipe.Components.Count];
        var other = recipe.Components[by.Other % recipe.Components.Count];
        var line = part.Lines.Count == 0 ? "none" : part.Lines[by.Line % part.Lines.Count].Id;
        var typed = Typed[by.Typed % Typed.Length];
        return by.Kind switch
        {
            0 => LineEdits.Weigh(recipe, part.Id, line, typed),
            1 or 2 => LineEdits.Share(recipe, part.Id, line, typed),
            3 => LineEdits.Rename(recipe, part.Id, line, typed),
            4 => LineEdits.Add(recipe, part.Id, typed),
            5 => LineEdits.TakeOut(recipe, part.Id, line),
            6 => LineEdits.Move(recipe, part.Id, line, by.Other % 2 == 0 ? 1 : -1),
            7 => LineEdits.MoveTo(recipe, part.Id, line, other.Id),
            8 => PartEdits.Add(recipe, PartEdits.Kinds[by.Other % PartEdits.Kinds.Count], typed, other.Id, "rum 20 g"),
            9 => PartEdits.Rename(recipe, part.Id, typed),
            10 => PartEdits.TakeOut(recipe, part.Id),
            11 => PartEdits.Move(recipe, part.Id, by.Other % 2 == 0 ? 1 : -1),
            12 => RecipeEdits.Pieces(recipe, typed),
            14 => AdviceEdits.AddSwap(recipe, $"butter by {typed}"),
            15 => AdviceEdits.Swap(recipe, by.Other % 3, Enum.GetValues<SwapSaid>()[by.Line % 5], typed),
            16 => AdviceEdits.AddWithout(recipe, typed, "wait, until it is: warm"),
            17 => AdviceEdits.AddKeeping(recipe, typed),
            18 => AdviceEdits.Tools(recipe, typed),
            19 => MeasuredEdits.Say(recipe, Step(recipe, by.Line), Enum.GetValues<MeasuredSaid>()[by.Other % 5], typed),
            20 => VariantEdits.Add(recipe, Step(recipe, by.Line), typed),
            21 => VariantEdits.Say(recipe, Step(recipe, by.Line), recipe.FindStep(Step(recipe, by.Line))?.Variants.FirstOrDefault()?.Id ?? "none", by.Other % 2 == 0 ? "measured" : "hands", typed),
            _ => RecipeEdits.Title(recipe, typed),
        };
    }

    private static string Step(Recipe recipe, int at) => recipe.Steps.Count == 0 ? "none" : recipe.Steps[at % recipe.Steps.Count].Id;

    [Fact]
    public void EveryChange_LeavesATextThatReads_AndSaysJustWhatWasMeant() => Chance.Sample(by =>
    {
        var text = Readable[by.Text % Readable.Length];
        EditAnswer? answer = null;
        switch (Editor.Carry(text, recipe => answer = Change(recipe, by)))
        {
            case EditedText.Changed changed:
                var (before, after) = (RecipeText.Read(text), RecipeText.Read(changed.Text));
                Assert.Equal(RecipeText.Write(((EditAnswer.Done)answer!).Recipe), RecipeText.Write(after.Recipe!));
                Assert.True(after.Findings.Count(finding => finding.NotUnderstood) <= before.Findings.Count(finding => finding.NotUnderstood));
                Assert.NotEqual(text, changed.Text);
                Assert.Equal(RecipeText.Write(after.Recipe!), RecipeText.Write(RecipeText.Read(RecipeText.Write(after.Recipe!)).Recipe!));
                break;
            case EditedText.Refused refused:
                Assert.NotEmpty(refused.Reasons);
                Assert.All(refused.Reasons, reason => Assert.NotEqual("edit-not-said", reason.Kind));
                break;
        }
    }, iter: 600);

    /// <summary>Sheet and text are one recipe: a change goes into a text that was written by hand as into a tidy one.</summary>
    [Fact]
    public void Change_IsTheSameInATidyText() => Chance.Sample(by =>
    {
        var text = Readable[by.Text % Readable.Length];
        var tidy = RecipeText.Write(RecipeText.Read(text).Recipe!);
        if (Editor.Carry(text, recipe => Change(recipe, by)) is EditedText.Changed one && Editor.Carry(tidy, recipe => Change(recipe, by)) is EditedText.Changed other)
        {
            Assert.Equal(RecipeText.Write(RecipeText.Read(other.Text).Recipe!), RecipeText.Write(RecipeText.Read(one.Text).Recipe!));
            Assert.Equal(other.Deed.Kind, one.Deed.Kind);
        }
    }, iter: 200);
}
