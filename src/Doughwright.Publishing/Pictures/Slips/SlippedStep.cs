using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Slips;

/// <summary>A step that both runs have, and when it begins in each.</summary>
internal sealed record SlippedStep(string Name, Duration First, Duration Second)
{
    /// <summary>Of the two as they are printed, in whole minutes, so that a reader with a pencil finds the same.</summary>
    public Duration Difference => Duration.FromMinutes(Whole(Second) - Whole(First));

    private static double Whole(Duration duration) => Math.Round(duration.Minutes, MidpointRounding.AwayFromZero);

    /// <summary>The dough's own steps with a known beginning in both, in the order of the first run, and the end.</summary>
    public static IReadOnlyList<SlippedStep> Of(Rehearsal first, Rehearsal second, Voice voice)
    {
        var slips = new List<SlippedStep>();
        foreach (var step in first.Steps.Where(step => IsOfDough(step, first)))
        {
            if (step.Start is { } before && second.FindStep(step.Id) is { Start: { } after } there && there.Kind == step.Kind)
            {
                slips.Add(new(Capital.Of(StepName.Of(step, voice)), before, after));
            }
        }

        if (first.Total is { } firstTotal && second.Total is { } secondTotal)
        {
            slips.Add(new(voice.Say("slips.ready"), firstTotal.Likely, secondTotal.Likely));
        }

        return slips;
    }

    /// <summary>Parts made beforehand have their own clock; what is put in by the tool is no step of the method.</summary>
    private static bool IsOfDough(RehearsedStep step, Rehearsal rehearsal) =>
        !step.IsAdded && step.Kind != StepKind.Preheat && rehearsal.Recipe.FindComponent(step.Component) is { Kind: ComponentKind.Dough };
}
