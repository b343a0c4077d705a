using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>What comes in whole pieces: eggs by the larder, sachets and tins by the measure that was typed.</summary>
internal static class WholeThings
{
    // Eggs of one size differ by about this much, so closer is as good as whole.
    private const double SpreadOfOne = 0.1;

    // Every neighbour is a whole formula; a text made to hold thousands of eggs must not hold up the program.
    private const int MostChoices = 40;

    /// <summary>Mass of one piece; null for what can be divided.</summary>
    public static Mass? PieceOf(LineFormula line) => line.Source switch
    {
        { Uses: not null } => null,
        { Household: { Amount: > 0 } household } when Measures.IsPiece(household) => line.Mass / household.Amount,
        _ => line.Ingredient?.Piece is { Grams: > 0 } piece ? piece : null,
    };

    /// <summary>The whole numbers that can be taken, the smaller first: both neighbours, or the one it comes to. At least 1.</summary>
    public static int[] Neighbours(double needed)
    {
        if (IsWhole(needed))
        {
            return [Count(Math.Round(needed, MidpointRounding.AwayFromZero))];
        }

        var below = Count(Math.Floor(needed));
        return needed < 1 ? [1] : [below, below + 1];
    }

    private static bool IsWhole(double needed) =>
        Math.Round(needed, MidpointRounding.AwayFromZero) is >= 1 and var near && Math.Abs(needed - near) <= SpreadOfOne;

    private static int Count(double pieces) => (int)Math.Clamp(pieces, 0, int.MaxValue - 1);

    /// <summary>Every line that does not come out whole, with its two neighbours and what each shifts.</summary>
    public static IEnumerable<WholeChoice> Choices(Formula before, Formula after, double factor, TakenPieces taken, Larder larder) =>
        All(before, after, factor, taken, larder).Take(MostChoices);

    private static IEnumerable<WholeChoice> All(Formula before, Formula after, double factor, TakenPieces taken, Larder larder)
    {
        foreach (var component in before.Components)
        {
            foreach (var line in component.Lines.Where(line => taken.Of(component.Id, line.Id) is null))
            {
                if (PieceOf(line) is not { } piece || line.Mass <= Mass.Zero)
                {
                    continue;
                }

                var needed = line.Mass * factor / piece;
                if (IsWhole(needed))
                {
                    continue;
                }

                var options = Neighbours(needed).Select(count => Option(before, after, component.Id, line, piece, count, larder));
                yield return new(component.Id, line.Id, line.Name, piece, needed, [.. options]);
            }
        }
    }

    private static WholeOption Option(Formula before, Formula after, string component, LineFormula line, Mass piece, int count, Larder larder)
    {
        var mass = piece * count;
        var changed = Formula.Balance(With(after.Recipe, component, line.Id, mass), larder);
        var whole = mass / line.Mass;
        return new(count, mass, FormulaShift.Between(after, changed), whole, before.Dough * whole);
    }

    private static Recipe With(Recipe recipe, string component, string line, Mass mass) => recipe with
    {
        Components = [.. recipe.Components.Select(part => part.Id != component ? part : part with
        {
            Lines = [.. part.Lines.Select(each => each.Id == line && each.Uses is null ? each with { Mass = mass } : each)],
        })],
    };
}
