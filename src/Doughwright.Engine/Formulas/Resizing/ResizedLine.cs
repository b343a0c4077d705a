using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>How the mass of a resized line is written.</summary>
public enum LineForm
{
    /// <summary>To the step of the scale.</summary>
    Scale,

    /// <summary>Finer than the scale shows, because rounding to it would change a small dose too much.</summary>
    BelowScale,

    /// <summary>In ounces and pounds, as typed.</summary>
    Ounces,

    /// <summary>In the household measure that was typed.</summary>
    Household,

    /// <summary>Weighed, because the household measure does not come to quarters: in grams, or in ounces where the scale shows those.</summary>
    HouseholdToGrams,

    /// <summary>So many whole pieces as were asked for.</summary>
    Pieces,
}

/// <summary>One line before and after.</summary>
/// <param name="Component">Id of its part.</param>
/// <param name="Line">Id of the line.</param>
/// <param name="Name">As the author wrote it.</param>
/// <param name="Before">As the recipe has it.</param>
/// <param name="Exact">Before times the factor.</param>
/// <param name="After">As it is written now.</param>
/// <param name="Typed">After, in words: "1 lb 12 oz".</param>
/// <param name="Form">How it is written.</param>
public sealed record ResizedLine(string Component, string Line, string Name, Mass Before, Mass Exact, Mass After, string Typed, LineForm Form)
{
    /// <summary>What rounding adds, below zero when it takes away.</summary>
    public Mass Error => After - Exact;

    /// <summary>The error on what it ought to be; null for nothing.</summary>
    public Percent? ErrorPercent => Exact > Mass.Zero ? Percent.Of(Error, Exact) : null;
}
