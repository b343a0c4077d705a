using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>A recipe in another size, with everything that changed and everything to know about it. Immutable.</summary>
public sealed record Resized
{
    public required ResizeRequest Request { get; init; }

    /// <summary>The recipe as it was, balanced.</summary>
    public required Formula Before { get; init; }

    /// <summary>The recipe in its new size; null when it was refused, and a finding of grade error says why.</summary>
    public required Recipe? Recipe { get; init; }

    /// <summary>The new recipe, balanced; null with <see cref="Recipe"/>.</summary>
    public required Formula? After { get; init; }

    /// <summary>What everything is multiplied by, before rounding; null when refused.</summary>
    public required double? Factor { get; init; }

    /// <summary>The step of the scale that it is rounded to.</summary>
    public required Mass Scale { get; init; }

    /// <summary>That step as a scale in ounces shows it, "0.25 oz"; null for a scale in grams.</summary>
    public string? ScaleInOunces => OunceScale.IsOf(Scale) ? OunceScale.Shown(Scale) : null;

    /// <summary>That step as a finding says it.</summary>
    internal object ScaleShown => ScaleInOunces?.Replace(' ', '\u00a0') ?? (object)Scale;

    /// <summary>Every line that has a mass, in the order of the recipe.</summary>
    public IReadOnlyList<ResizedLine> Lines { get; init; } = [];

    /// <summary>The pieces there can be, nearest to the old weight first; one when the pieces come out even, none when the recipe does not say.</summary>
    public IReadOnlyList<Make> Makes { get; init; } = [];

    /// <summary>What comes in whole pieces and does not come out whole.</summary>
    public IReadOnlyList<WholeChoice> Choices { get; init; } = [];

    /// <summary>Whether it still fits bowls, machine, tins, trays and oven.</summary>
    public IReadOnlyList<Fit> Fits { get; init; } = [];

    /// <summary>What becomes of the times and temperatures measured in the old size; empty until they are worked out.</summary>
    public IReadOnlyList<ResizedMeasure> Measures { get; init; } = [];

    public IReadOnlyList<Finding> Findings { get; init; } = [];
}
