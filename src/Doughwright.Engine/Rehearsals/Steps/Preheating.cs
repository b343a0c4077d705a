using Doughwright.Engine.Baking;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>How long an oven heats: at its own pace, and until a stone in it is hot where something is baked on that.</summary>
internal static class Preheating
{
    /// <summary>A stone that is so many kelvins behind its oven is hot. A choice.</summary>
    private const double Hot = 5;

    /// <param name="room">°C.</param>
    /// <param name="set">°C.</param>
    public static double Minutes(Step step, Stage stage, double room, double set)
    {
        var mode = stage.ModeOf(step.Oven);
        var minutes = Math.Max(0, Ovens.HeatingMinutes(mode, stage.Kitchen.OvenTraits) * (set - room) / Ovens.HeatingSpan);
        return minutes + (BakesOnStone(step, stage) && Ovens.HearthOf(stage.Kitchen) is { } hearth && mode != Kitchens.OvenMode.Deck
            ? HeatsThrough(Ovens.Slab(mode, hearth, 0), minutes, set - room)
            : 0);
    }

    /// <summary>
    /// Minutes that a slab on a rack is still behind when the oven is hot. It takes heat on both sides, as one: behind an oven that climbs at a rate r
    /// it is r τ (1 - exp(-t/τ)) cooler, and then less by 1/e in every τ = ρ c d/(2 h).
    /// </summary>
    internal static double HeatsThrough(OvenHearth slab, double minutes, double span)
    {
        var constant = slab.HeatCapacity * slab.Thick / (2 * slab.Below) / 60;
        var behind = minutes > 0 ? span * constant / minutes * (1 - Elementary.Exp(-minutes / constant)) : 0;
        return behind > Hot ? constant * Elementary.Log(behind / Hot) : 0;
    }

    private static bool BakesOnStone(Step step, Stage stage) =>
        step.On == BakedOn.Stone || stage.Recipe.Steps.Any(bake => bake is { Kind: StepKind.Bake, On: BakedOn.Stone });
}
