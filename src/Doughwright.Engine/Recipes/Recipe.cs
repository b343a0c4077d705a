using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes;

/// <summary>A recipe as its author wrote it: what goes in, what is done, what comes out, and the kitchen it was tested in. Immutable.</summary>
public sealed record Recipe
{
    public required string Title { get; init; }

    /// <summary>Where its words were written: it decides what a name, a cup or a large egg means. Null where the text does not say.</summary>
    public Region? Region { get; init; }

    /// <summary>The region as the text says it: "US".</summary>
    public string? RegionCode => Region is { } region ? RegionCodes.CodeOf(region) : null;

    /// <summary>How many pieces of what dough mass; null when the text does not say.</summary>
    public Make? Make { get; init; }

    /// <summary>The kitchen the recipe was tested in. Rehearsed there, the recipe gives what the author measured.</summary>
    public required Kitchen Home { get; init; }

    public required IReadOnlyList<Component> Components { get; init; }

    public required IReadOnlyList<Step> Steps { get; init; }

    /// <summary>The tools the author lists, as written; null when the text has no tool list.</summary>
    public IReadOnlyList<string>? Tools { get; init; }

    /// <summary>Prose for the reader, as written.</summary>
    public string? Words { get; init; }

    /// <summary>Photos of the whole, in the order in which they are shown.</summary>
    public IReadOnlyList<Photo> Photos { get; init; } = [];

    /// <summary>Ingredients of the author's own, as their labels say.</summary>
    public IReadOnlyList<OwnIngredient> Own { get; init; } = [];

    /// <summary>What to do without a tool or an ingredient.</summary>
    public IReadOnlyList<Without> Without { get; init; } = [];

    /// <summary>Swaps the author allows.</summary>
    public IReadOnlyList<AllowedSwap> Swaps { get; init; } = [];

    /// <summary>How what was baked is kept, and for how long.</summary>
    public IReadOnlyList<KeepingAdvice> Keeping { get; init; } = [];

    /// <summary>Findings the author has accepted.</summary>
    public IReadOnlyList<Accepted> Accepted { get; init; } = [];

    /// <summary>A larder with the recipe's own ingredients in it, that takes words as they are meant where the recipe was written.</summary>
    public Larder LarderOver(Larder shipped) =>
        shipped.With(Own.Select(own => own.Ingredient).Where(ingredient => !ReferenceEquals(shipped.WithId(ingredient.Id), ingredient))).In(Region);

    /// <summary>The component with this id, or null.</summary>
    public Component? FindComponent(string id) => Components.FirstOrDefault(component => component.Id == id);

    /// <summary>The step with this id, or null.</summary>
    public Step? FindStep(string id) => Steps.FirstOrDefault(step => step.Id == id);
}

/// <summary>What a recipe makes: "10 rolls of 80 g".</summary>
/// <param name="Pieces">Number of pieces, at least 1.</param>
/// <param name="What">What they are called in the plural, as written: "rolls".</param>
/// <param name="PieceMass">Dough of one piece before baking.</param>
public sealed record Make(int Pieces, string What, Mass PieceMass)
{
    /// <summary>So many pieces, and the word for them with it: one loaf, two loaves.</summary>
    public Make With(int pieces) => this with { Pieces = pieces, What = OneOrMany.Fitted(What, Pieces, pieces) };
}
