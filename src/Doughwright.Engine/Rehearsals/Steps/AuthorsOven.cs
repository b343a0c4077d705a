using Doughwright.Engine.Kitchens;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// Whose oven a kitchen has, and so whether it may be off its dial by more than the author's. What the author's own is off its dial is in what it was
/// found to give; another's nobody knows, even if it is of the same kind.
/// </summary>
internal static class AuthorsOven
{
    /// <summary>
    /// Whether a kitchen has the author's own oven: it is the author's place, and its oven is of the same kind. The place is a name up to its first
    /// comma: "Attic, in July" is the attic in another month. A choice. In doubt it is another's, whose range is the wider one.
    /// </summary>
    /// <param name="kitchen">The kitchen to bake in.</param>
    /// <param name="home">The author's.</param>
    public static bool IsIn(Kitchen kitchen, Kitchen home) => kitchen.Oven == home.Oven && PlaceOf(kitchen).SequenceEqual(PlaceOf(home));

    /// <summary>Whether nobody knows how far the oven here is off its dial: it is another's, and its kitchen does not say how it runs.</summary>
    public static bool IsOffByNobodyKnows(Stage stage) =>
        stage.Kitchen.OvenTraits.OffDial is null && !IsIn(stage.Kitchen, stage.Recipe.Home);

    private static ReadOnlySpan<char> PlaceOf(Kitchen kitchen)
    {
        var comma = kitchen.Name.IndexOf(',', StringComparison.Ordinal);
        return kitchen.Name.AsSpan(0, comma < 0 ? kitchen.Name.Length : comma).Trim();
    }
}
