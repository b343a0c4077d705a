using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// Taking butter out of the fridge early enough: one block on the counter, until its middle has softened enough to be worked in. It ends
/// when the mix wants it, and costs nobody any time.
/// </summary>
internal static class TakeOutStep
{
    /// <summary>What comes so near to the room is told to be as warm as it gets.</summary>
    public static TemperatureDelta Nearly { get; } = TemperatureDelta.FromKelvins(1);

    /// <summary>Whether butter left standing in this room becomes soft and stays in shape.</summary>
    public static bool Suits(Kitchen kitchen) =>
        SoftIn(kitchen) >= ButterStates.Softens && kitchen.Air.At(Duration.Zero) <= ButterStates.CreamsTo + TemperatureDelta.FromKelvins(3);

    /// <summary>Warm enough to be creamed, or nearly as warm as a cooler room.</summary>
    private static Temperature SoftIn(Kitchen kitchen)
    {
        var nearly = kitchen.Air.At(Duration.Zero) - Nearly;
        return nearly < ButterStates.CreamsFrom ? nearly : ButterStates.CreamsFrom;
    }

    public static StepOutcome Run(StepInput input)
    {
        var stage = input.Stage;
        var line = stage.Component(input.Step.Component).Lines.First(other => other.Id == input.Step.Order[0]);
        var block = new Portion
        {
            Mass = line.Mass,
            Composition = line.Composition,
            JoulesPerKelvin = line.Mass * Matter.SpecificHeatOf(line),
            MeltingFat = Matter.MeltingFatOf(line),
            Pieces = 1,
        };
        var nothing = new StepOutcome { After = block, Minutes = PerLane.Same(0, input.Lanes), Basis = Basis.Computed };
        if (block.MeltingFat == Mass.Zero || ThermalProperties.Of(block.Composition, stage.Kitchen.Fridge) is not { } properties)
        {
            return nothing;
        }

        var body = Body.Piece(block.Mass, properties) with { Melting = FatMelting.Butter, MeltingFatShare = block.MeltingFat / block.Mass };
        var fridge = stage.Kitchen.Fridge.Celsius;
        var start = PerLane.Same(fridge, input.Lanes);
        var exchange = ExchangeCoefficient.Covered;
        var cooling = new Cooling(
            body, new(CoolingDirection.Warm, SoftIn(stage.Kitchen)), input.Air, stage.Kitchen.Fridge, exchange.WattsPerSquareMetreKelvin);
        var times = cooling.TimeToReach(Bodies.LanesOf(body, start, Bodies.Draw(exchange, stage.Priors), stage.Priors));
        if (times.NeverEnds(0))
        {
            // The air cools down before the butter is soft: it counts as one that was out already, which the text says of it.
            return nothing;
        }

        return nothing with
        {
            Minutes = new(times.Minutes),
            StartCelsius = start,
            EndCelsius = new(times.EndCelsius),
            Why = () => CoolReasons.Of(
                input,
                cooling,
                fridge,
                times.EndCelsius[0],
                times.Minutes[0],
                exchange.WattsPerSquareMetreKelvin,
                isSolved: false,
                isNear: SoftIn(stage.Kitchen) < ButterStates.CreamsFrom),
        };
    }
}
