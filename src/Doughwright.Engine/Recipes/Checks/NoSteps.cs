namespace Doughwright.Engine.Recipes.Checks;

/// <summary>A recipe that says what goes in and not what is done.</summary>
internal static class NoSteps
{
    public static IEnumerable<Finding> Check(Recipe recipe) => recipe.Steps.Count > 0
        ? []
        : [new Finding { Kind = "no-steps", Grade = Grade.Hint, Place = "steps" }];
}
