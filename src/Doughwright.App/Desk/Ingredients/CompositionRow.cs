using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>What 100 g of an ingredient hold of one thing.</summary>
/// <param name="IsPart">Whether the row above it holds it already.</param>
public sealed record CompositionRow(string Name, Fig Share, bool IsPart)
{
    internal static IReadOnlyList<CompositionRow> All(Composition c, Voice voice) =>
    [
        Row("water", c.Water, false, voice),
        Row("protein", c.Protein, false, voice),
        Row("fat", c.Fat, false, voice),
        Row("carbohydrate", c.Carbohydrate, false, voice),
        Row("sugars", c.Sugars, true, voice),
        Row("lactose", c.Lactose, true, voice),
        Row("fibre", c.Fibre, true, voice),
        Row("ash", c.Ash, false, voice),
        Row("salt", c.Salt, true, voice),
        .. c.Alcohol is > 0 ? new[] { Row("alcohol", c.Alcohol, false, voice) } : [],
    ];

    private static CompositionRow Row(string key, double? share, bool isPart, Voice voice) =>
        new(voice.Words["larder.holds." + key], new(LarderWords.Share(share, voice), share, share is null ? null : "composition." + key), isPart);
}
