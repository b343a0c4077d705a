using Doughwright.Engine.Baking;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// Dials here for what the author's oven was like inside. Where both ovens are as far off their dials, the author's figure stands; else it is
/// moved by the difference, to the next step of a dial.
/// </summary>
internal static class OvenDials
{
    private const double StepOfADial = 5;

    /// <summary>How the oven is set here; null for a step without an oven.</summary>
    public static Dial? Of(Step step, Stage stage) => step.Oven is { } oven
        ? Set(oven.Dial, oven, stage) with { Then = step.Kind == StepKind.Bake && oven.Then is { } then ? new(then.After, Set(then.Dial, oven, stage)) : null }
        : null;

    /// <summary>How hot it is inside then, °C: the dial told, and how far the oven is off it.</summary>
    public static double Inside(OvenSetting oven, Stage stage) => InsideAt(oven.Dial, oven, stage);

    /// <summary>The same after it was set again.</summary>
    public static double InsideThen(OvenSetting oven, Stage stage) => InsideAt(oven.Then?.Dial ?? oven.Dial, oven, stage);

    private static double InsideAt(Temperature dial, OvenSetting oven, Stage stage)
    {
        var set = Moved(dial, stage);
        var (written, here) = (stage.WrittenModeOf(oven), stage.ModeOf(oven));
        var celsius = written == here ? set.Celsius : DialPairs.Of(set, written, here).Here.Celsius;
        return celsius + stage.Kitchen.OvenTraits.OffDialTaken.Kelvins;
    }

    private static Dial Set(Temperature dial, OvenSetting oven, Stage stage) => DialPairs.Of(Moved(dial, stage), stage.WrittenModeOf(oven), stage.ModeOf(oven));

    /// <summary>An oven that runs hot is set lower for the same bake.</summary>
    private static Temperature Moved(Temperature dial, Stage stage)
    {
        var by = stage.Recipe.Home.OvenTraits.OffDialTaken - stage.Kitchen.OvenTraits.OffDialTaken;
        return by == TemperatureDelta.Zero ? dial : Temperature.FromCelsius(Math.Round((dial + by).Celsius / StepOfADial, MidpointRounding.AwayFromZero) * StepOfADial);
    }
}
