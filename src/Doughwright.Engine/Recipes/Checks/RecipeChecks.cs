namespace Doughwright.Engine.Recipes.Checks;

/// <summary>Every check of a recipe that needs neither a formula nor a rehearsal.</summary>
public static class RecipeChecks
{
    private static readonly Func<Recipe, IEnumerable<Finding>>[] All =
    [
        NoSteps.Check,
        OrderOfSteps.Check,
        PartBeforeMix.Check,
        StepTimes.Check,
        Pieces.Check,
        MissingCue.Check,
        RipeOfWhat.Check,
        OvenSaid.Check,
        OvenDial.Check,
        OvenUse.Check,
        ScaldBowl.Check,
        ToolsNotListed.Check,
        ToolsNotUsed.Check,
        LiveNameSlips.Check,
    ];

    /// <summary>What all checks find in a recipe.</summary>
    public static IReadOnlyList<Finding> Of(Recipe recipe) => [.. All.SelectMany(check => check(recipe))];

    internal static Finding About(this Step step, string kind, Grade grade, params (string Name, object Value)[] arguments) => new()
    {
        Kind = kind,
        Grade = grade,
        Place = $"steps.{step.Id}",
        Position = step.Position,
        Arguments = arguments.Prepend(("step", step.Name)).ToDictionary(argument => argument.Item1, argument => argument.Item2),
    };
}
