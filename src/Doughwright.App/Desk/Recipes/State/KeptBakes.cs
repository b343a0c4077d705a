using Doughwright.App.Desk.Asking;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Recipes.State;

/// <summary>Bakes over their sections as they were computed on any page of the desk: a second look has them at once.</summary>
internal sealed class KeptBakes
{
    private readonly LatestKept<HomeBakes> homes = new(8);
    private readonly LatestKept<BakesOverSections> bakes = new(48);
    private readonly LatestKept<RehearsalDifferences> differences = new(16);

    /// <summary>Whether a section is to be computed at all.</summary>
    public static bool HasBake(Recipe recipe) => recipe.Steps.Any(step => step is { Kind: StepKind.Bake, Oven: not null });

    /// <summary>Null when they were not computed, or long ago.</summary>
    public BakesOverSections? Find(string text, Understood read) => bakes.Find(KeyOf(text, read));

    /// <param name="text">The recipe's.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public BakesOverSections Make(string text, Formula formula, Understood read, CancellationToken stop) =>
        Find(text, read) ?? bakes.Keep(KeyOf(text, read), Rehearser.OverSections(HomeOf(text, formula, stop), Larder.Shipped, read.Request, stop));

    /// <summary>What moved every figure from one kitchen to another, bakes over their sections; null when it was not worked out, or long ago.</summary>
    public RehearsalDifferences? FindDifferences(string text, Understood first, Understood second) => differences.Find(KeyOf(text, first, second));

    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public RehearsalDifferences MakeDifferences(string text, Formula formula, Understood first, Understood second, CancellationToken stop) =>
        FindDifferences(text, first, second) ?? differences.Keep(
            KeyOf(text, first, second), RehearsalDifferences.BetweenOverSections(HomeOf(text, formula, stop), Larder.Shipped, first.Request, second.Request, stop));

    private HomeBakes HomeOf(string text, Formula formula, CancellationToken stop)
    {
        var key = StateId.OfText(text);
        return homes.Find(key) ?? homes.Keep(key, Rehearser.BakesAtHome(formula, stop));
    }

    private static string KeyOf(string text, params ReadOnlySpan<Understood> all)
    {
        var key = StateId.OfText(text);
        foreach (var read in all)
        {
            key += '\n' + read.Accepted.Query() + '\n' + KitchenText.Write(read.Kitchen);
        }

        return key;
    }
}
