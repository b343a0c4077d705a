using Doughwright.Engine.Recipes;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>A recipe of the book that was worked out, with every line that has an ingredient.</summary>
/// <param name="State">The state that it is in.</param>
internal sealed record KnownRecipe(string Name, long State, Recipe Recipe, IReadOnlyList<LineUse> Lines);
