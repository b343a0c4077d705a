using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Balance;

/// <summary>What a dough consists of, in the order of the picture.</summary>
internal enum Matter
{
    Flour,
    Water,
    Sugar,
    Fat,
    Rest,

    /// <summary>Of a line whose make-up is not known in full: what its known parts leave.</summary>
    Unknown,
}

/// <summary>Shares of one line.</summary>
internal static class MatterOf
{
    public static IReadOnlyList<Matter> All { get; } = [Matter.Flour, Matter.Water, Matter.Sugar, Matter.Fat, Matter.Rest, Matter.Unknown];

    /// <summary>Below this, in g, a share is rounding noise of the sums before.</summary>
    private const double Noise = 1e-6;

    /// <summary>Grams of one sort; null when it is not known. All that are known add up to the mass of the line.</summary>
    public static double? Grams(MakeupRow row, Matter matter) => matter switch
    {
        Matter.Flour => row.Flour.Grams,
        Matter.Water => row.Water?.Grams,
        Matter.Sugar => row.Sugar?.Grams,
        Matter.Fat => row.Fat?.Grams,
        Matter.Rest => row.Rest?.Grams,
        _ => Unknown(row),
    };

    public static bool IsKnown(MakeupRow row) => row is { Water: not null, Sugar: not null, Fat: not null, Rest: not null };

    /// <summary>The known grams of one sort in all lines together.</summary>
    public static double Total(Makeup makeup, Matter matter) => makeup.Rows.Sum(row => Grams(row, matter) ?? 0);

    /// <summary>Whether there may be more of it than is known.</summary>
    public static bool IsAtLeast(Makeup makeup, Matter matter) => makeup.Rows.Any(row => Grams(row, matter) is null);

    private static double Unknown(MakeupRow row)
    {
        if (IsKnown(row))
        {
            return 0;
        }

        var known = row.Flour + (row.Water ?? Mass.Zero) + (row.Sugar ?? Mass.Zero) + (row.Fat ?? Mass.Zero) + (row.Rest ?? Mass.Zero);
        var left = (row.Mass - known).Grams;
        return left < Noise ? 0 : left;
    }
}
