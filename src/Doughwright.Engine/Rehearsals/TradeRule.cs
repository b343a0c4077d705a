using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>The trade's additive rule put to the same question as the heat balance, as a second opinion. Source: additive-rule.</summary>
internal static class TradeRule
{
    /// <param name="riseKelvins">The real rise of the mix; the rule's friction is that times the temperatures it counts.</param>
    public static Temperature Water(Stage stage, Temperature wanted, double riseKelvins)
    {
        var counted = new List<Temperature> { stage.Kitchen.Shelf, stage.Kitchen.Air.At(Duration.Zero) };
        if (stage.Recipe.Components.Any(component => component.Kind == ComponentKind.Preferment))
        {
            counted.Add(stage.Kitchen.Shelf);
        }

        return AdditiveRule.Water(wanted, [.. counted], TemperatureDelta.FromKelvins(riseKelvins * (counted.Count + 1)));
    }
}
