using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Remedies;

/// <summary>Steps and parts of another kind, or in another place, than what is said of them needs.</summary>
internal static class KindRemedies
{
    public static IEnumerable<KeyValuePair<string, Func<Found, IEnumerable<Remedy>>>> All =>
    [
        new("cook-ends-cooler", Cools),
        new("ripe-needs-rest", Rests),
        new("ripe-needs-preferment", Ripens),
        new("ripe-without-preferment", RestsAndRipens),
    ];

    /// <summary>What cools stands in the room; a scald does that under its own name.</summary>
    private static IEnumerable<Remedy> Cools(Found found)
    {
        if (found.Step is { Kind: StepKind.Scald } scald)
        {
            yield return found.Remedy(Verbs.TakeOffHob, recipe => recipe.Step(scald.Id, old => old with { Where = Where.Room }), ("step", scald.Name));
        }
        else if (found.Step is { } step)
        {
            yield return found.Remedy(
                Verbs.WriteStepKind,
                recipe => recipe.Step(step.Id, old => old with { Kind = StepKind.Cool, Where = old.Where == Where.Hob ? Where.Room : old.Where }),
                ("step", step.Name),
                ("kind", EnumWords<StepKind>.Of(StepKind.Cool)));
        }
    }

    private static IEnumerable<Remedy> Rests(Found found)
    {
        if (found.Step is { } step)
        {
            yield return found.Remedy(Verbs.WriteStepKind, recipe => Resting(recipe, step), ("step", step.Name), ("kind", EnumWords<StepKind>.Of(StepKind.Rest)));
        }
    }

    private static IEnumerable<Remedy> Ripens(Found found)
    {
        if (found.Step is { } step && Preferment(found.Recipe, step) is { } part)
        {
            yield return found.Remedy(
                Verbs.WritePartKind, recipe => Ripening(recipe, part), ("part", part.Name), ("kind", EnumWords<ComponentKind>.Of(ComponentKind.Preferment)));
        }

        foreach (var remedy in ByCue(found))
        {
            yield return remedy;
        }
    }

    private static IEnumerable<Remedy> RestsAndRipens(Found found)
    {
        if (found.Step is { } step && Preferment(found.Recipe, step) is { } part)
        {
            yield return found.Remedy(
                Verbs.WriteBothKinds,
                recipe => Ripening(Resting(recipe, step), part),
                ("step", step.Name),
                ("kind", EnumWords<StepKind>.Of(StepKind.Rest)),
                ("part", part.Name),
                ("partKind", EnumWords<ComponentKind>.Of(ComponentKind.Preferment)));
        }

        // A dough that goes into nothing is done when it looks so.
        foreach (var remedy in ByCue(found))
        {
            yield return remedy;
        }
    }

    private static IEnumerable<Remedy> ByCue(Found found)
    {
        if (found.Step is { End: StepEnd.WhenRipe { About: { } about } } step && Preferment(found.Recipe, step) is null)
        {
            yield return found.Remedy(
                Verbs.EndByCue, recipe => recipe.Step(step.Id, old => old with { End = new StepEnd.ByCue(about) }), ("step", step.Name), ("time", about));
        }
    }

    /// <summary>Only what goes into another part can be the preferment of it.</summary>
    private static Component? Preferment(Recipe recipe, Step step) =>
        recipe.FindComponent(step.Component) is { } part && recipe.Components.Any(other => other.Lines.Any(line => line.Uses == part.Id)) ? part : null;

    private static Recipe Resting(Recipe recipe, Step step) => recipe.Step(step.Id, old => old with { Kind = StepKind.Rest });

    private static Recipe Ripening(Recipe recipe, Component part) => recipe.Part(part.Id, old => old with { Kind = ComponentKind.Preferment });
}
