using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Recipes.Notes;

/// <summary>Which notes the steps of a recipe link to.</summary>
public static class NoteLinks
{
    /// <summary>Links of one step; more would bury it.</summary>
    public const int MostOfStep = 4;

    /// <summary>Every link as typed, with the step it is at, in the order of the method. A note that a step names twice is named once.</summary>
    public static IEnumerable<(Step Step, string Name)> Of(Recipe recipe) =>
        from step in recipe.Steps
        from name in step.Learn.DistinctBy(Slug.Of)
        select (step, name);

    /// <summary>Links to notes that are not in the book. Only where there is a book: a text by itself keeps its links.</summary>
    /// <param name="isThere">Whether the book has a note of this name.</param>
    /// <param name="names">Names of all notes of the book, for the nearest; looked at only when one is missing.</param>
    public static IReadOnlyList<Finding> Missing(Recipe recipe, Func<string, bool> isThere, Func<IReadOnlyList<string>> names) =>
    [
        .. Of(recipe).Where(link => !isThere(link.Name)).Select(link => new Finding
        {
            Kind = "note-not-in-book",
            Grade = Grade.Warning,
            Place = $"steps.{link.Step.Id}.learn",
            Position = link.Step.Position,
            Arguments = new Dictionary<string, object>
            {
                ["name"] = link.Name,
                ["step"] = link.Step.Name,
                ["nearest"] = Nearest.Within(InWords(Slug.Of(link.Name)), names().Select(InWords)) ?? "",
            },
        }),
    ];

    /// <summary>The name of a note as it is written at a step.</summary>
    private static string InWords(string name) => name.Replace('-', ' ');
}
