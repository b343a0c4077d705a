using Doughwright.Engine.Kitchens;

namespace Doughwright.Engine.Recipes.Checks;

/// <summary>Steam, lids and stones where they do nothing.</summary>
internal static class OvenUse
{
    public static IEnumerable<Finding> Check(Recipe recipe)
    {
        foreach (var step in recipe.Steps)
        {
            var isSaid = step is { Steam: not null } or { LidOff: not null } or { On: not BakedOn.Tray };
            if (step.Kind is not (StepKind.Bake or StepKind.Preheat) && isSaid)
            {
                yield return step.About("oven-words-elsewhere", Grade.Warning);
            }
            else if (step.LidOff is not null && step.Vessel is not { Shape: VesselShape.Pot or VesselShape.Tin })
            {
                yield return step.About("lid-of-nothing", Grade.Warning);
            }
            else if (step is { LidOff: { } off, Steam: { } steam } && steam <= off)
            {
                yield return step.About("steam-under-lid", Grade.Hint, ("steam", steam), ("lid", off));
            }
        }
    }
}
