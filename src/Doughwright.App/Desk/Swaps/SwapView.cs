using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.App.Text;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Swaps;

/// <summary>A recipe with something swapped, in words for a page.</summary>
/// <param name="Said">What stands in for what, and whether all of it could be made good.</param>
/// <param name="Title">What the new recipe is called when nobody calls it otherwise; null when the swap was refused.</param>
/// <param name="Reasons">Why it was refused.</param>
/// <param name="Names">Names of the larder near to what it does not know.</param>
/// <param name="Left">What could not be made good; null when nothing was swapped.</param>
/// <param name="Thirst">What another flour drinks, and the feel to aim for.</param>
internal sealed record SwapView(
    IReadOnlyList<string> Said,
    string? Title,
    IReadOnlyList<SwapReason> Reasons,
    IReadOnlyList<SwapNames> Names,
    IReadOnlyList<SwapLine> Lines,
    SwapLeft? Left,
    IReadOnlyList<SwapReason> Thirst,
    IReadOnlyList<string> Times,
    IReadOnlyList<string> Allergens,
    IReadOnlyList<string> Buy,
    IReadOnlyList<FindingView> Findings)
{
    private const string OfFlour = "swap-flour-";

    /// <param name="with">Address of this page with another thing standing in for the swap of a number.</param>
    public static SwapView Of(SwappedRecipe made, RecipeFile file, IReadOnlyList<Wish> wishes, Func<int, string, string> with, Voice voice)
    {
        var (swapped, _, times, findings) = made;
        var recipe = file.Recipe!;
        var words = new SwapWords(recipe, voice);
        if (swapped.IsRefused)
        {
            return new(
                [voice.Say("swaps.refused", ("title", recipe.Title))],
                null,
                [.. swapped.Consequences.Where(finding => finding.Grade == Grade.Error).Select(finding => SwapReason.Of(finding, voice))],
                SwapNames.Of(wishes, file.Formula!, with, voice),
                [], null, [], [], [], [], []);
        }

        // What was so before is no matter of the swap. Lines of the text move, so a place counts and no line.
        var known = file.Findings.Concat(file.Formula!.Findings).Concat(Engine.Recipes.Checks.RecipeChecks.Of(recipe)).Concat(swapped.Consequences)
            .Select(finding => (finding.Kind, finding.Place))
            .ToHashSet();
        var told = swapped.Consequences.Where(finding => !IsThirst(finding))
            .OrderByDescending(finding => finding.Grade)
            .Concat(findings.Open.Where(finding => !known.Contains((finding.Kind, finding.Place))));
        return new(
            new SwapAnswer(recipe, swapped, voice).Said(),
            SwapAnswer.TitleOf(recipe, wishes, voice),
            [],
            [],
            [.. swapped.Lines.Select(line => new SwapLine(words.PartOf(line.Component), words.NameOf(line), words.Of(line.Before), words.Of(line.After)))],
            swapped.Lines.Count == 0 ? null : SwapLeft.Of(recipe, swapped.Residuals, voice),
            [.. swapped.Consequences.Where(IsThirst).Select(finding => SwapReason.Of(finding, voice))],
            [.. times.Select(words.Time)],
            [.. AllergenWords.Of(swapped.Allergens, voice)],
            [.. swapped.Buy.Where(change => SwapAnswer.IsSeen(change.Before, change.After, voice)).Select(words.Buy)],
            FindingView.All([.. told], recipe, voice));
    }

    private static bool IsThirst(Finding finding) => finding.Kind.StartsWith(OfFlour, StringComparison.Ordinal);
}

/// <summary>A line before and after.</summary>
public sealed record SwapLine(string Part, string Name, string Before, string After);

/// <summary>What is the case, and what to do.</summary>
public sealed record SwapReason(string Message, string WayOut)
{
    internal static SwapReason Of(Finding finding, Voice voice) => new(FindingWords.Message(finding, voice), FindingWords.WayOut(finding, voice));
}
