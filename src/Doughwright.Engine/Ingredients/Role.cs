namespace Doughwright.Engine.Ingredients;

/// <summary>What a line counts as. Said by the author or defaulted by the larder, never guessed from composition.</summary>
public enum Role
{
    Flour,
    Water,
    Liquid,
    Sugar,
    Fat,
    Salt,
    Yeast,
    Egg,
    Starchy,
    Flavour,
    Topping,
}
