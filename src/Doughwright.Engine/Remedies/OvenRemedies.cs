using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Remedies;

/// <summary>Dials, cores and trays.</summary>
internal static class OvenRemedies
{
    private const double StepOfADial = 5;

    public static IEnumerable<KeyValuePair<string, Func<Found, IEnumerable<Remedy>>>> All =>
    [
        new("oven-mode-not-said", Mode),
        new("oven-dial-unusual", OtherUnit),
        new("core-above-boiling", Core),
        new("trays-missing", Trays),
    ];

    /// <summary>The oven of the recipe's own kitchen first.</summary>
    private static IEnumerable<Remedy> Mode(Found found)
    {
        if (found.Step is not { Oven: { Dial: var dial } } step)
        {
            yield break;
        }

        foreach (var mode in Enum.GetValues<OvenMode>()
            .Where(mode => mode != OvenMode.Deck || mode == found.Recipe.Home.Oven)
            .OrderByDescending(mode => mode == found.Recipe.Home.Oven))
        {
            yield return found.Remedy(
                Verbs.WriteDial, recipe => recipe.Step(step.Id, old => old with { Oven = old.Oven! with { Dial = dial, Mode = mode } }), ("dial", dial), ("mode", mode), ("step", step.Name));
        }
    }

    private static IEnumerable<Remedy> OtherUnit(Found found)
    {
        if (found.Step is { Oven: { } oven } step)
        {
            // What is written as 325 C and meant as 325 F.
            var dial = Temperature.FromFahrenheit(Math.Round(oven.Dial.Celsius / StepOfADial) * StepOfADial);
            yield return found.Remedy(
                Verbs.WriteDialAlone, recipe => recipe.Step(step.Id, old => old with { Oven = oven with { Dial = dial } }), ("dial", dial), ("step", step.Name));
        }
    }

    private static IEnumerable<Remedy> Core(Found found)
    {
        if (found.Step is { } step && found.Value<Temperature>("offered") is { } offered && Limits.Core.Holds(offered))
        {
            yield return found.Remedy(Verbs.WriteCore, recipe => recipe.Step(step.Id, Ending(offered)), ("core", offered), ("step", step.Name));
        }
    }

    private static Func<Step, Step> Ending(Temperature core) => step => step with { End = new StepEnd.AtCore(core) };

    private static IEnumerable<Remedy> Trays(Found found)
    {
        if (found.Step is { } step && found.Recipe.Home.Trays is > 0 and var there)
        {
            yield return found.Remedy(Verbs.WriteTrays, recipe => recipe.Step(step.Id, old => old with { Trays = there }), ("trays", there), ("step", step.Name));
        }
    }
}
