using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>Eggs come whole: a part of one that is left over, or a mass that is no whole number of eggs.</summary>
internal static class EggParts
{
    private const string Whole = "egg-whole";
    private const string Yolk = "egg-yolk";
    private const string White = "egg-white";

    // Eggs of one size differ by about this much, so closer is as good as exact.
    private const double SpreadOfOneEgg = 0.1;

    // A teaspoon of white or yolk sticks to the shell anyhow.
    private const double WorthSayingGrams = 8;

    public static IEnumerable<Finding> Check(Formula formula) =>
        new[] { WholeEggs(formula), LeftOver(formula, Yolk, White), LeftOver(formula, White, Yolk) }.OfType<Finding>();

    private static Finding? WholeEggs(Formula formula)
    {
        if (Bought(formula, Whole) is not { Ingredient.Piece: { } piece, Pieces: { } pieces } egg
            || Math.Abs(pieces - Math.Round(pieces)) <= SpreadOfOneEgg * Math.Max(1, pieces) && pieces > SpreadOfOneEgg)
        {
            return null;
        }

        var fewer = piece * Math.Floor(pieces);
        return Make(formula, Whole, "egg-not-whole", ("mass", egg.Used), ("piece", piece), ("fewer", fewer), ("more", fewer + piece));
    }

    private static Finding? LeftOver(Formula formula, string usedId, string otherId)
    {
        if (Bought(formula, usedId) is not { Pieces: { } pieces } used
            || formula.Larder.WithId(otherId) is not { Piece: { } otherPiece } other)
        {
            return null;
        }

        var eggs = Math.Max(1, Math.Ceiling(pieces - SpreadOfOneEgg));
        var left = (otherPiece * eggs) - (Bought(formula, otherId)?.Used ?? Mass.Zero);
        return left.Grams < WorthSayingGrams
            ? null
            : Make(
                formula,
                usedId,
                "egg-part-left-over",
                ("name", used.Name),
                ("mass", used.Used),
                ("eggs", (int)eggs),
                ("other", other.Name),
                ("left", left));
    }

    private static BuyItem? Bought(Formula formula, string id) => formula.Buy.FirstOrDefault(item => item.Ingredient?.Id == id);

    private static Finding Make(Formula formula, string id, string kind, params (string, object)[] arguments) =>
        formula.Lines().First(at => at.Line.Ingredient?.Id == id).About(kind, Grade.Hint, arguments);
}
