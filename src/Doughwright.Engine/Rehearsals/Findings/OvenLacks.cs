using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>What a bake asks of an oven and this one has not: a stone, steam, time to heat through; and a dial set again when all is over.</summary>
internal static class OvenLacks
{
    public static IEnumerable<Finding> Of(RunResult here)
    {
        var kitchen = here.Stage.Kitchen;
        foreach (var (step, outcome) in here.Each().Where(pair => pair.Step.Kind == StepKind.Bake))
        {
            if (step.On == BakedOn.Stone && Ovens.HearthOf(kitchen) is null)
            {
                yield return StepFindings.About(step, "no-stone-here", Grade.Warning);
            }

            if (step.Steam is { } steam && kitchen.OvenTraits.Steam == OvenSteam.None)
            {
                yield return StepFindings.About(step, "no-steam-here", Grade.Warning, false, ("time", steam));
            }

            if (outcome.Minutes is { Central: var minutes } && double.IsFinite(minutes))
            {
                if (step.Oven?.Then is { } then && then.After.Minutes >= minutes)
                {
                    yield return StepFindings.About(step, "dial-after-end", Grade.Hint, false, ("after", then.After), ("minutes", Duration.FromMinutes(minutes)));
                }

                if (step.LidOff is { } off && off.Minutes >= minutes)
                {
                    yield return StepFindings.About(step, "lid-to-the-end", Grade.Hint, false, ("after", off), ("minutes", Duration.FromMinutes(minutes)));
                }
            }
        }
    }
}
