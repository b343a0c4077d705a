using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Editing;

/// <summary>A line that may be meant by what is being typed.</summary>
/// <param name="Name">What it is called: "sunflower oil".</param>
/// <param name="Typed">What stands in the field once it is taken, in words that are understood: "30 g sunflower oil".</param>
public sealed record LineOffer(string Name, string Typed)
{
    /// <summary>The larder's row; null for another part, and for what the larder does not know.</summary>
    public Ingredient? Ingredient { get; init; }

    /// <summary>Id of the part that would go in; null for an ingredient.</summary>
    public string? Part { get; init; }

    /// <summary>The line as it would stand in the recipe; null as long as no amount is typed, and where it cannot be added.</summary>
    public LineFormula? Line { get; init; }

    /// <summary>Whether the part has such a line already, so that it cannot be added again.</summary>
    public bool IsThere { get; init; }
}
