using System.Collections;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>Whether two values of a recipe say the same. Where in a text they stand does not matter.</summary>
internal static class Alikeness
{
    public static bool Of(object? one, object? other) => (one, other) switch
    {
        (string a, string b) => a == b,
        (OtherWay a, OtherWay b) => a.Id == b.Id && Of(a.Said, b.Said),
        // What is said of another way counts, not what the step itself says.
        (RecipeDifference a, RecipeDifference b) => a.Aspect == b.Aspect && Of(a.Second, b.Second),
        (OwnIngredient a, OwnIngredient b) => a.Ingredient.Piece == b.Ingredient.Piece && Of(a.Label, b.Label),
        (Label a, Label b) => a with { Allergens = null } == b with { Allergens = null } && Of(a.Allergens, b.Allergens),
        (IEnumerable a, IEnumerable b) => Of([.. a.Cast<object?>()], [.. b.Cast<object?>()]),
        _ => Equals(one, other),
    };

    private static bool Of(object?[] one, object?[] other) => one.Length == other.Length && one.Zip(other).All(pair => Of(pair.First, pair.Second));
}
