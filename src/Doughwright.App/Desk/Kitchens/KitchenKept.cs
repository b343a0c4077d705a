using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Kitchens;

/// <summary>The kitchen of a recipe's page as it is set there, about to be kept by name.</summary>
/// <param name="Recipe">Name of the recipe's file.</param>
/// <param name="Set">What is set on its page.</param>
/// <param name="Kitchen">The kitchen that this comes to.</param>
internal sealed record KitchenKept(string Recipe, Question Set, Kitchen Kitchen)
{
    /// <summary>Null when there is no such recipe, or its text is not understood.</summary>
    public static KitchenKept? Of(string recipe, Question question, ShelfFolder shelf, Words words)
    {
        if (RecipeFile.Read(recipe, shelf) is not { Recipe: { } known })
        {
            return null;
        }

        var read = new QuestionReader(known, recipe, shelf, words).Read(question, MeasureSystem.Metric);
        return new(recipe, read.Accepted, read.Kitchen);
    }

    /// <summary>Lays the kitchen into the folder under this name.</summary>
    /// <returns>The recipe's page in that kitchen; null with a fault when it could not be written.</returns>
    public string? Keep(string name, ShelfFolder shelf, Faults faults)
    {
        KitchenNaming.Check(name, KitchenOnShelf.All(shelf), faults);
        if (faults.Any)
        {
            return null;
        }

        try
        {
            var file = shelf.KitchenTexts.Lay(TextNames.Of(name, "kitchen"), KitchenText.Write(Kitchen with { Name = name }), faults.Voice.Words["book.laid"]);
            return $"/recipes/{Uri.EscapeDataString(Recipe)}{Set.Without(Question.OfKitchen).With(Question.Kitchen, file).Query()}";
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("kitchen-not-written", ("folder", shelf.KitchenTexts.Path), ("reason", problem.Message));
            return null;
        }
    }
}
