using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;

namespace Doughwright.Engine.Tests.Editing;

/// <summary>A window can still show a step or a part that another has taken out: it is refused by name, and nothing changes.</summary>
public class GoneTests
{
    private static Finding Refused(Func<Recipe, EditAnswer> change) => Assert.Single(Assert.IsType<EditedText.Refused>(Editor.Carry(Texts.PotatoRolls, change)).Reasons);

    public static TheoryData<string> OfAStep => [.. Step.Keys];

    private static readonly Dictionary<string, Func<Recipe, EditAnswer>> Step = new()
    {
        ["say"] = recipe => StepEdits.Say(recipe, "bench-rest", "hands", "3 min"),
        ["silence"] = recipe => StepEdits.Say(recipe, "bench-rest", "hands", ""),
        ["move"] = recipe => StepEdits.Move(recipe, "bench-rest", 1),
        ["take out"] = recipe => StepEdits.TakeOut(recipe, "bench-rest"),
        ["add after"] = recipe => StepEdits.Add(recipe, "bench-rest", "rest", "dough", "Second rest"),
        ["another way"] = recipe => VariantEdits.Add(recipe, "bench-rest", "by machine"),
    };

    public static TheoryData<string> OfAPart => [.. Part.Keys];

    private static readonly Dictionary<string, Func<Recipe, EditAnswer>> Part = new()
    {
        ["rename"] = recipe => PartEdits.Rename(recipe, "jam", "Plum jam"),
        ["move"] = recipe => PartEdits.Move(recipe, "jam", 1),
        ["take out"] = recipe => PartEdits.TakeOut(recipe, "jam"),
        ["add after"] = recipe => PartEdits.Add(recipe, "filling", "", "jam", "plums 200 g"),
        ["add a line"] = recipe => LineEdits.Add(recipe, "jam", "plums 200 g"),
        ["move a line there"] = recipe => LineEdits.MoveTo(recipe, "dough", "butter", "jam"),
        ["a step of it"] = recipe => StepEdits.Add(recipe, "bulk", "rest", "jam", "Jam rest"),
    };

    [Theory]
    [MemberData(nameof(OfAStep))]
    public void StepThatIsGone_IsNamed(string change)
    {
        var reason = Refused(Step[change]);
        Assert.Equal(("edit-step-gone", Grade.Error), (reason.Kind, reason.Grade));
        Assert.Equal("bench-rest", reason.Arguments["step"]);
    }

    [Theory]
    [MemberData(nameof(OfAPart))]
    public void PartThatIsGone_IsNamed(string change)
    {
        var reason = Refused(Part[change]);
        Assert.Equal(("edit-part-gone", Grade.Error), (reason.Kind, reason.Grade));
        Assert.Equal("jam", reason.Arguments["part"]);
    }
}
