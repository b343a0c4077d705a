using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Courses;
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
            var minutes = Towards(body, start.Central, around, exchange, target).TimeToReach(Lane(start.Central, exchange)).Minutes[0];
            return double.IsFinite(minutes) ? Duration.FromMinutes(minutes) : null;
        }
    }

    /// <summary>How the part goes there, in the bath or in the fridge.</summary>
    public static IReadOnlyList<WayPoint> Follow(Step step, StepOutcome outcome, Stage stage, Temperature target, bool inBath)
    {
        var (around, exchange) = inBath ? (stage.Kitchen.Tap, ExchangeCoefficient.WaterBath) : (stage.Kitchen.Fridge, ExchangeCoefficient.StillFridge);
        var (start, body) = (outcome.StartCelsius!.Value.Central, Bodies.Of(step, outcome.After)!);
        var cooling = Towards(body, start, around, exchange, target);
        var times = cooling.TimeToReach(Lane(start, exchange));
        return CoolingWay.Of(cooling, Lane(start, exchange), times.Minutes[0], target.Celsius);
    }

    private static Cooling Towards(Body body, double start, Temperature around, ExchangeCoefficient exchange, Temperature target) => new(
        body,
        new(CoolingDirection.Cool, target),
        AirProfile.Constant(around),
        Temperature.FromCelsius(start),
        exchange.WattsPerSquareMetreKelvin);

    private static CoolingLanes Lane(double start, ExchangeCoefficient exchange) => new([start], [exchange.WattsPerSquareMetreKelvin]);
}
