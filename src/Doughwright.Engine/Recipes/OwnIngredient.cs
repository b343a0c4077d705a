using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes;

/// <summary>An ingredient of the author's own, with what its label says. The recipe's larder holds it under its name.</summary>
/// <param name="Name">As the lines call it.</param>
/// <param name="Label">What its label says, in 100 g.</param>
/// <param name="Ingredient">What the label comes to; what it does not say is unknown.</param>
public sealed record OwnIngredient(string Name, Label Label, Ingredient Ingredient, Position Position)
{
    /// <summary>The ingredient of a label. Nothing is known of one whose label cannot be true; that is told where it is read.</summary>
    /// <param name="piece">Mass of one, for what is counted; null for what is weighed.</param>
    public static OwnIngredient Of(Label label, Mass? piece, Position position)
    {
        var read = label.Read().Ingredient ?? Nothing(label);
        return new(label.Name, label, read with { Piece = piece }, position);
    }

    private static Ingredient Nothing(Label label)
    {
        var blank = new Label { Name = label.Name, Role = label.Role, Allergens = label.Allergens, Water = 0 };
        return blank.Read().Ingredient! with { Composition = Composition.Unknown };
    }
}
