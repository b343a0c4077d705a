using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Editing;

/// <summary>A text names its photos; laying one in touches no other line.</summary>
public class PhotoEditTests
{
    private static readonly string Hash = new('a', 64);

    private static string Done(string text, Func<Recipe, EditAnswer> change) => Assert.IsType<EditedText.Changed>(Editor.Carry(text, change)).Text;

    private static string Refused(string text, Func<Recipe, EditAnswer> change) => Assert.IsType<EditedText.Refused>(Editor.Carry(text, change)).Reasons[0].Kind;

    [Theory]
    [InlineData(null)]
    [InlineData("bulk")]
    public void Photo_IsLaid_SaidOtherwise_AndTakenOut(string? step)
    {
        var text = Done(Texts.PotatoRolls, recipe => PhotoEdits.Lay(recipe, step, Hash, "the crumb, cut open"));
        Assert.Single(text.Split('\n').Except(Texts.PotatoRolls.Split('\n')), line => line.Trim() == "photo: aaaaaaaaaaaaaaaa, the crumb, cut open");
        var second = Done(text, recipe => PhotoEdits.Lay(recipe, step, new('b', 64), "the crust"));
        Assert.Equal(["the crumb, cut open", "the crust"], Photos(second, step).Select(photo => photo.Words));
        Assert.Equal("edit-photo-there", Refused(text, recipe => PhotoEdits.Lay(recipe, step, Hash, "again")));
        Assert.Equal("edit-photo-words", Refused(text, recipe => PhotoEdits.Lay(recipe, step, new('b', 64), " ")));
        var said = Done(text, recipe => PhotoEdits.Say(recipe, step, "aaaaaaaaaaaaaaaa", "the crumb"));
        Assert.Equal("the crumb", Assert.Single(Photos(said, step)).Words);
        Assert.Equal(Texts.PotatoRolls, Done(said, recipe => PhotoEdits.TakeOut(recipe, step, "aaaaaaaaaaaaaaaa")));
        Assert.Equal("edit-photo-gone", Refused(Texts.PotatoRolls, recipe => PhotoEdits.TakeOut(recipe, step, "aaaaaaaaaaaaaaaa")));
    }

    private static IReadOnlyList<Photo> Photos(string text, string? step) =>
        RecipeText.Read(text).Recipe! is var recipe && step is not null ? recipe.FindStep(step)!.Photos : recipe.Photos;
}
