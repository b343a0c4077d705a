using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What another window of this desk did to a recipe that this one shows.</summary>
/// <param name="IsGone">Whether it was taken off the shelf.</param>
/// <param name="Did">What is otherwise there, in words; empty when it is gone.</param>
public sealed record Elsewhere(bool IsGone, string Did)
{
    /// <summary>Null when the recipe is still as it is shown.</summary>
    internal static Elsewhere? Of(RecipeFile shown, ShelfFolder shelf, Voice voice)
    {
        if (shelf.RecipeTexts.Find(shown.Name)?.State == shown.Paper.State)
        {
            return null;
        }

        return RecipeFile.Read(shown.Name, shelf) is not { } there
            ? new(true, "")
            : new(false, ChangeWords.Now(new(shown.Text, shown.Formula), new(there.Text, there.Formula), voice) is { Length: > 0 } told ? told : there.Paper.Did);
    }
}
