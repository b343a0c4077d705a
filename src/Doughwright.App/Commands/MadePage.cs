using System.Text;
using Doughwright.App.Json;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Pages;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>The page for readers of one recipe in one kitchen, the same bytes wherever it is asked for.</summary>
/// <param name="Findings">Everything that is found on the way, in the order of the text.</param>
internal sealed record MadePage(byte[] Bytes, Judgement Findings, Stamp Stamp)
{
    /// <param name="text">The recipe's text.</param>
    /// <param name="found">What is wrong in it.</param>
    /// <param name="photos">The bytes of a photo by its name; null where it is not at hand.</param>
    /// <param name="kitchen">Null is the recipe's home.</param>
    /// <param name="notes">Notes of the book that it lies in; null for a text of no book.</param>
    public static MadePage Of(
        Recipe recipe, string text, IReadOnlyList<Finding> found, Kitchen? kitchen, IReadOnlyList<Finding> kitchenFindings, BookNotes? notes, Voice voice, Func<string, byte[]?>? photos = null)
    {
        var worked = PageRun.Of(recipe, Larder.Shipped, kitchen);
        var all = FindingList.Judged(text, recipe, kitchenFindings, found, RecipeChecks.Of(recipe), worked.Here.Formula.Findings, worked.Here.Findings);
        var stamp = Stamp.Of(recipe);
        var page = ReaderPage.Write(worked, all.Open, new(stamp.State, stamp.Engine, stamp.Larder), voice.Words, voice.Measures, notes?.LinkedFrom(recipe), photos);
        return new(Encoding.UTF8.GetBytes(page), all, stamp);
    }
}
