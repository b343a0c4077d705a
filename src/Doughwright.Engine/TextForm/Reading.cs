using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>What came of reading a recipe text: as much of the recipe as can be built, and everything that is wrong, at once.</summary>
/// <param name="Recipe">Null only when nothing sensible can be built. A line or step that could not be read is not in it, and a finding
/// says so.</param>
/// <param name="Findings">In the order of the text.</param>
/// <param name="Document">The text as a tree with its comments, to be handed back when the recipe is written; null when there is
/// none.</param>
public sealed record Reading(Recipe? Recipe, IReadOnlyList<Finding> Findings, TextDocument? Document)
{
    /// <summary>Every line was understood, though something may be wrong.</summary>
    public bool Understood => !Findings.Any(finding => finding.NotUnderstood);

    /// <summary>Nothing is wrong: no finding of grade error.</summary>
    public bool Sound => !Findings.Any(finding => finding.Grade == Grade.Error);
}

/// <summary>What came of reading a kitchen text.</summary>
/// <param name="Kitchen">Null when its air is not known, or something in it is wrong.</param>
public sealed record KitchenReading(Kitchen? Kitchen, IReadOnlyList<Finding> Findings, TextDocument? Document)
{
    /// <summary>Every line was understood, and what they say lies outside what can be: no kitchen is like that.</summary>
    public bool IsImpossible => Understood && Findings.Any(finding => finding.Grade == Grade.Error)
        && Findings.All(finding => finding.Grade != Grade.Error || finding.Kind.EndsWith("-outside-limits", StringComparison.Ordinal));

    /// <summary>Every line was understood, though something may be wrong.</summary>
    public bool Understood => !Findings.Any(finding => finding.NotUnderstood);

    /// <summary>Nothing is wrong: no finding of grade error.</summary>
    public bool Sound => !Findings.Any(finding => finding.Grade == Grade.Error);
}
