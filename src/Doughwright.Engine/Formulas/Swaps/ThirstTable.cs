using System.Globalization;
using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>
/// How much more or less another flour drinks: the difference of two ranges, low against high, so that it is as unsure as both. Composition
/// says nothing about it. Source: flour-thirst.
/// </summary>
internal static class ThirstTable
{
    private static readonly Lazy<(string Id, double Low, double High)[]> Table = new(() =>
    [
        .. Tsv.Read(Tsv.Embedded("flour-thirst.tsv")).Rows.Select(row => (row["id"], Points(row["low"]), Points(row["high"]))),
    ]);

    /// <summary>Null when one of the two flours is not in the table.</summary>
    public static FlourThirst? Of(PlannedSwap swap)
    {
        if (Range(swap.Line.Ingredient) is not { } was || Range(swap.By?.Ingredient) is not { } becomes)
        {
            return null;
        }

        var (low, high) = (becomes.Low - was.High, becomes.High - was.Low);
        var flour = swap.Line.Mass * swap.Component.ShareInDough;
        return new(swap.Component.Id, swap.Line.Source.Id, low, high, flour * (low / 100), flour * (high / 100));
    }

    private static (double Low, double High)? Range(Ingredient? flour) =>
        flour is not null && Table.Value.FirstOrDefault(row => Traits.Means(row.Id, flour.Id)) is { Id: not null } found ? (found.Low, found.High) : null;

    private static double Points(string cell) => double.Parse(cell, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}
