using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>
/// A tray or a tin larger than most home ovens are inside. No kitchen says how large its oven is, so beyond an ordinary one it cannot be told.
/// </summary>
internal static class OvenRoom
{
    // Ordinary home ovens end about here, by width and by depth. Common practice, no source.
    public static readonly Length Longest = Length.FromMetres(0.50);
    public static readonly Length Widest = Length.FromMetres(0.45);

    // Higher than this there is no room between the rack and the roof. Common practice, no source.
    private static readonly Length Highest = Length.FromMetres(0.35);

    public static IEnumerable<Fit> Of(Recipe recipe, ResizeWish wish)
    {
        if (IsBeyond(wish) && recipe.Steps.FirstOrDefault(step => step.Kind == StepKind.Bake) is { } bake)
        {
            yield return new(FitKind.Oven, FitVerdict.CannotBeTold, bake.Id, bake.Name);
        }
    }

    /// <summary>Whether what is asked for goes into no ordinary home oven.</summary>
    public static bool IsBeyond(ResizeWish wish) => wish switch
    {
        ResizeWish.Tin(var size, _) => IsBeyond(size),
        ResizeWish.Tray(var size, _) => IsBeyond(size),
        _ => false,
    };

    private static bool IsBeyond(VesselSize size)
    {
        if (size.Long is not { } one)
        {
            return size.Stated is { } room && room > Volume.FromLitres(1000 * Longest.Metres * Widest.Metres * Highest.Metres);
        }

        var other = size.Wide ?? one;
        var (longer, shorter) = one > other ? (one, other) : (other, one);
        return longer > Longest || shorter > Widest || size.Deep > Highest;
    }
}
