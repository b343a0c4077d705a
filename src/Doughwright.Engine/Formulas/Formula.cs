using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas;

/// <summary>What a recipe's quantities come to: every part on its own base, and the dough as a whole. Immutable, unrounded.</summary>
public sealed record Formula
{
    public required Recipe Recipe { get; init; }

    /// <summary>The larder it was worked out with.</summary>
    public required Larder Larder { get; init; }

    /// <summary>Every part, in the order of the recipe.</summary>
    public required IReadOnlyList<ComponentFormula> Components { get; init; }

    /// <summary>All flour of the dough, scalded and prefermented flour included.</summary>
    public required Mass Flour { get; init; }

    /// <summary>All of the dough. Washes, icings, fillings and toppings are outside it.</summary>
    public required Mass Dough { get; init; }

    /// <summary>False where a line of the dough cannot be weighed: then <see cref="Dough"/> and what is summed with it are without that line.</summary>
    public bool IsMassKnown => Components.Where(part => part.ShareInDough > 0).All(part => part.Lines.All(line => line.IsMassKnown));

    /// <summary>The names of all lines that cannot be weighed, each once: every sum is without them.</summary>
    public IReadOnlyList<string> Unweighed => [.. Components.SelectMany(part => part.Lines).Where(line => !line.IsMassKnown).Select(line => line.Name).Distinct()];

    /// <summary>The dough on its flour.</summary>
    public required FormulaPercents Percent { get; init; }

    /// <summary>The dough's yeast in the three forms it is sold in; null when a yeast is not known.</summary>
    public required YeastEquivalents? Yeast { get; init; }

    /// <summary>Where the dough's water comes from. The flour's own moisture is left out, as bakers do.</summary>
    public required Budget Water { get; init; }

    /// <summary>Where everything sweet in the dough comes from, the flour's own sugar included.</summary>
    public required Budget Sugar { get; init; }

    /// <summary>Where the fat of the dough comes from, the flour's own fat included.</summary>
    public required Budget Fat { get; init; }

    /// <summary>What to buy, for every part, washes and fillings included; water from the tap is left out.</summary>
    public required IReadOnlyList<BuyItem> Buy { get; init; }

    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>
    /// Works out the formula of a recipe. What is wrong or unknown in the recipe becomes a finding;
    /// it never throws for that.
    /// </summary>
    public static Formula Balance(Recipe recipe, Larder larder) => Balancer.Balance(recipe, larder);

    /// <summary>The final dough unlaid into what its lines bring; null when there is no final dough.</summary>
    public Makeup? Makeup() => MakeupTable.Of(this);

    /// <summary>The component with this id, or null.</summary>
    public ComponentFormula? FindComponent(string id) => Components.FirstOrDefault(component => component.Id == id);
}
