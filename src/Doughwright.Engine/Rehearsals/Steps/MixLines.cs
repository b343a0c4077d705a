using Doughwright.Engine.Formulas;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// What goes into the bowl in one mix of a dough that may be mixed more than once: flour and water first, say, salt and yeast after a rest.
/// A later mix takes in what its order names, on top of the dough as it stands; the first takes in all the rest.
/// </summary>
internal static class MixLines
{
    public static IReadOnlyList<LineFormula> Of(Step step, ComponentFormula component, IReadOnlyDictionary<string, Portion> parts, Stage stage)
    {
        var mixes = stage.Recipe.Steps.Where(other => other.Component == component.Id && (other.Kind is StepKind.Mix or StepKind.Scald)).ToList();
        if (mixes.Count < 2)
        {
            return component.Lines;
        }

        var first = First(mixes, component);
        if (mixes[0].Id == step.Id)
        {
            return first;
        }

        // What two mixes name goes in with the earlier one.
        var gone = mixes.Skip(1).TakeWhile(mix => mix.Id != step.Id).SelectMany(mix => mix.Order).Concat(first.Select(line => line.Id)).ToHashSet();
        var added = component.Lines.Where(line => step.Order.Contains(line.Id) && !gone.Contains(line.Id));
        return parts.TryGetValue(component.Id, out var sofar) ? [SoFar(component, sofar), .. added] : [.. added];
    }

    /// <summary>What no later mix names, and what the first one names itself; all of it where that would leave the bowl empty.</summary>
    private static IReadOnlyList<LineFormula> First(List<Step> mixes, ComponentFormula component)
    {
        var later = mixes.Skip(1).SelectMany(mix => mix.Order).ToHashSet();
        var lines = component.Lines.Where(line => !later.Contains(line.Id) || mixes[0].Order.Contains(line.Id)).ToList();
        return lines.Count > 0 ? lines : component.Lines;
    }

    /// <summary>Whether this mix goes on with a dough that is in its bowl already.</summary>
    public static bool GoesOn(IReadOnlyList<LineFormula> lines, ComponentFormula component) => lines.Any(line => line.UsesComponent == component.Id);

    private static LineFormula SoFar(ComponentFormula component, Portion sofar) => new()
    {
        Id = component.Id,
        Name = component.Name,
        Role = null,
        Mass = sofar.Mass,
        Water = null,
        Percent = null,
        OverallPercent = null,
        Ingredient = null,
        Composition = sofar.Composition,
        Kind = component.Id,
        Source = new Line { Id = component.Id, Name = component.Name, Uses = component.Id, Typed = "", Position = Position.None },
        UsesComponent = component.Id,
    };
}
