using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Phrase = Doughwright.Engine.Ingredients.Phrase;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// A swap, or what to do without something, of what is not in the recipe: left over from an older version. Only what is known to be an
/// ingredient or a tool is told, because people can do without anything.
/// </summary>
internal static class AdviceOfNothing
{
    public static IEnumerable<Finding> Check(Formula formula) =>
    [
        .. formula.Recipe.Swaps.Where(swap => !Names(formula, swap)).Select(swap => Report.Make(
            "swap-of-nothing", Grade.Hint, $"swaps.{Slug.Of(swap.What)}", swap.Position, ("what", swap.What), ("by", swap.By), ("part", swap.Part ?? ""))),
        .. formula.Recipe.Without.Where(entry => IsLeftOver(formula, entry)).Select(entry => Report.Make(
            "without-of-nothing", Grade.Hint, $"without.{Slug.Of(entry.What)}", entry.Position, ("what", entry.What))),
    ];

    /// <summary>Whether something that goes in is what the swap replaces.</summary>
    public static bool Names(Formula formula, AllowedSwap swap) => WishTargets.Of(formula, new(swap.What, swap.By, swap.Part)).Count > 0;

    /// <summary>Whether something that goes in is what one does without.</summary>
    public static bool Names(Formula formula, Without entry) => WishTargets.Of(formula, new(entry.What, "")).Count > 0;

    private static bool IsLeftOver(Formula formula, Without entry)
    {
        var recipe = formula.Recipe;
        var tool = ToolName.Read(entry.What);
        var isKnown = formula.Larder.Find(entry.What, []).Ingredient is not null || (recipe.Tools is not null && ToolWords.Known.Any(known => known.WillDoFor(tool)));
        return isKnown && !Names(formula, entry) && !IsPart(recipe, entry.What) && !IsTool(recipe, tool) && !IsSaid(recipe, entry.What);
    }

    private static bool IsPart(Recipe recipe, string what) => recipe.Components.Any(part => part.Id == Slug.Of(what) || Slug.Of(part.Name) == Slug.Of(what));

    private static bool IsTool(Recipe recipe, ToolName tool) =>
        (recipe.Tools ?? []).Concat(recipe.Steps.SelectMany(step => step.Tools)).Any(listed => ToolName.Read(listed).WillDoFor(tool))
        || recipe.Steps.Any(step => (step.Vessel is { } vessel && tool.Is(vessel)) || ToolWords.Of(step).Any(entry => entry.Tools.Any(spoken => spoken.WillDoFor(tool))));

    /// <summary>Whether the method speaks of it.</summary>
    private static bool IsSaid(Recipe recipe, string what)
    {
        var prose = recipe.Steps.SelectMany(step => step.Variants.Select(variant => variant.Step).Prepend(step))
            .SelectMany(step => new[] { step.Name, step.Words, step.Cue, Spoken(step.Way), step.Where.ToString() })
            .Append(recipe.Words);
        return Phrase.Holds(Phrase.Normal(string.Join(" . ", prose)), Phrase.Normal(what));
    }

    private static string Spoken(MixingWay? way) => way switch
    {
        MixingWay.ByHand => "by hand",
        MixingWay.Machine => "machine",
        MixingWay.FoodProcessor => "food processor",
        _ => "",
    };
}
