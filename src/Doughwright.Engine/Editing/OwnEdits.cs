using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using Names = Doughwright.Engine.Ingredients.Phrase;

namespace Doughwright.Engine.Editing;

/// <summary>Ingredients of the author's own that a recipe takes in, so that its text stays whole by itself.</summary>
public static class OwnEdits
{
    /// <summary>
    /// A change of a recipe with own ingredients at hand: one that a line names for the first time is taken into the recipe. A name that stands in the recipe already
    /// means what it meant.
    /// </summary>
    /// <param name="change">One of the changes of this room.</param>
    public static Func<Recipe, EditAnswer> With(IReadOnlyList<OwnIngredient> atHand, Func<Recipe, EditAnswer> change) => recipe =>
    {
        var news = News(recipe, atHand);
        if (news.Length == 0 || change(AtHand(recipe, news)) is not EditAnswer.Done done)
        {
            return change(recipe);
        }

        var named = NamesIn(done.Recipe);
        return done with { Recipe = done.Recipe with { Own = [.. done.Recipe.Own.Where(own => !news.Contains(own) || named.Contains(Names.Normal(own.Name)))] } };
    };

    /// <summary>A recipe as if it held every own ingredient that a new line of it could name: for what such a line would bring.</summary>
    public static Recipe AtHand(Recipe recipe, IReadOnlyList<OwnIngredient> atHand) =>
        News(recipe, atHand) is { Length: > 0 } news ? recipe with { Own = [.. recipe.Own, .. news] } : recipe;

    /// <summary>Takes an own ingredient into a recipe, in the place of an older version of it.</summary>
    public static EditAnswer Take(Recipe recipe, OwnIngredient own) => new EditAnswer.Done(
        recipe with { Own = Holds(recipe, own) ? [.. recipe.Own.Select(one => Same(one, own) ? own : one)] : [.. recipe.Own, own] },
        Deed.Of("own-taken", ("name", own.Name)));

    /// <summary>The recipe's own version of an ingredient; null when it holds none of this name.</summary>
    public static OwnIngredient? In(Recipe recipe, string name) => recipe.Own.FirstOrDefault(one => Slug.Of(one.Name) == Slug.Of(name));

    /// <summary>Whether a line of the recipe is called so.</summary>
    public static bool IsNamedIn(Recipe recipe, string name) => NamesIn(recipe).Contains(Names.Normal(name));

    /// <summary>Whether two versions of an ingredient say the same.</summary>
    public static bool SayTheSame(OwnIngredient one, OwnIngredient other) => IngredientText.Write(one) == IngredientText.Write(other);

    private static OwnIngredient[] News(Recipe recipe, IReadOnlyList<OwnIngredient> atHand)
    {
        var there = NamesIn(recipe);
        return [.. atHand.Where(own => !there.Contains(Names.Normal(own.Name)) && !Holds(recipe, own))];
    }

    private static bool Holds(Recipe recipe, OwnIngredient own) => recipe.Own.Any(one => Same(one, own));

    private static bool Same(OwnIngredient one, OwnIngredient other) => Slug.Of(one.Name) == Slug.Of(other.Name);

    private static HashSet<string> NamesIn(Recipe recipe) => [.. recipe.Components.SelectMany(part => part.Lines).Where(line => line.Uses is null).Select(line => Names.Normal(line.Name))];
}
