namespace Doughwright.Engine.Recipes;

/// <summary>What a part of a recipe is. Washes, glazes, fillings and toppings are not dough: their lines count outside it.</summary>
public enum ComponentKind
{
    Dough,
    Scald,
    Preferment,

    /// <summary>Ripe sourdough out of the jar: nobody makes it here.</summary>
    Starter,
    Puree,
    Soaker,
    Filling,
    Icing,
    Wash,
    Syrup,
    Topping,
}

/// <summary>A part of a recipe that is made on its own. Its lines may name ingredients or other components.</summary>
/// <param name="Id">Short word, unique in the recipe.</param>
/// <param name="Name">As shown to a person.</param>
public sealed record Component(string Id, string Name, ComponentKind Kind, IReadOnlyList<Line> Lines, Position Position)
{
    /// <summary>Id of the line its percentages are on; null means its flour, or else its largest line.</summary>
    public string? Base { get; init; }

    /// <summary>Whether the component goes into (or is) the dough, so that its flour and water count there.</summary>
    public bool BelongsToDough => Kind is ComponentKind.Dough or ComponentKind.Scald or ComponentKind.Preferment or ComponentKind.Starter or ComponentKind.Puree or ComponentKind.Soaker;
}
