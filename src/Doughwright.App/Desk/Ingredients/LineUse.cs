using Doughwright.Engine.Formulas;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>A line of a recipe that an ingredient stands in.</summary>
/// <param name="Ingredient">Id of its row.</param>
/// <param name="Recipe">Name of the recipe's text in the book.</param>
/// <param name="Of">Where the line stands in the JSON of the command line.</param>
internal sealed record LineUse(string Ingredient, string Recipe, string Title, string Part, string Of, LineFormula Line);
