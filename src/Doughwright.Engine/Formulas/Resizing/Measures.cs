using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>
/// Household measures after resizing: they stay where they come to quarters, and what comes in pieces where it comes to whole ones. A quarter
/// may be a fiftieth off, which is less than two people differ who fill the same spoon. Source: spoon-spread.
/// </summary>
internal static class Measures
{
    private const double Quarter = 0.25;
    private const double WorstQuarter = 0.02;

    /// <summary>Measures that come in pieces: half of one cannot be had.</summary>
    private static readonly HashSet<string> Pieces = new(StringComparer.OrdinalIgnoreCase)
    {
        "egg", "large", "medium", "small", "extra large", "jumbo", "yolk", "white", "piece", "sachet", "packet", "envelope", "package", "pack", "tin",
        "can", "jar", "bar", "cube", "stick",
    };

    /// <summary>Whether half of one cannot be had.</summary>
    public static bool IsPiece(Household household)
    {
        // "European large", "US sachet", "tin drained": where it is sold stands before the piece, and its form behind.
        var words = household.Unit.ToLowerInvariant().Split(' ');
        RegionCodes.Take(ref words);
        return Pieces.Contains(words[0]) || (words.Length > 1 && Pieces.Contains($"{words[0]} {words[1]}"));
    }

    /// <summary>The resized measure as written, with the mass that it then is; null when grams say it better.</summary>
    public static (string Typed, Household Household, Mass Mass)? Typed(ScaledLine line)
    {
        if (line.Source.Household is not { Amount: > 0 } measure || line.Before <= Mass.Zero)
        {
            return null;
        }

        var step = IsPiece(measure) ? 1 : Quarter;
        var exact = measure.Amount * (line.Exact / line.Before);
        var amount = Math.Round(exact / step, MidpointRounding.AwayFromZero) * step;
        if (amount <= 0 || Math.Abs((amount / exact) - 1) > WorstQuarter || Renumbered(line.Source.Typed, amount) is not { } typed)
        {
            return null;
        }

        return (typed, measure with { Amount = amount }, line.Before * (amount / measure.Amount));
    }

    /// <summary>What was typed with another number in front: "2 tbsp" with 3 is "3 tbsp", "1 sachet" with 2 is "2 sachets". Null when no number stands in front.</summary>
    public static string? Renumbered(string typed, double amount)
    {
        if (MixedNumber.Lead(typed) is not var (_, length))
        {
            return null;
        }

        // A point stays a point; who writes quarters as fractions gets them so.
        var isFraction = typed.AsSpan(0, length).ContainsAnyExcept("0123456789.,");
        return (isFraction ? MixedNumber.Text(amount) ?? NumberText.Exact(amount) : NumberText.Exact(amount)) + PieceWords.Counted(typed[length..], amount);
    }
}
