using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Sides;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Commands;

/// <summary>Two recipes set side by side in one kitchen.</summary>
/// <param name="FirstName">What it goes by: the name of its file.</param>
internal sealed record ComparedTexts(
    string FirstName,
    Recipe First,
    string SecondName,
    Recipe Second,
    Kitchen Kitchen,
    IReadOnlyList<RecipeDifference> Differences,
    Consequences Consequences)
{
    /// <param name="kitchen">Null for the home of the second: it is the recipe as it is now.</param>
    /// <param name="earlier">Which of the two was written first.</param>
    public static ComparedTexts Of((string Name, Recipe Recipe) first, (string Name, Recipe Recipe) second, Kitchen? kitchen, Tested earlier)
    {
        var (one, other) = (Formula.Balance(first.Recipe, Larder.Shipped), Formula.Balance(second.Recipe, Larder.Shipped));
        var place = kitchen ?? second.Recipe.Home;
        var differences = RecipeDifferences.Between(one, other);
        var by = differences.Count == 0 ? Tested.Each : TestedSide.Of(first.Recipe, second.Recipe, earlier);
        return new(first.Name, first.Recipe, second.Name, second.Recipe, place, differences, Consequences.Between(one, other, Larder.Shipped, place, by));
    }

    /// <summary>What moved each figure: every difference made alone.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Causes Why(Action<int>? tried = null, CancellationToken stop = default) => Causes.Of(Consequences, Differences, Larder.Shipped, Kitchen, tried, stop);

    /// <summary>Whether the kitchen is another than the one it is named after.</summary>
    public bool IsKitchenChanged { get; init; }

    public string KitchenName(Voice voice)
    {
        var name = Kitchen.Name.Length > 0 ? Kitchen.Name : voice.Words["sides.kitchen-unnamed"];
        return IsKitchenChanged ? voice.Say("kitchen-changed", ("kitchen", name)) : name;
    }
}
