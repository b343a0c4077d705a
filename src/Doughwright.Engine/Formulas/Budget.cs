using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas;

/// <summary>Where one constituent of the dough comes from.</summary>
/// <param name="AtLeast">The sum of what is known.</param>
/// <param name="Total">The whole; null when a share is unknown.</param>
/// <param name="Shares">By line of the recipe, in its order; lines that bring none are left out.</param>
public sealed record Budget(Mass AtLeast, Mass? Total, IReadOnlyList<BudgetShare> Shares)
{
    /// <summary>The most there can be: what is known, and all of the weight of what is not known. The same as the total where that is known; null where a share has no weight.</summary>
    public required Mass? AtMost { get; init; }
}

/// <summary>What one line brings into the dough; null when unknown.</summary>
public sealed record BudgetShare(string Component, string Line, string Name, Mass? Mass);
