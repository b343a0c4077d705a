namespace Doughwright.Engine.Ingredients;

/// <summary>How a household measure was found.</summary>
public enum MeasureMatchKind
{
    /// <summary>Exactly one measure fits.</summary>
    Exact,

    /// <summary>Several fit and weigh different amounts: cups of three sizes, sifted or not, large here and there.</summary>
    NotClear,

    /// <summary>It is a measure, and none of this ingredient is known by it. It is not guessed from another ingredient.</summary>
    NotHeld,

    /// <summary>Nobody measures so, as far as the larder knows.</summary>
    Unknown,
}

/// <summary>What the larder makes of a household measure of an ingredient.</summary>
/// <param name="Measure">The measure, when exactly one fits; else null.</param>
/// <param name="Candidates">Those that fit when it is not one alone.</param>
/// <param name="Known">All measures that this ingredient has, for a person to choose from.</param>
public sealed record MeasureMatch(
    MeasureMatchKind Kind,
    Measure? Measure,
    IReadOnlyList<Measure> Candidates,
    IReadOnlyList<Measure> Known);
