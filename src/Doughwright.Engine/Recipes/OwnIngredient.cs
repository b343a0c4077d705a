using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes;

/// <summary>An ingredient of the author's own, with what its label says. The recipe's larder holds it under its name.</summary>
/// <param name="Name">As the lines call it.</param>
/// <param name="Label">What its label says, in 100 g.</param>
/// <param name="Ingredient">What the label comes to; what it does not say is unknown.</param>
public sealed record OwnIngredient(string Name, Label Label, Ingredient Ingredient, Position Position)
{
    /// <summary>What it is made from, where two weighings tell what it consists of in place of a label.</summary>
    public MadeFrom? Made { get; init; }

    /// <summary>The lot it is of, in the author's words: "bag of 3 November".</summary>
    public string? Lot { get; init; }

    /// <summary>How much water it takes up as a flour; null when nobody said.</summary>
    public Absorption? Absorption { get; init; }

    /// <summary>The ingredient of a label. Nothing is known of one whose label cannot be true; that is told where it is read.</summary>
    /// <param name="piece">Mass of one, for what is counted; null for what is weighed.</param>
    /// <param name="made">What it is made from; then the label has no figures.</param>
    /// <param name="region">Where the words were written.</param>
    public static OwnIngredient Of(Label label, Mass? piece, Position position, MadeFrom? made = null, Region? region = null)
    {
        var read = (made is null ? label.Read().Ingredient : made.Read(label, region)) ?? label.Holding(Composition.Unknown, new("label", null, "label", null, ""));
        return new(label.Name, label, read with { Piece = piece }, position) { Made = made };
    }
}
