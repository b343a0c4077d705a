using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Warming;

namespace Doughwright.App.Commands;

/// <summary>What a command line asks of a warm place. Faults are told together with all others.</summary>
internal sealed class PlaceOptions(Given given, Options options)
{
    /// <summary>Steps in which a dough waits for warmth.</summary>
    public static IReadOnlyList<Step> Rising(Recipe recipe) => [.. recipe.Steps.Where(step => step.Kind is StepKind.Bulk or StepKind.Proof)];

    /// <summary>How warm; null with a fault when it is not said, or cannot be.</summary>
    public Temperature? Target()
    {
        if (!given.Has(options.To))
        {
            given.Faults.Add("to-wanted", ("example", given.Example(options.To)));
        }

        return given.Temperature(options.To, Limits.WarmPlace);
    }

    public PlaceWish Wish() => new() { Lamp = given.Power(options.Lamp, Limits.Lamp), OpenWater = given.Has(options.OpenWater) };

    /// <summary>The step that is named, else the first bulk or proof; null with a fault when there is none.</summary>
    public Step? StepOf(Recipe recipe)
    {
        var rising = Rising(recipe);
        if (given.One(options.Step) is { } name)
        {
            var named = new Names(recipe, given.Faults).Step(options.Step.Name, name);
            if (named is not null && !rising.Contains(named))
            {
                given.Faults.AddUnknown("step-not-rising", name, [.. rising.Select(step => step.Id)], ("option", options.Step.Name));
            }

            return named;
        }

        if (rising.Count == 0)
        {
            given.Faults.Add("nothing-rises");
            return null;
        }

        return rising.FirstOrDefault(step => step.Kind == StepKind.Bulk) ?? rising[0];
    }
}
