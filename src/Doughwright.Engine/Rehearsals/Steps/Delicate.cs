using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Something in a bowl that heat hurts: yeast or egg by itself, or a part that holds it alive or raw.</summary>
/// <param name="Index">Where it stands in the order of adding.</param>
/// <param name="What">Yeast or egg.</param>
internal sealed record Delicate(int Index, string Name, Role What)
{
    public bool IsYeast => What == Role.Yeast;

    public Temperature Bears => IsYeast ? HeatAnswer.YeastBears : HeatAnswer.EggBears;

    public static IReadOnlyList<Delicate> In(
        IReadOnlyList<LineFormula> lines, string component, IReadOnlyDictionary<string, Portion> parts, Stage stage) =>
        [.. lines.SelectMany((line, index) => Of(line, component, parts, stage).Select(what => new Delicate(index, line.Name, what)))];

    /// <summary>Whether a part holds yeast or egg that no step of its own has heated.</summary>
    public static bool Holds(string part, Role what, Stage stage) =>
        !stage.Recipe.Steps.Any(step => step.Component == part && step.Kind is StepKind.Cook or StepKind.Scald or StepKind.Bake)
        && stage.Formula.FindComponent(part) is { } component
        && ((what == Role.Yeast && component is { Kind: ComponentKind.Starter, Mass.Grams: > 0 }) || component.Lines.Any(line => line.Mass > Mass.Zero && (line.UsesComponent is { } used ? Holds(used, what, stage) : line.Role == what)));

    private static IEnumerable<Role> Of(LineFormula line, string component, IReadOnlyDictionary<string, Portion> parts, Stage stage)
    {
        if (line.UsesComponent is not { } used)
        {
            return line.Role is Role.Yeast or Role.Egg ? [line.Role.Value] : [];
        }

        // The dough that is in the bowl already was judged when its own yeast and egg went in.
        return used == component ? [] : new[] { Role.Yeast, Role.Egg }.Where(what =>
            !(what == Role.Yeast && parts.TryGetValue(used, out var portion) && portion.YeastDied is not null) && Holds(used, what, stage));
    }
}
