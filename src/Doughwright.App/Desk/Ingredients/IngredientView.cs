using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>Everything that is known of one ingredient, on its page.</summary>
/// <param name="Holds">Empty for what is known by its name only.</param>
/// <param name="FactsTitle">Head of the sentences.</param>
/// <param name="Facts">Sentences: allergens, what is left of it.</param>
/// <param name="From">Where its figures come from.</param>
public sealed record IngredientView(
    string Title, string CountsAs, IReadOnlyList<CompositionRow> Holds, string FactsTitle, IReadOnlyList<string> Facts, string From, IReadOnlyList<MeasureRow> Measures, IReadOnlyList<UseRow> Uses)
{
    /// <summary>Of one that comes with the program.</summary>
    internal static IngredientView Of(Ingredient row, UsedIn usedIn, Voice voice) => Of(
        row,
        row.HasFigures ? CompositionRow.All(row.Composition, voice) : [],
        voice.Words["larder.good-to-know"],
        [LarderWords.Allergens(row, voice), .. LarderWords.Left(Larder.Shipped.PreparationOf(row), voice) is { } left ? new[] { left } : []],
        row.HasFigures ? LarderWords.Evidence(row.Evidence, voice) : LarderWords.Holds(row, voice),
        MeasureRow.All(Larder.Shipped.MeasuresOf(row), voice),
        usedIn,
        voice);

    /// <summary>Of one of the author's own.</summary>
    internal static IngredientView Of(OwnIngredient own, UsedIn usedIn, Voice voice) => Of(
        own.Ingredient,
        CompositionRow.All(own, voice),
        voice.Words[own.Lot is null && own.Absorption is null ? "larder.own-to-know" : "larder.own-lot-to-know"],
        OwnFacts.All(own, Larder.Shipped, voice),
        OwnFacts.From(own, voice),
        [],
        usedIn,
        voice);

    private static IngredientView Of(
        Ingredient row, IReadOnlyList<CompositionRow> holds, string title, IReadOnlyList<string> facts, string from, IReadOnlyList<MeasureRow> measures, UsedIn usedIn, Voice voice) => new(
        LarderWords.Capital(row.Name),
        voice.Say("larder-role", ("role", voice.Member(row.Role))),
        holds,
        title,
        facts,
        from,
        measures,
        UseRow.All(usedIn.Of(row.Id), voice));
}
