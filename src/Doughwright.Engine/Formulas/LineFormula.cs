using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas;

/// <summary>One line of a part with its quantities.</summary>
public sealed record LineFormula
{
    public required string Id { get; init; }

    /// <summary>As the author wrote it.</summary>
    public required string Name { get; init; }

    /// <summary>What it counts as; null for a line that uses another part, and for an ingredient that is not known.</summary>
    public required Role? Role { get; init; }

    public required Mass Mass { get; init; }

    /// <summary>False where the text gives a measure that nobody can weigh, or none: then <see cref="Mass"/> is zero and every sum is without it.</summary>
    public bool IsMassKnown => Source.Uses is not null || Source.Mass is not null;

    /// <summary>Its water as bakers count it: a flour's own moisture is zero here. Null when unknown.</summary>
    public required Mass? Water { get; init; }

    /// <summary>On the base of its own part; null when the part weighs nothing or the line cannot be weighed.</summary>
    public required Percent? Percent { get; init; }

    /// <summary>
    /// On all flour of the dough, as far as the part goes into it (as made, for what stays outside);
    /// null when there is no flour or the line cannot be weighed.
    /// </summary>
    public required Percent? OverallPercent { get; init; }

    /// <summary>The larder's row; null for a line that uses another part, and when no single row fits.</summary>
    public required Ingredient? Ingredient { get; init; }

    /// <summary>What 100 g of it consist of: from the larder, from the author's weighing, or from the part it uses.</summary>
    public required Composition Composition { get; init; }

    /// <summary>The line of the recipe.</summary>
    public required Line Source { get; init; }

    /// <summary>The same for all lines that are added up as one thing; flaky salt is another thing than salt.</summary>
    public required string Kind { get; init; }

    /// <summary>Id of the part it uses; null for an ingredient, and when that part does not exist.</summary>
    public required string? UsesComponent { get; init; }
}
