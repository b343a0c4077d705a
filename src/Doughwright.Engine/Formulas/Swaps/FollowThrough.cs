using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>
/// Carries the edits into the recipe: lines, the order in which they go in, what percentages are on, and parts that nothing is left of. Words of
/// the author are never changed.
/// </summary>
internal static class FollowThrough
{
    public static Recipe Apply(Formula before, IReadOnlyList<PartEdit> edits)
    {
        var recipe = before.Recipe;
        foreach (var edit in edits)
        {
            var component = recipe.FindComponent(edit.Component.Id)!;
            var renamed = new Renaming(component, edit);
            recipe = renamed.Lines.Count == 0
                ? Without(recipe, component.Id)
                : recipe with
                {
                    Components = [.. recipe.Components.Select(other => other.Id == component.Id
                        ? other with { Lines = renamed.Lines, Base = renamed.Base }
                        : other)],
                    Steps = [.. recipe.Steps.Select(step => step.Component == component.Id ? Ordered(step, renamed) : step)],
                };
        }

        return KeepShares(before, recipe);
    }

    /// <summary>A wash or a topping of which nothing is left goes with the steps that are about nothing else.</summary>
    private static Recipe Without(Recipe recipe, string component) => recipe with
    {
        Components = [.. recipe.Components.Where(other => other.Id != component)],
        Steps = [.. recipe.Steps.Where(step => step.Component != component)],
    };

    private static Step Ordered(Step step, Renaming renamed) => step with
    {
        Order = renamed.Order(step.Order),
        Variants = [.. step.Variants.Select(variant => variant with { Step = Ordered(variant.Step, renamed) })],
    };

    /// <summary>A weight taken of a part goes with what the part now weighs, so that the same share of it is used.</summary>
    private static Recipe KeepShares(Formula before, Recipe recipe)
    {
        // A part that uses a changed part changes too, so one turn is needed for every part in a row.
        for (var turn = 0; turn < recipe.Components.Count && recipe.Components.Any(part => part.Lines.Any(Weighs)); turn++)
        {
            var now = Formula.Balance(recipe, before.Larder);
            recipe = recipe with
            {
                Components = [.. recipe.Components.Select(part => part with
                {
                    Lines = [.. part.Lines.Select(line => Weighs(line) ? Share(before, now, part, line) : line)],
                })],
            };
        }

        return recipe;
    }

    private static bool Weighs(Line line) => line is { Uses: not null, Mass: not null };

    private static Line Share(Formula before, Formula now, Component part, Line line)
    {
        var written = before.Recipe.FindComponent(part.Id)!.Lines.First(other => other.Id == line.Id).Mass!.Value;
        if (before.FindComponent(line.Uses!) is not { Mass.Grams: > 0 } made || now.FindComponent(line.Uses!) is not { } makes || made.Mass == makes.Mass)
        {
            return line;
        }

        return Renaming.Weighing(line, ScaleStep.Round(written * (makes.Mass / made.Mass), before.Recipe.Home.Scale));
    }
}
