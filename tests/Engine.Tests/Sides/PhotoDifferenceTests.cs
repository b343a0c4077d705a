using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Sides;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Sides;

/// <summary>Photos of a recipe and of its steps, one recipe beside another: each photo is a difference of its own, and goes by its bytes.</summary>
public class PhotoDifferenceTests
{
    private const string Crumb = "1f9c03ab77e2d4c1";
    private const string Crust = "00112233445566778899aabbccddeeff";

    private static readonly Recipe Plain = RecipeText.Read(Texts.PotatoRolls).Recipe!;

    private static IReadOnlyList<RecipeDifference> Between(Recipe first, Recipe second) => RecipeDifferences.Between(first, second, Larder.Shipped);

    private static Photo Photo(string name, string words) => new(name, words, Position.None);

    private static Recipe With(params Photo[] photos) => Plain with { Photos = photos };

    private static Recipe AtBake(params Photo[] photos) => Plain with { Steps = [.. Plain.Steps.Select(step => step.Id == "bake" ? step with { Photos = photos } : step)] };

    [Fact]
    public void PhotoLaidToTheRecipe_IsOneDifference_AndTurnedRoundItIsOneTakenOut()
    {
        var there = Assert.Single(Between(Plain, With(Photo(Crumb, "the crumb, cut"))));
        Assert.Equal((Aspect.Photo, null, Crumb), (there.Aspect, there.Step, there.Item));
        Assert.Equal((null, "the crumb, cut"), (there.First, there.Second));
        var back = Assert.Single(Between(With(Photo(Crumb, "the crumb, cut")), Plain));
        Assert.Equal(("the crumb, cut", null), (back.First, back.Second));
    }

    [Fact]
    public void PhotosOfAStep_AreToldOneByOne_WithTheirStep()
    {
        var told = Between(AtBake(Photo(Crumb, "the crumb")), AtBake(Photo(Crust, "the crust")));
        Assert.Equal([(Crumb, "bake", false), (Crust, "bake", true)], told.Select(one => (one.Item!, one.Step!, one.First is null)));
    }

    [Fact]
    public void OtherWords_AreNoOtherPhoto()
    {
        var told = Assert.Single(Between(AtBake(Photo(Crumb, "the crumb")), AtBake(Photo(Crumb, "the crumb, cut"))));
        Assert.Equal(("the crumb", "the crumb, cut"), (told.First, told.Second));
    }

    [Fact]
    public void OnePhotoTakenOver_LeavesTheOthers()
    {
        var (was, now) = (AtBake(Photo(Crumb, "the crumb")), AtBake(Photo(Crust, "the crust")));
        var taken = RecipeDifferences.Take(was, now, Between(was, now).Single(one => one.Item == Crumb))!;
        Assert.Equal([Crumb, Crust], taken.FindStep("bake")!.Photos.Select(photo => photo.Name));
        Assert.Equal([Crust], Between(was, taken).Select(one => one.Item));
    }

    [Fact]
    public void StepThatOnlyOneHas_TakesItsPhotosAlong()
    {
        var was = AtBake(Photo(Crumb, "the crumb"));
        var without = was with { Steps = [.. was.Steps.Where(step => step.Id != "bake")] };
        var told = Assert.Single(Between(was, without));
        Assert.Equal(Aspect.Step, told.Aspect);
        Assert.Equal([Crumb], RecipeDifferences.Take(was, without, told)!.FindStep("bake")!.Photos.Select(photo => photo.Name));
    }

    [Fact]
    public void Photo_MovesNoFigure() => Assert.False(Causes.CanMove(Aspect.Photo));
}
