namespace Doughwright.Engine.Recipes.Checks;

/// <summary>A scald whose bowl is not named: the bowl decides how hot the scald gets.</summary>
internal static class ScaldBowl
{
    public static IEnumerable<Finding> Check(Recipe recipe) => recipe.Steps
        .Where(step => step is { IsPoured: true, Vessel: null })
        .Select(step => step.About("bowl-not-said", Grade.Warning));
}
