using System.Globalization;

namespace Doughwright.Engine.Ingredients;

/// <summary>An ingredient of the author's own as one line of text, to tell two larders apart.</summary>
internal static class OwnText
{
    public static string Of(Ingredient ingredient)
    {
        var c = ingredient.Composition;
        double?[] figures = [ingredient.Piece?.Grams, c.Water, c.Protein, c.Fat, c.Carbohydrate, c.Sugars, c.Fibre, c.Ash, c.Salt, c.Lactose, c.Alcohol];
        string[] words = [ingredient.Name, ingredient.Role.ToString(), string.Join(';', ingredient.Allergens), ingredient.AllergensKnown ? "" : "?"];
        return string.Join('\t', [.. words, .. figures.Select(figure => figure?.ToString("R", CultureInfo.InvariantCulture) ?? "")]);
    }
}
