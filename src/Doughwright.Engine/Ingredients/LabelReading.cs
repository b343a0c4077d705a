namespace Doughwright.Engine.Ingredients;

/// <summary>What came of a label.</summary>
/// <param name="Ingredient">Null when there are faults.</param>
/// <param name="Faults">Everything that cannot be true, at once.</param>
public sealed record LabelReading(Ingredient? Ingredient, IReadOnlyList<LabelFault> Faults);

/// <summary>One thing on a label that cannot be true.</summary>
/// <param name="Entry">The entry it is about: "fat"; "all" for the sum.</param>
/// <param name="Grams">What it says, in g per 100 g.</param>
/// <param name="Limit">What it can be at most, or at least, in g per 100 g.</param>
public sealed record LabelFault(LabelFaultKind Kind, string Entry, double Grams, double Limit);

/// <summary>Why a label cannot be true.</summary>
public enum LabelFaultKind
{
    /// <summary>No entry is filled in.</summary>
    NothingSaid,

    /// <summary>Less than nothing.</summary>
    BelowZero,

    /// <summary>More than 100 g in 100 g.</summary>
    AboveHundred,

    /// <summary>A part is more than what it is a part of: sugars than carbohydrate, fibre than total carbohydrate, lactose than sugars.</summary>
    PartAboveWhole,

    /// <summary>All parts together are more than 100 g allows for rounding.</summary>
    SumAboveHundred,

    /// <summary>Salt and sodium are both given and do not agree.</summary>
    SaltAndSodiumDiffer,
}
