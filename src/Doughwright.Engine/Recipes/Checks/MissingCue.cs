namespace Doughwright.Engine.Recipes.Checks;

/// <summary>A bulk, a proof, a ripening, a bake or a cooking without what a person sees when it is done.</summary>
internal static class MissingCue
{
    public static IEnumerable<Finding> Check(Recipe recipe) => recipe.Steps
        .Where(step => step.Kind is StepKind.Bulk or StepKind.Proof or StepKind.Bake || step.IsCooked || step.End is StepEnd.WhenRipe)
        .Where(step => string.IsNullOrWhiteSpace(step.Cue))
        .Select(step => step.About("cue-missing", Grade.Warning));
}
