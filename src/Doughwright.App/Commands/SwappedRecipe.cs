using Doughwright.Engine.Formulas;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Remedies;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Commands;

/// <summary>A recipe with something swapped, as the command line and the desk tell it.</summary>
/// <param name="Text">The recipe with the swap carried through as a text; null when it was refused.</param>
/// <param name="Times">The rises that take another time now, by what was measured before.</param>
/// <param name="Findings">Those of the new text and of the swap; when it was refused, those of the old text and why.</param>
internal sealed record SwappedRecipe(Swapped Swapped, string? Text, IReadOnlyList<RehearsedStep> Times, Judgement Findings)
{
    // Minutes: less is lost in reading a rise.
    private const double WorthSaying = 2;

    /// <summary>Null with a fault when what stands in cannot be written into a text.</summary>
    /// <param name="reading">With a recipe.</param>
    /// <param name="text">The text that was read.</param>
    /// <param name="ofText">What was found in it.</param>
    /// <param name="ofBytes">What was found before it was a text.</param>
    /// <param name="option">What a fault names.</param>
    public static SwappedRecipe? Of(
        Reading reading, IReadOnlyList<Wish> wishes, string text, IReadOnlyList<Finding> ofText, IReadOnlyList<Finding> ofBytes, string option, Faults faults)
    {
        var recipe = reading.Recipe!;
        var swapped = Swapping.Swap(recipe, wishes, Larder.Shipped);
        if (swapped.Recipe is null)
        {
            return new(swapped, null, [], FindingList.Judged(text, recipe, ofText, swapped.Consequences));
        }

        var writing = RecipeText.Write(swapped.Recipe, reading.Document);
        var again = RecipeText.Read(writing.Text);
        if (!again.Understood || again.Recipe is null)
        {
            faults.Add("swap-not-plain", ("option", option), ("given", wishes.Select(wish => wish.By).Distinct().ToArray()));
            return null;
        }

        // What was found is told of the new text, with its lines.
        var formula = Formula.Balance(again.Recipe, Larder.Shipped);
        var findings = FindingList.Judged(writing.Text, again.Recipe, ofBytes, again.Findings, writing.Findings, RecipeChecks.Of(again.Recipe), formula.Findings, swapped.Consequences);
        return new(swapped, writing.Text, TimesOf(recipe, swapped), findings);
    }

    private static IReadOnlyList<RehearsedStep> TimesOf(Recipe recipe, Swapped swapped) => swapped.Lines.Count == 0
        ? []
        :
        [
            .. Rehearser.RehearseSwapped(recipe, swapped.Recipe!, Larder.Shipped).Steps
                .Where(step => step.Kind is StepKind.Bulk or StepKind.Proof && recipe.FindStep(step.Id)?.Measured?.Time is not null)
                .Where(step => step.Time is { } time && step.HomeTime is { } home && Math.Abs(time.Likely.Minutes - home.Minutes) >= WorthSaying),
        ];
}
