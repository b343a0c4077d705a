using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals;

/// <summary>How long a part takes to cool in a bath of tap water, or in the fridge, where the room is too warm for it; null for a way that does not get there.</summary>
internal sealed record WaysOut(Duration? Bath, Duration? Fridge)
{
    public static WaysOut Of(Step step, StepOutcome outcome, Stage stage, Temperature target)
    {
        if (outcome.StartCelsius is not { } start || Bodies.Of(step, outcome.After) is not { } body)
        {
            return new(null, null);
        }

        return new(In(stage.Kitchen.Tap, ExchangeCoefficient.WaterBath), In(stage.Kitchen.Fridge, ExchangeCoefficient.StillFridge));

        Duration? In(Temperature around, ExchangeCoefficient exchange)
        {
            var cooling = new Cooling(
                body,
                new(CoolingDirection.Cool, target),
                AirProfile.Constant(around),
                Temperature.FromCelsius(start.Central),
                exchange.WattsPerSquareMetreKelvin);
            var minutes = cooling.TimeToReach(new([start.Central], [exchange.WattsPerSquareMetreKelvin])).Minutes[0];
            return double.IsFinite(minutes) ? Duration.FromMinutes(minutes) : null;
        }
    }
}
