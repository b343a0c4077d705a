using System.Collections.Concurrent;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>Which recipes of the book an ingredient stands in. A recipe is worked out once for each of its states.</summary>
internal sealed class UsedIn(ShelfFolder shelf)
{
    /// <summary>States that are remembered beyond those that the book is in now.</summary>
    private const int Spare = 200;

    private readonly ConcurrentDictionary<(string Name, long State), KnownRecipe?> known = new();

    /// <summary>The recipes that are understood, in the order of their names.</summary>
    public IReadOnlyList<KnownRecipe> All()
    {
        var papers = shelf.RecipeTexts.Papers();
        if (known.Count > papers.Count + Spare)
        {
            known.Clear();
        }

        return [.. papers.AsParallel().AsOrdered().Select(paper => known.GetOrAdd((paper.Name, paper.State), _ => Work(paper))).OfType<KnownRecipe>()];
    }

    /// <summary>Lines that an ingredient stands in, by the id of its row, in the order of the recipes' names.</summary>
    public IReadOnlyList<LineUse> Of(string ingredient) => [.. All().SelectMany(recipe => recipe.Lines).Where(use => use.Ingredient == ingredient)];

    private KnownRecipe? Work(Paper paper) => RecipeFile.Read(paper.Name, shelf) is { Recipe: { } recipe, Formula: { } formula } file
        ? new(
            paper.Name,
            file.Paper.State,
            recipe,
            [
                .. formula.Components.SelectMany(part => part.Lines.Where(line => line.Ingredient is not null).Select(line => new LineUse(
                    line.Ingredient!.Id, paper.Name, recipe.Title, part.Name, $"{paper.Name}:components.{part.Id}.lines.{line.Id}", line))),
            ])
        : null;
}
