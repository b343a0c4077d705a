using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>A line of the part that may give or take, and between which masses.</summary>
/// <param name="Line">Null for water that is not there yet.</param>
internal sealed record Corrector(LineFormula? Line, Composition Composition, double Before, double Low, double High);

/// <summary>
/// Which lines may give or take: the largest of water (or else of liquid), of sugar and of fat. One of each is enough for three things to make
/// good, and leaves the rest of the recipe alone.
/// </summary>
internal static class Correctors
{
    // A line that gives or takes stays the line it was: between half and double.
    public const double Least = 0.5;
    public const double Most = 2;

    public static IReadOnlyList<Corrector> Of(ComponentFormula component, IReadOnlyList<PlannedSwap> swaps, Ingredient? water)
    {
        if (component.Kind is ComponentKind.Wash or ComponentKind.Topping)
        {
            return [];
        }

        var free = component.Lines
            .Where(line => line is { Source.Uses: null, Ingredient: not null, Mass.Grams: > 0 } && PlannedSwap.Known(line.Composition))
            .Where(line => swaps.All(swap => swap.Line.Source.Id != line.Source.Id))
            .ToArray();
        LineFormula? Largest(Role role) => free.Where(line => line.Role == role).MaxBy(line => line.Mass.Grams);
        LineFormula?[] lines = [Largest(Role.Water) ?? Largest(Role.Liquid), Largest(Role.Sugar), Largest(Role.Fat)];
        var correctors = lines.OfType<LineFormula>()
            .Select(line => new Corrector(line, line.Composition, line.Mass.Grams, Least * line.Mass.Grams, Most * line.Mass.Grams))
            .ToList();
        // Who swaps the water itself does not want water.
        var isOfWater = swaps.Any(swap => swap.Line.Role is Role.Water or Role.Liquid);
        if (lines[0] is null && water is not null && TakesWater(component.Kind) && !isOfWater)
        {
            correctors.Add(new(null, water.Composition, 0, 0, swaps.Sum(swap => swap.Line.Mass.Grams)));
        }

        return correctors;
    }

    /// <summary>Water can go into whatever is mixed with flour; a puree or a filling gets none.</summary>
    private static bool TakesWater(ComponentKind kind) => kind is ComponentKind.Dough or ComponentKind.Scald or ComponentKind.Preferment or ComponentKind.Soaker;
}
