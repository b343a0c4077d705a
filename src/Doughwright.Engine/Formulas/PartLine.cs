using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas;

/// <summary>A line while the formula is being worked out: what it is, and how much of it.</summary>
/// <param name="Uses">The part it uses, already summed up; null for an ingredient.</param>
/// <param name="Raw">The raw row behind a cooked or weighed ingredient.</param>
internal sealed record PartLine(
    Line Source, Mass Mass, Role? Role, Ingredient? Ingredient, Composition Composition, Part? Uses, Ingredient? Raw)
{
    /// <summary>The fraction of the used part that this line takes.</summary>
    public double ShareOfUsed => Uses is { Mass.Grams: > 0 } used ? Mass / used.Mass : 0;

    /// <summary>False for an ingredient whose measure nobody can weigh: it brings an unknown amount of all that is in it.</summary>
    public bool IsWeighed => Uses is not null || Source.Mass is not null;

    public Mass Flour => Uses is { } used ? used.Flour * ShareOfUsed : Role == Ingredients.Role.Flour ? Mass : Mass.Zero;

    /// <summary>Water but the flour's own; null when unknown.</summary>
    public Mass? Water => Uses is { } used
        ? used.Water * ShareOfUsed
        : Role == Ingredients.Role.Flour || (IsWeighed && Mass == Mass.Zero) ? Mass.Zero : Amount(Composition.Water);

    /// <summary>The mass of a constituent given in g per 100 g; null when unknown.</summary>
    public Mass? Amount(double? per100) => per100 is { } share && (IsWeighed || share == 0) ? Mass * (share / 100) : null;
}
