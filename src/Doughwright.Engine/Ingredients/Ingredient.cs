using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Ingredients;

/// <summary>One row of the larder.</summary>
public sealed record Ingredient
{
    /// <summary>Short word that survives renames: "wheat-flour-bread-unenriched".</summary>
    public required string Id { get; init; }

    /// <summary>As shown to a person: "strong white flour".</summary>
    public required string Name { get; init; }

    /// <summary>What it counts as unless the author says otherwise.</summary>
    public required Role Role { get; init; }

    public required Composition Composition { get; init; }

    /// <summary>A measured specific heat from a handbook; null means: compute it from the composition.</summary>
    public SpecificHeat? HandbookSpecificHeat { get; init; }

    /// <summary>
    /// Codes of the allergens of the European list ("wheat-gluten"); a final "?" means that it depends on the supplier.
    /// </summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>
    /// Codes of the major allergens of the United States ("wheat", "tree-nut-almond"); a final "?" means that it depends on the supplier.
    /// </summary>
    public IReadOnlyList<string> AllergensUnitedStates { get; init; } = [];

    /// <summary>False when nobody said which allergens it holds, as on an ingredient of the author's own: then an empty list means nothing.</summary>
    public bool AllergensKnown { get; init; } = true;

    /// <summary>Whether its fat melts between fridge and room, as butter's does; oil's does not.</summary>
    public bool MeltsAsButter { get; init; }

    /// <summary>Which yeast it is; null when it is none.</summary>
    public YeastKind? Yeast { get; init; }

    /// <summary>Mass of one piece without shell, for what is counted and cannot be divided; null for what is weighed.</summary>
    public Mass? Piece { get; init; }

    /// <summary>False for what is known by its name only: its role and allergens, and no figure.</summary>
    public bool HasFigures => Composition != Composition.Unknown;

    public required Evidence Evidence { get; init; }
}
