using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>What recipes are compared by as a whole.</summary>
internal static class WholeTraits
{
    public static IReadOnlyList<Trait<Recipe>> All { get; } =
    [
        new(Aspect.Title, recipe => recipe.Title, (from, into) => into with { Title = from.Title }),
        new(Aspect.Region, recipe => recipe.Region, (from, into) => into with { Region = from.Region }),
        OfMake(Aspect.Pieces, make => make.Pieces, (from, into) => into with { Pieces = from.Pieces }),
        OfMake(Aspect.PieceName, make => make.What, (from, into) => into with { What = from.What }),
        OfMake(Aspect.PieceMass, make => make.PieceMass, (from, into) => into with { PieceMass = from.PieceMass }),
        OfHome(Aspect.HomeName, home => home.Name, (from, into) => into with { Name = from.Name }),
        OfHome(Aspect.HomeAir, home => home.Air, (from, into) => into with { Air = from.Air }),
        OfHome(Aspect.HomeAltitude, home => home.Altitude, (from, into) => into with { Altitude = from.Altitude }),
        OfHome(Aspect.HomeTap, home => home.Tap, (from, into) => into with { Tap = from.Tap }),
        OfHome(Aspect.HomeFridge, home => home.Fridge, (from, into) => into with { Fridge = from.Fridge }),
        OfHome(Aspect.HomeOven, home => home.Oven, (from, into) => into with { Oven = from.Oven }),
        OfHome(Aspect.HomeOvenTraits, home => home.OvenTraits, (from, into) => into with { OvenTraits = from.OvenTraits }),
        OfHome(Aspect.HomeTrays, home => home.Trays, (from, into) => into with { Trays = from.Trays }),
        OfHome(Aspect.HomeScale, home => home.Scale, (from, into) => into with { Scale = from.Scale }),
        OfHome(Aspect.HomeShelf, home => home.Ingredients, (from, into) => into with { Ingredients = from.Ingredients }),
        OfHome(Aspect.HomeProof, home => home.ProofingPlace, (from, into) => into with { ProofingPlace = from.ProofingPlace }),
        new(Aspect.Words, recipe => recipe.Words, (from, into) => into with { Words = from.Words }),
    ];

    /// <summary>A make that is not there has no pieces, no name and no weight.</summary>
    private static Trait<Recipe> OfMake(Aspect aspect, Func<Make, object> of, Func<Make, Make, Make> take) => new(
        aspect,
        recipe => recipe.Make is { } make ? of(make) : null,
        (from, into) => into with { Make = from.Make is { } make ? take(make, into.Make ?? make) : null });

    private static Trait<Recipe> OfHome(Aspect aspect, Func<Kitchen, object?> of, Func<Kitchen, Kitchen, Kitchen> take) => new(
        aspect,
        recipe => of(recipe.Home),
        (from, into) => into with { Home = take(from.Home, into.Home) });
}
