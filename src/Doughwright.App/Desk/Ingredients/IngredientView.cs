using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
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
    internal static IngredientView Of(Ingredient row, Larder larder, IReadOnlyList<LineUse> uses, Voice voice) => new(
        LarderWords.Capital(row.Name),
        voice.Say("larder-role", ("role", voice.Member(row.Role))),
        row.HasFigures ? CompositionRow.All(row.Composition, voice) : [],
        voice.Words["larder.good-to-know"],
        [LarderWords.Allergens(row, voice), .. LarderWords.Left(larder.PreparationOf(row), voice) is { } left ? new[] { left } : []],
        row.HasFigures ? LarderWords.Evidence(row.Evidence, voice) : LarderWords.Holds(row, voice),
        MeasureRow.All(larder.MeasuresOf(row), voice),
        UseRow.All(uses, voice));
}
