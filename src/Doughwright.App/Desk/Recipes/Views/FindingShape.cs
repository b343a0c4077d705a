using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>Which mark a finding bears: what is wrong a full square, what is missing a dashed one, what is risky a triangle, what is good to know a circle.</summary>
internal static class FindingShape
{
    /// <summary>Kinds that say that something is not written; whatever their grade, it can be added.</summary>
    public static IReadOnlySet<string> Missing { get; } = new HashSet<string>(StringComparer.Ordinal)
    {
        "air-missing", "bowl-not-said", "component-without-step", "cooking-change-not-known", "cue-missing", "form-missing", "heat-not-known", "home-missing",
        "ingredient-not-clear", "ingredient-not-known", "ingredient-not-known-at-all", "kind-missing", "kitchen-name-missing", "mass-not-said", "missing-component",
        "mixing-bowl-not-said", "no-steps", "oven-mode-not-said", "oven-not-said", "part-without-lines", "parts-missing", "piece-not-said", "proof-trays-missing",
        "own-role-missing", "quantity-missing", "raw-or-cooked-not-said", "salt-missing", "start-not-known", "step-without-part", "time-not-known", "title-missing", "tool-not-listed",
        "trays-missing", "unit-missing", "value-missing", "yeast-missing", "yeast-missing-in-preferment", "yeast-not-known",
    };

    /// <summary>What keeps a figure from being known: told where it would stand.</summary>
    public static IReadOnlySet<string> Hides { get; } = new HashSet<string>(StringComparer.Ordinal)
    {
        "never-rises-here", "never-warms-here", "never-ends-here", "never-ends-here-but-in-fridge", "never-ends-here-at-all",
    };

    public static MarkShape Of(Finding finding) => Missing.Contains(finding.Kind)
        ? MarkShape.Missing
        : finding.Grade switch
        {
            Grade.Error => MarkShape.Wrong,
            Grade.Warning => MarkShape.Risky,
            _ => MarkShape.Note,
        };

    public static bool SaysWhatWouldHelp(Finding finding) => Missing.Contains(finding.Kind) || Hides.Contains(finding.Kind) || finding.Grade == Grade.Error;
}
