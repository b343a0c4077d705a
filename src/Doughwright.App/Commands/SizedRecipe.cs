using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Remedies;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Commands;

/// <summary>A recipe in another size, as the command line and the desk tell it.</summary>
/// <param name="Text">The recipe in its new size as a text; null when it was refused.</param>
/// <param name="Findings">Those of the text and the kitchen, and of the resizing.</param>
internal sealed record SizedRecipe(Resized Resized, string? Text, Judgement Findings)
{
    /// <param name="reading">With a recipe.</param>
    /// <param name="text">The text that was read.</param>
    /// <param name="besides">What was found before anything was resized.</param>
    public static SizedRecipe Of(Reading reading, ResizeRequest request, string text, params IReadOnlyList<Finding>[] besides)
    {
        var resized = Resizing.Resize(reading.Recipe!, Larder.Shipped, request);
        var writing = resized.Recipe is { } recipe ? RecipeText.Write(recipe, reading.Document) : null;
        return new(resized, writing?.Text, FindingList.Judged(text, reading.Recipe!, [.. besides, resized.Findings, writing?.Findings ?? []]));
    }
}
