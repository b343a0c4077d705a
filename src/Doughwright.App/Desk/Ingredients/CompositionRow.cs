using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>What 100 g of an ingredient hold of one thing.</summary>
/// <param name="IsPart">Whether the row above it holds it already.</param>
public sealed record CompositionRow(string Name, Fig Share, bool IsPart)
{
    /// <summary>Decimals of a figure on a label that are still shown.</summary>
    private const int MostDecimals = 3;

    internal static IReadOnlyList<CompositionRow> All(Composition c, Voice voice) => All(c, null, voice);

    /// <summary>Of the author's own: what was typed stands as it was typed.</summary>
    internal static IReadOnlyList<CompositionRow> All(OwnIngredient own, Voice voice) => All(own.Ingredient.Composition, own.Label, voice);

    private static IReadOnlyList<CompositionRow> All(Composition c, Label? label, Voice voice) =>
    [
        Row("water", c.Water, label?.Water, false, voice),
        Row("protein", c.Protein, label?.Protein, false, voice),
        Row("fat", c.Fat, label?.Fat, false, voice),
        Carbohydrate(c, label, voice),
        Row("sugars", c.Sugars, label?.Sugars, true, voice),
        Row("lactose", c.Lactose, label?.Lactose, true, voice),
        Row("fibre", c.Fibre, label?.Fibre, true, voice),
        Row("ash", c.Ash, label?.Ash, false, voice),
        Row("salt", c.Salt, label?.Salt, true, voice),
        .. c.Alcohol is > 0 ? new[] { Row("alcohol", c.Alcohol, label?.Alcohol, false, voice) } : [],
    ];

    /// <summary>All of it counts its fibre. A label that says none leaves what it does say.</summary>
    private static CompositionRow Carbohydrate(Composition c, Label? label, Voice voice) =>
        c.Carbohydrate is null && label?.CarbohydrateWithoutFibre is { } without
            ? new(voice.Words["larder.holds.carbohydrate-without-fibre"], new(Typed(without), without, null), false)
            : Row("carbohydrate", c.Carbohydrate, label?.Carbohydrate, false, voice);

    /// <param name="typed">As it stands on the label; null where it was worked out, or comes with the program.</param>
    private static CompositionRow Row(string key, double? share, double? typed, bool isPart, Voice voice) => new(
        voice.Words["larder.holds." + key],
        new(share is { } known && known == typed ? Typed(known) : LarderWords.Share(share, voice), share, share is null ? null : "composition." + key),
        isPart);

    private static string Typed(double share)
    {
        var decimals = Enumerable.Range(1, MostDecimals).FirstOrDefault(decimals => Math.Round(share, decimals) == share, 1);
        return $"{Show.Number(share, decimals)}\u00a0%";
    }
}
