using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Commands;

/// <summary>Finds what a command line names in a recipe: by its id, or by its name as the author wrote it.</summary>
internal sealed class Names(Recipe recipe, Faults faults)
{
    public Step? Step(string option, string given)
    {
        var id = Slug.Of(given);
        if (recipe.Steps.FirstOrDefault(step => step.Id == given || step.Id == id || Slug.Of(step.Name) == id) is { } step)
        {
            return step;
        }

        faults.AddUnknown("step-unknown", given, [.. recipe.Steps.Select(known => known.Id)], ("option", option));
        return null;
    }

    public static bool IsMixed(Step step) => step.Way is not null || step.Kind == StepKind.Mix;

    /// <summary>The step with a name, when it can be done in more than one way: it mixes, or the text has variants of it.</summary>
    public Step? StepOfWays(string option, string given)
    {
        if (Step(option, given) is not { } step || IsMixed(step) || step.Variants.Count > 0)
        {
            return Step(option, given);
        }

        var known = recipe.Steps.Where(other => IsMixed(other) || other.Variants.Count > 0).Select(other => other.Id);
        faults.AddUnknown("step-without-variants", given, [.. known], ("option", option));
        return null;
    }

    /// <summary>The id of a line; the same line id in two parts means both.</summary>
    public string? Line(string option, string given) =>
        Among([.. recipe.Components.SelectMany(component => component.Lines)], "line-unknown", option, given);

    /// <summary>The id of a line that goes into a dough itself: only such a line can be warmed for the dough's temperature.</summary>
    public string? LineOfDough(string option, string given) =>
        Among([.. recipe.Components.Where(component => component.Kind == ComponentKind.Dough).SelectMany(component => component.Lines)], "line-not-in-dough", option, given);

    private string? Among(Line[] lines, string fault, string option, string given)
    {
        var id = Slug.Of(given);
        if (lines.FirstOrDefault(line => line.Id == given || line.Id == id || Slug.Of(line.Name) == id) is { } line)
        {
            return line.Id;
        }

        faults.AddUnknown(fault, given, [.. lines.Select(known => known.Id).Distinct()], ("option", option));
        return null;
    }
}
