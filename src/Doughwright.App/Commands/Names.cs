using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

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
    /// <param name="part">The id of the only part it is looked for in; null for every part.</param>
    public string? Line(string option, string given, string? part = null) =>
        Among([.. recipe.Components.Where(component => part is null || component.Id == part).SelectMany(component => component.Lines)], "line-unknown", option, given);

    /// <summary>The id of a part, by its id or its name.</summary>
    public string? Part(string option, string given)
    {
        var id = Slug.Of(given);
        if (recipe.Components.FirstOrDefault(part => part.Id == given || part.Id == id || Slug.Of(part.Name) == id) is { } found)
        {
            return found.Id;
        }

        faults.AddUnknown("swap-part-unknown", given, [.. recipe.Components.Select(part => part.Id)], ("option", option));
        return null;
    }

    /// <summary>The id of a line that goes into a dough itself: only such a line can be warmed for the dough's temperature.</summary>
    public string? LineOfDough(string option, string given) =>
        Among([.. recipe.Components.Where(component => component.Kind == ComponentKind.Dough).SelectMany(component => component.Lines)], "line-not-in-dough", option, given);

    /// <summary>A part by its id, its name or its kind, where one part alone is of that kind; else a line. Of both, the part.</summary>
    public (string? Part, string? Line) PartOrLine(string option, string given)
    {
        var id = Slug.Of(given);
        var parts = recipe.Components;
        var ofKind = parts.Where(part => Slug.Of(part.Kind.ToString()) == id).ToArray();
        if ((parts.FirstOrDefault(part => part.Id == given || part.Id == id) ?? parts.FirstOrDefault(part => Slug.Of(part.Name) == id) ?? (ofKind is [var only] ? only : null)) is { } found)
        {
            return (found.Id, null);
        }

        var lines = parts.SelectMany(part => part.Lines).Where(line => line.Uses is null).ToArray();
        if (lines.FirstOrDefault(line => line.Id == given || line.Id == id || Slug.Of(line.Name) == id) is { } line)
        {
            return (null, line.Id);
        }

        var kinds = parts.Select(part => part.Kind.ToString().ToLowerInvariant());
        faults.AddUnknown("part-or-line-unknown", given, [.. parts.Select(part => part.Id).Concat(kinds).Concat(lines.Select(known => known.Id)).Distinct()], ("option", option));
        return (null, null);
    }

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
