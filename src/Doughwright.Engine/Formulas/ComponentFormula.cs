using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas;

/// <summary>One part of a recipe with its quantities.</summary>
public sealed record ComponentFormula
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required ComponentKind Kind { get; init; }

    /// <summary>Everything in it.</summary>
    public required Mass Mass { get; init; }

    /// <summary>All flour in it, that of the parts it uses included.</summary>
    public required Mass Flour { get; init; }

    /// <summary>
    /// All water in it except the flour's own moisture, that of the parts it uses included;
    /// null when a line's water is unknown.
    /// </summary>
    public required Mass? Water { get; init; }

    /// <summary>What its lines' percentages are of: the line the author names, or its own flour lines, or its largest line where it has none.</summary>
    public required Mass Base { get; init; }

    /// <summary>Its water on all the flour in it, or on its base where the author names one or it holds no flour.</summary>
    public required Percent? WaterPercent { get; init; }

    /// <summary>How much of it ends up in the dough, as a fraction of what is made: 1 is all of it, 0 for washes and the like.</summary>
    public required double ShareInDough { get; init; }

    public required IReadOnlyList<LineFormula> Lines { get; init; }

    /// <summary>What 100 g of it consist of, before anything evaporates.</summary>
    public required Composition Composition { get; init; }
}
