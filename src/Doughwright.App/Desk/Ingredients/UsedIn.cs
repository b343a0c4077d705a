using System.Collections.Concurrent;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;

namespace Doughwright.App.Desk.Ingredients;

/// <summary>Which recipes of the book an ingredient stands in. A recipe is worked out once for each of its texts.</summary>
internal sealed class UsedIn(ShelfFolder shelf)
{
    /// <summary>Texts that are remembered beyond those that the book has now.</summary>
    private const int Spare = 200;

    private readonly ConcurrentDictionary<(string Name, string Hash), IReadOnlyList<LineUse>> known = new();

    /// <summary>In the order of the recipes' names.</summary>
    public IReadOnlyList<LineUse> Of(string ingredient)
    {
        var papers = shelf.RecipeTexts.Papers();
        if (known.Count > papers.Count + Spare)
        {
            known.Clear();
        }

        return [.. papers.AsParallel().AsOrdered().SelectMany(paper => known.GetOrAdd((paper.Name, paper.Hash), _ => Lines(paper))).Where(use => use.Ingredient == ingredient)];
    }

    private LineUse[] Lines(Paper paper) => RecipeFile.Read(paper.Name, shelf) is { Recipe: { } recipe, Formula: { } formula }
        ?
        [
            .. formula.Components.SelectMany(part => part.Lines.Where(line => line.Ingredient is not null).Select(line => new LineUse(
                line.Ingredient!.Id, paper.Name, recipe.Title, part.Name, $"{paper.Name}:components.{part.Id}.lines.{line.Id}", line))),
        ]
        : [];
}
