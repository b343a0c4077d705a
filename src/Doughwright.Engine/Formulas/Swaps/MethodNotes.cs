using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What the words and the times of the recipe still say of the old ingredient. They are the author's, so they are told and not changed.</summary>
internal static class MethodNotes
{
    private static readonly string[] Colours = ["white", "black", "brown", "red", "green"];

    public static IEnumerable<Finding> Of(SwapChange change) =>
        [.. Gone(change), .. change.Swaps.SelectMany(swap => Mentions(change, swap)), .. WrittenFor(change), .. Measured(change)];

    private static IEnumerable<Finding> Gone(SwapChange change) => change.Before.Recipe.Components
        .Where(part => change.After.Recipe.FindComponent(part.Id) is null)
        .Select(part => Report.Make(
            "swap-part-goes",
            Grade.Warning,
            $"parts.{part.Id}",
            part.Position,
            ("part", part.Name),
            ("steps", change.Before.Recipe.Steps.Where(step => step.Component == part.Id).Select(step => step.Name).ToArray())));

    private static IEnumerable<Finding> Mentions(SwapChange change, PlannedSwap swap)
    {
        var recipe = change.After.Recipe;
        var name = Phrase.Words(swap.Line.Name);
        var by = Phrase.Words(swap.By?.Name ?? "");
        if (name.All(by.Contains))
        {
            yield break;
        }

        // "unsalted butter" is also called butter, as long as nothing else in the recipe is called so: "flour" would mean the new flour as well,
        // and "white" of an egg is a colour.
        var others = change.After.Components.SelectMany(part => part.Lines).Where(line => line.Name != swap.Line.Name).SelectMany(line => Phrase.Words(line.Name));
        string[] spoken = name.Length > 1 && !by.Concat(others).Contains(name[^1]) && !Colours.Contains(name[^1])
            ? [string.Join(' ', name), name[^1]]
            : [string.Join(' ', name)];
        bool Speaks(params string?[] prose) => Phrase.Normal(string.Join(" . ", prose)) is var text && spoken.Any(word => Phrase.Holds(text, word));
        Finding Say(string kind, Grade grade, string place, string where, Position position) =>
            Report.Make(kind, grade, place, position, ("name", swap.Line.Name), ("by", swap.By?.Name ?? ""), ("where", where));
        // Where it is still used elsewhere, only what is done with this part can be meant.
        var isStillUsed = change.After.Components.SelectMany(part => part.Lines).Any(line => swap.Line.Ingredient is { } row && line.Ingredient?.Id == row.Id);
        foreach (var step in recipe.Steps.Where(step => !isStillUsed || step.Component == swap.Component.Id)
            .Where(step => Speaks([step.Name, step.Words, step.Cue, .. step.Variants.Select(variant => variant.Step.Words)])))
        {
            yield return Say("swap-words-still-say", Grade.Hint, $"steps.{step.Id}", step.Name, step.Position);
        }

        if (isStillUsed)
        {
            yield break;
        }

        if (Speaks(recipe.Title))
        {
            yield return Say("swap-title-still-says", Grade.Hint, "title", recipe.Title, Position.None);
        }

        if (Speaks(recipe.Words))
        {
            yield return Say("swap-opening-still-says", Grade.Hint, "words", "", Position.None);
        }

        foreach (var part in recipe.Components.Where(part => Speaks(part.Name)))
        {
            yield return Say("swap-part-still-called", Grade.Hint, $"parts.{part.Id}", part.Name, part.Position);
        }

        foreach (var entry in recipe.Without.Where(entry => Speaks(entry.Words)))
        {
            yield return Say("swap-advice-still-says", Grade.Hint, $"without.{Slug.Of(entry.What)}", entry.What, entry.Position);
        }
    }

    /// <summary>Peeling and boiling were written for what is gone.</summary>
    private static IEnumerable<Finding> WrittenFor(SwapChange change) =>
        from swap in change.Swaps
        where swap is { By: not null, Line.Role: Role.Starchy }
        from step in change.After.Recipe.Steps
        where step.Component == swap.Component.Id && (step.Kind == StepKind.Prepare || step.IsCooked)
        select Report.Make(
            "swap-step-written-for", Grade.Warning, $"steps.{step.Id}", step.Position, ("step", step.Name), ("name", swap.Line.Name), ("by", swap.By!.Name));

    private static IEnumerable<Finding> Measured(SwapChange change)
    {
        var touched = change.Edits.Where(edit => edit.Lines.Any(line => line.Swap?.Manner != Manner.Same)).Select(edit => edit.Component).Where(part => part.ShareInDough > 0).Select(part => part.Id).ToHashSet();
        var steps = change.After.Recipe.Steps
            .Where(step => step.Measured is not null)
            .Where(step => touched.Contains(step.Component) || (touched.Count > 0 && change.After.Recipe.FindComponent(step.Component)?.Kind == ComponentKind.Dough))
            .ToArray();
        return steps.Length == 0
            ? []
            : [Report.Make("swap-measured-before", Grade.Warning, $"steps.{steps[0].Id}", steps[0].Position, ("steps", steps.Select(step => step.Name).ToArray()))];
    }
}
