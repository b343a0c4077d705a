using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Findings that more than one kind of step can raise.</summary>
internal static class StepFindings
{
    /// <summary>How many spreads from its prior a solved scale may lie before it is a finding: 1 in 80 doughs by chance.</summary>
    public const double FarFromPrior = 2.5;

    public const string TimeNotKnown = "time-not-known";

    public static Finding About(Step step, string kind, Grade grade, bool safety = false, params (string Name, object Value)[] arguments) => new()
    {
        Kind = kind,
        Grade = grade,
        Safety = safety,
        Place = $"steps.{step.Id}",
        Position = step.Position,
        Arguments = arguments.Append(("step", step.Name.Length > 0 ? step.Name : step.Id)).ToDictionary(argument => argument.Item1, argument => argument.Item2),
    };

    /// <summary>Lines whose heat nobody knows, so that the bowl's temperature is not told.</summary>
    public static IEnumerable<Finding> HeatNotKnown(Step step, Bowl bowl) =>
        bowl.Unknown.Select(line => About(step, "heat-not-known", Grade.Warning, false, ("line", line.Name)));

    /// <summary>Neither the author nor a model knows how long it takes.</summary>
    public static Finding NoTime(Step step) => About(step, "time-not-known", Grade.Warning);
}
