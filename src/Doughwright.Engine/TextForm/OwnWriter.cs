using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>An own ingredient as a tree, in the order of the form.</summary>
internal static class OwnWriter
{
    /// <param name="region">Of the text that it stands in: it decides what plain carbohydrate holds.</param>
    public static TreeBuilder Over(TreeBuilder builder, OwnIngredient one, Region? region)
    {
        var label = one.Label;
        var isTotal = label.Form == LabelForm.UnitedStates;
        return builder
            .Words(OwnSection.CountsAs, EnumWords<Role>.Of(label.Role))
            .Words(OwnSection.Lot, one.Lot)
            .Words(OwnSection.HundredMillilitres, Grams(label.HundredMillilitres))
            .Words(OwnSection.Fat, Grams(label.Fat))
            .Words(region == Region.UnitedStates ? OwnSection.CarbohydrateWithoutFibre : OwnSection.Carbohydrate, isTotal ? null : Grams(label.Carbohydrate))
            .Words(OwnSection.TotalCarbohydrate, isTotal ? Grams(label.Carbohydrate) : null)
            .Words(OwnSection.Sugars, Grams(label.Sugars))
            .Words(OwnSection.Lactose, Grams(label.Lactose))
            .Words(OwnSection.Fibre, Grams(label.Fibre))
            .Words(OwnSection.Protein, Grams(label.Protein))
            .Words(OwnSection.Salt, Grams(label.Salt))
            .Words(OwnSection.Sodium, label.SodiumMilligrams is { } sodium ? NumberText.Exact(sodium) + " mg" : null)
            .Words(OwnSection.Ash, Grams(label.Ash))
            .Words(OwnSection.Water, Grams(label.Water))
            .Words(OwnSection.Dried, label.Dried is { } dried ? OwnGrammar.Text(dried) : null)
            .Words(OwnSection.Alcohol, Grams(label.Alcohol))
            .Words(OwnSection.MadeFrom, one.Made?.What)
            .Words(OwnSection.Weighed, one.Made is { } made ? OwnGrammar.Text(made.Weighed) : null)
            .Words(OwnSection.Absorption, one.Absorption is { } absorption ? OwnGrammar.Text(absorption) : null)
            .Words(
                OwnSection.Allergens,
                label.Allergens is { Count: 0 } ? OwnSection.None : label.Allergens is { } codes ? string.Join(", ", codes.Select(OwnSection.Spoken)) : null)
            .Words(OwnSection.Piece, one.Ingredient.Piece is { } piece ? ExactText.Of(piece) : null);
    }

    private static string? Grams(double? grams) => grams is { } known ? NumberText.Exact(known) + " g" : null;
}
