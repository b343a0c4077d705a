using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>What the models of a rehearsal make of the lines of a dough.</summary>
internal static class DoughOf
{
    /// <summary>Its lines put together, as warm as nobody says.</summary>
    public static (Portion Portion, ComponentFormula Component) Portion(Component lines)
    {
        var component = Balanced(lines).Components[0];
        return (Rehearsals.Steps.Matter.Of(component, [.. component.Lines.Select(line => Rehearsals.Steps.Matter.PartOf(line, new Dictionary<string, Portion>()))], null), component);
    }

    /// <summary>As its rise depends on it; null when something in it is not known.</summary>
    public static DoughMatter? Matter(Component lines) => Rising.MatterOf(Balanced(lines).Components[0], Balanced(lines));

    /// <summary>With the priors of a dough of its flour.</summary>
    public static (RiseDough Dough, RiseParameters Parameters)? Rises(Component lines)
    {
        var formula = Balanced(lines);
        var parameters = Priors.For(Rehearser.OrdinaryLanes, RisePriors.For(HomeRun.FlourOf(formula).Ceiling.Likely)).Rise;
        return Matter(lines) is { } matter && matter.FreshYeast > Mass.Zero && matter.Water > Mass.Zero && matter.Flour > Mass.Zero ? (RiseDough.Of(matter, parameters), parameters) : null;
    }

    private static Formula Balanced(Component lines) =>
        Formula.Balance(CaseRecipe.Of(lines, new() { Air = AirProfile.Constant(Temperature.FromCelsius(21)) }, []), Larder.Shipped);
}
