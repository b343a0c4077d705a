using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// A step on a part in which nothing weighs anything: all its lines are missing, or are not understood. It takes the author's own time, and
/// nothing else of it is told. What it is laid onto stays as it is.
/// </summary>
internal static class OfNothing
{
    public static bool Is(StepInput input) => input.Stage.Component(input.Step.Component).Mass <= Quantities.Mass.Zero;

    public static StepOutcome Run(StepInput input)
    {
        var before = input.Before ?? Matter.Raw(input.Step.Component, input.Stage);
        var part = input.Stage.Recipe.FindComponent(input.Step.Component);
        var stated = PlainSteps.Stated(input, before, before.Celsius, before.Celsius);
        return part is null ? stated : stated with { Findings = [.. stated.Findings, Told(part)] };
    }

    /// <summary>Once for the part, however many steps work on it.</summary>
    private static Finding Told(Component part) => new()
    {
        Kind = "part-weighs-nothing",
        Grade = Grade.Warning,
        Place = $"parts.{part.Id}",
        Position = part.Position,
        Arguments = new Dictionary<string, object> { ["part"] = part.Name },
    };
}
