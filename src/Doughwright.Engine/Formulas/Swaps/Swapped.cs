using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>A recipe with something swapped, and what that cost.</summary>
public sealed record Swapped
{
    /// <summary>The recipe with the swap carried through; null when the swap was refused.</summary>
    public required Recipe? Recipe { get; init; }

    /// <summary>Its formula; null when the swap was refused.</summary>
    public required Formula? Formula { get; init; }

    /// <summary>Every line that is not what it was, in the order of the recipe.</summary>
    public required IReadOnlyList<SwappedLine> Lines { get; init; }

    /// <summary>What could not be made good: for the dough, and for each part outside it that was touched.</summary>
    public required IReadOnlyList<SwapResidual> Residuals { get; init; }

    /// <summary>What another flour drinks, where flour was swapped.</summary>
    public required IReadOnlyList<FlourThirst> Thirst { get; init; }

    public required AllergenChange Allergens { get; init; }

    /// <summary>What is bought more, less, newly or no longer.</summary>
    public required IReadOnlyList<BuyChange> Buy { get; init; }

    /// <summary>What the swap does to the recipe, in findings; or, when it was refused, why.</summary>
    public required IReadOnlyList<Finding> Consequences { get; init; }

    public bool IsRefused => Recipe is null;
}

/// <summary>How a line changed.</summary>
public enum LineChange
{
    /// <summary>Another ingredient stands in its place.</summary>
    Replaced,

    /// <summary>It gives or takes water, sugar, fat or salt.</summary>
    Corrected,

    /// <summary>It was not there before.</summary>
    Added,

    /// <summary>It is gone.</summary>
    Removed,
}

/// <summary>A line before and after. What was not there has neither name nor mass.</summary>
/// <param name="Component">Id of the part.</param>
/// <param name="Line">Id of the line, as it is now; as it was, when it is gone.</param>
public sealed record SwappedLine(
    string Component, string Line, LineChange Change, string? NameBefore, Mass? Before, string? NameAfter, Mass? After);

/// <summary>What a swap changed in all, after everything was made good that can be: above zero is more than before.</summary>
/// <param name="Component">Id of a part outside the dough; null for the dough.</param>
/// <param name="Water">Of the dough's flour, or of what the part's percentages are on. Null when unknown, as the others.</param>
/// <param name="Sugar">Everything sweet.</param>
/// <param name="Fat">All fat.</param>
/// <param name="Salt">All salt.</param>
public sealed record SwapResidual(string? Component, Percent? Water, Percent? Sugar, Percent? Fat, Percent? Salt)
{
    /// <summary>In percent, of water, sugar or fat: what a hand begins to feel. Common practice, no source.</summary>
    public const double Felt = 0.5;
}

/// <summary>How much more water another flour drinks; below zero is less. A range from practice, never worked out from composition.</summary>
/// <param name="Low">Points of water on the flour that was swapped.</param>
/// <param name="LowMass">The same for the mass that was swapped.</param>
public sealed record FlourThirst(string Component, string Line, double Low, double High, Mass LowMass, Mass HighMass);

/// <summary>The allergens of the recipe, by name; what depends on the brand counts among them and stands in <paramref name="ByLabel"/> too.</summary>
/// <param name="ByLabel">Those of <paramref name="After"/> that depend on the brand.</param>
public sealed record AllergenChange(
    IReadOnlyList<string> Before, IReadOnlyList<string> After, IReadOnlyList<string> Gained, IReadOnlyList<string> Lost, IReadOnlyList<string> ByLabel);

/// <summary>What goes in of one thing to buy, before and after; null when it is not bought.</summary>
/// <param name="Ingredient">Id of the larder's row; null when it is not known.</param>
public sealed record BuyChange(string Name, string? Ingredient, Mass? Before, Mass? After);
