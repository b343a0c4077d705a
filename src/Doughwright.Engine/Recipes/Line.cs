using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes;

/// <summary>One ingredient, or one other component, with its mass and condition.</summary>
public sealed record Line
{
    /// <summary>Short word, unique in its component: the slug of the name, or the id of the component it uses.</summary>
    public required string Id { get; init; }

    /// <summary>The name as typed: "strong white flour".</summary>
    public required string Name { get; init; }

    /// <summary>The component this line uses, or null when it is an ingredient.</summary>
    public string? Uses { get; init; }

    /// <summary>Mass that goes in, after peeling and cooking; null means all of the component it uses.</summary>
    public Mass? Mass { get; init; }

    /// <summary>The quantity exactly as typed, kept so that it can be printed back: "4 oz".</summary>
    public required string Typed { get; init; }

    /// <summary>The household measure the mass was read from; null when the author weighed.</summary>
    public Household? Household { get; init; }

    /// <summary>The percentage of its part's base that the mass was typed as; null when the author weighed or measured.</summary>
    public Percent? Share { get; init; }

    /// <summary>Conditions as typed, lower case: "boiled", "peeled", "mashed", "soft", "raw".</summary>
    public IReadOnlyList<string> Conditions { get; init; } = [];

    /// <summary>How warm the line goes in, where the author says so.</summary>
    public LineWarmth Warmth { get; init; } = LineWarmth.AsTheRoom;

    /// <summary>What the author says the line counts as; null leaves it to the larder.</summary>
    public string? CountsAs { get; init; }

    /// <summary>What the author weighed before and after cooking.</summary>
    public Weighed? Weighed { get; init; }

    public required Position Position { get; init; }

    /// <summary>Whether the author gave this condition: "boiled".</summary>
    public bool Is(string condition) => Conditions.Contains(condition);
}

/// <summary>A quantity as people measure it in a kitchen: two tablespoons, one large egg, a sachet.</summary>
/// <param name="Amount">How many, above zero.</param>
/// <param name="Unit">The measure as the larder calls it for this ingredient: "tbsp", "cup", "large".</param>
public sealed record Household(double Amount, string Unit);

/// <summary>A weighing before and after cooking: "200 g raw peeled gave 170 g cooked".</summary>
public sealed record Weighed(Mass RawPeeled, Mass Cooked);

/// <summary>Where a line's temperature comes from.</summary>
public enum WarmthKind
{
    AsTheRoom,
    Boiling,
    Fridge,
    Tap,
    Stated,
}

/// <summary>How warm a line goes in. <see cref="Stated"/> is set exactly when the kind is Stated.</summary>
public readonly record struct LineWarmth(WarmthKind Kind, Temperature? Stated)
{
    public static LineWarmth AsTheRoom => new(WarmthKind.AsTheRoom, null);

    /// <summary>As warm as the author says.</summary>
    public static LineWarmth At(Temperature temperature) => new(WarmthKind.Stated, temperature);
}
