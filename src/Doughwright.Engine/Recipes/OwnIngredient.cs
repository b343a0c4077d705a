using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Recipes;

/// <summary>An ingredient of the author's own, with what its label says. The recipe's larder holds it under its name.</summary>
/// <param name="Name">As the lines call it.</param>
/// <param name="Ingredient">What the label says of it; what it does not say is unknown.</param>
public sealed record OwnIngredient(string Name, Ingredient Ingredient, Position Position);
