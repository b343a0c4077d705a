using CsCheck;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Sides;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Sides;

/// <summary>What holds of the differences between any two recipes.</summary>
public class RecipeDifferenceLaws
{
    private static IReadOnlyList<RecipeDifference> Between(Recipe first, Recipe second) => RecipeDifferences.Between(first, second, Larder.Shipped);

    [Fact]
    public void ARecipe_DiffersInNothingFromItself() => RecipeGen.Recipe.Sample(recipe =>
        Assert.Empty(Between(recipe, RecipeText.Read(RecipeText.Write(recipe)).Recipe!)));

    [Fact]
    public void EverySingleChange_IsADifference() => Gen.Select(RecipeGen.Recipe, RecipeGen.Recipe, Which).Sample((recipe, other, which) =>
    {
        var (name, make) = OneChange.All[which];
        if (make(recipe, other) is { } changed && StateId.Of(changed) != StateId.Of(recipe) && !IsOrderOfAList(recipe, changed))
        {
            Assert.True(Between(recipe, changed).Count > 0, name);
        }
    }, iter: 1500);

    /// <summary>Every kind of change is made at least once in a recipe that has the thing, so that none is only ever left out.</summary>
    [Fact]
    public void EveryKindOfChange_CanBeMade() => Assert.All(OneChange.All, change => Assert.True(
        Enumerable.Range(0, 40).Any(seed => (One(RecipeGen.Recipe, seed), One(RecipeGen.Recipe, seed + 1000)) is var (recipe, other)
            && change.Make(recipe, other) is { } changed && StateId.Of(changed) != StateId.Of(recipe)),
        change.Name));

    [Fact]
    public void SidesTurned_TurnEveryDifferenceAndItsSign() => Gen.Select(RecipeGen.Recipe, RecipeGen.Recipe, Which).Sample((recipe, other, which) =>
    {
        foreach (var second in new[] { other, OneChange.All[which].Make(recipe, other) }.OfType<Recipe>())
        {
            var (there, back) = (Between(recipe, second), Between(second, recipe));
            Assert.Equal(there.Count, back.Count);
            Assert.All(there, difference =>
            {
                var turned = back.Single(difference.IsAboutSame);
                Assert.Equal(-difference.By, turned.By);
                Assert.Equal(difference.First is null, turned.Second is null);
            });
        }
    }, iter: 300);

    /// <summary>What is brought back one after the other comes to the recipe that it was.</summary>
    [Fact]
    public void EverythingTakenOver_IsTheOtherRecipe() => Gen.Select(RecipeGen.Recipe, RecipeGen.Recipe, Which).Sample((recipe, other, which) =>
    {
        foreach (var changed in new[] { other, OneChange.All[which].Make(recipe, other) }.OfType<Recipe>())
        {
            var at = changed;
            // What can only be taken over after something else is met in a later round.
            for (var round = 0; round < 4; round++)
            {
                foreach (var difference in Between(recipe, at))
                {
                    at = Between(recipe, at).FirstOrDefault(difference.IsAboutSame) is { } still ? RecipeDifferences.Take(recipe, at, still) ?? at : at;
                }
            }

            Assert.Empty(Between(recipe, at).Select(difference => (difference.Aspect, difference.Part, difference.Line, difference.Step)));
        }
    }, iter: 60);

    private static readonly Gen<int> Which = Gen.Int[0, OneChange.All.Count - 1];

    private static T One<T>(Gen<T> of, int number) => of.Generate(new PCG(1, (ulong)number), null, out _);

    /// <summary>In which order tools and advice stand does not matter to a baker.</summary>
    private static bool IsOrderOfAList(Recipe recipe, Recipe changed) =>
        recipe.Own.Count == changed.Own.Count && recipe.Own.All(own => changed.Own.Any(other => other.Name == own.Name))
        && StateId.Of(Sorted(recipe)) == StateId.Of(Sorted(changed));

    private static Recipe Sorted(Recipe recipe) => recipe with
    {
        Keeping = [.. recipe.Keeping.OrderBy(one => one.Words, StringComparer.Ordinal).ThenBy(one => one.For?.Minutes)],
        Swaps = [.. recipe.Swaps.OrderBy(one => $"{one.What}|{one.By}|{one.Part}|{one.Tried}|{one.Words}", StringComparer.Ordinal)],
        Without = [.. recipe.Without.OrderBy(one => one.What + one.Words, StringComparer.Ordinal)],
        Own = [.. recipe.Own.OrderBy(one => one.Name, StringComparer.Ordinal)],
    };
}
