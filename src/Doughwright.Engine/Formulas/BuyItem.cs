using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas;

/// <summary>One thing to buy.</summary>
/// <param name="Name">As the author first wrote it.</param>
/// <param name="Ingredient">The larder's row; null when it is not known.</param>
/// <param name="Used">What goes in, after peeling and cooking.</param>
/// <param name="ToBuy">What to buy for it; null when cooking changes it by an unknown amount.</param>
/// <param name="Pieces">How many pieces that is, for what is counted (eggs); not rounded.</param>
/// <param name="Steps">What lies between the two, from bought to used; empty when it is used as bought.</param>
public sealed record BuyItem(string Name, Ingredient? Ingredient, Mass Used, Mass? ToBuy, double? Pieces, IReadOnlyList<BuyStep> Steps)
{
    /// <summary>Whole eggs that give this and the other part of the egg alike; null where only one part is used.</summary>
    public double? TogetherFromEggs { get; init; }

    /// <summary>Of whole eggs: how many to buy with those of which only a part goes in. Null where no egg is parted.</summary>
    public EggsToBuy? Eggs { get; init; }

    /// <summary>Whether this part of an egg is counted with the whole eggs of the list.</summary>
    public bool IsInEggs { get; init; }
}

/// <summary>Peeling or cooking between buying and using.</summary>
/// <param name="Factor">Mass after over mass before; null when unknown.</param>
/// <param name="Weighed">True when the author weighed it, false when it is the table's figure.</param>
/// <param name="Source">Source id of the table's figure.</param>
/// <param name="Note">What the table's figure belongs to; empty for a weighing.</param>
public sealed record BuyStep(PreparationStep Step, double? Factor, bool Weighed, string? Source, string Note);
