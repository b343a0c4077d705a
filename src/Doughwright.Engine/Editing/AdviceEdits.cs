using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>One thing that a swap says.</summary>
public enum SwapSaid
{
    What,
    By,

    /// <summary>The id of the only part it holds for.</summary>
    Part,

    /// <summary>The day on which it was baked so.</summary>
    Tried,

    /// <summary>What changes for the reader.</summary>
    Words,
}

/// <summary>
/// Changes of what a recipe says beside its method. Swaps and ways of keeping have no names: they are meant by their number in this state, from 0.
/// </summary>
public static class AdviceEdits
{
    /// <summary>Other first words; nothing typed takes them out.</summary>
    public static EditAnswer Lead(Recipe recipe, string typed)
    {
        var words = StepEdits.Tidy(typed);
        return Rereading.Of(
            recipe,
            tree => tree.With(RecipeText.Words, new TreeBuilder().Prose(RecipeText.Words, words).Mapping.Entries.FirstOrDefault()),
            Deed.Of(words.Length == 0 ? "lead-out" : "lead", ("to", words)));
    }

    /// <summary>Other tools, one on each line or between commas; nothing typed takes the list out.</summary>
    public static EditAnswer Tools(Recipe recipe, string typed)
    {
        string[] tools = [.. typed.Split(['\n', ','], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(TypedLine.Tidy)];
        return Listed(recipe, RecipeText.Tools, tools, Deed.Of(tools.Length == 0 ? "tools-out" : "tools", ("to", string.Join(", ", tools))));
    }

    /// <summary>A new swap, as a text writes it: "butter by sunflower oil, in dough, tried on 3 May, a softer crumb".</summary>
    public static EditAnswer AddSwap(Recipe recipe, string typed) =>
        Listed(recipe, RecipeText.Swaps, [.. Swaps(recipe), TypedLine.Tidy(typed)], Deed.Of("swap-added", ("swap", TypedLine.Tidy(typed))));

    /// <summary>What a swap says of one thing; empty where it says nothing.</summary>
    public static string Said(AllowedSwap swap, SwapSaid said) => (said switch
    {
        SwapSaid.What => swap.What,
        SwapSaid.By => swap.By,
        SwapSaid.Part => swap.Part,
        SwapSaid.Tried => swap.Tried,
        _ => swap.Words,
    }) ?? "";

    /// <summary>Says something else of a swap.</summary>
    public static EditAnswer Swap(Recipe recipe, int at, SwapSaid said, string typed)
    {
        if (recipe.Swaps.ElementAtOrDefault(at) is not { } swap)
        {
            return Gone(RecipeText.Swaps);
        }

        var words = TypedLine.Tidy(typed);
        var or = words.Length == 0 ? null : words;
        var meant = said switch
        {
            SwapSaid.What => swap with { What = words },
            SwapSaid.By => swap with { By = words },
            SwapSaid.Part => swap with { Part = or },
            SwapSaid.Tried => swap with { Tried = or },
            _ => swap with { Words = or },
        };
        var swaps = Swaps(recipe);
        swaps[at] = SwapGrammar.Write(meant);
        var answer = Listed(recipe, RecipeText.Swaps, swaps, Deed.Of("swap", ("swap", swaps[at])));
        // A comma or a "by" within a name would be read as something else.
        return answer is EditAnswer.Done done && done.Recipe.Swaps[at] with { Position = swap.Position } != meant
            ? EditAnswer.Refuse("edit-reads-otherwise", RecipeText.Swaps, ("typed", words), ("reads", swaps[at]))
            : answer;
    }

    /// <summary>Takes a swap out.</summary>
    public static EditAnswer TakeOutSwap(Recipe recipe, int at) => recipe.Swaps.ElementAtOrDefault(at) is { } swap
        ? new EditAnswer.Done(recipe with { Swaps = [.. recipe.Swaps.Where(one => !ReferenceEquals(one, swap))] }, Deed.Of("swap-taken-out", ("swap", SwapGrammar.Write(swap))))
        : Gone(RecipeText.Swaps);

    /// <summary>What to do without another thing.</summary>
    /// <param name="what">A tool or an ingredient.</param>
    public static EditAnswer AddWithout(Recipe recipe, string what, string typed)
    {
        var (name, words) = (TypedLine.Tidy(what), StepEdits.Tidy(typed));
        if (Slug.Of(name).Length == 0)
        {
            return EditAnswer.Refuse("edit-name-missing", RecipeText.Without, ("was", ""));
        }

        return recipe.Without.FirstOrDefault(one => Slug.Of(one.What) == Slug.Of(name)) is { } there ? EditAnswer.Refuse("edit-without-there", RecipeText.Without, ("what", there.What))
            : words.Length == 0 ? EditAnswer.Refuse("edit-without-words", RecipeText.Without, ("what", name))
            : Rereading.Of(recipe, tree => tree.In(RecipeText.Without, all => all.With(name, Entry(name, words))), Deed.Of("without-added", ("what", name)));
    }

    /// <summary>Other words on what to do without something; nothing typed takes it out.</summary>
    public static EditAnswer Without(Recipe recipe, string what, string typed)
    {
        if (recipe.Without.FirstOrDefault(one => one.What == what) is not { } found)
        {
            return Gone(RecipeText.Without);
        }

        var words = StepEdits.Tidy(typed);
        return words.Length == 0
            ? new EditAnswer.Done(recipe with { Without = [.. recipe.Without.Where(one => !ReferenceEquals(one, found))] }, Deed.Of("without-taken-out", ("what", what)))
            : Rereading.Of(recipe, tree => tree.In(RecipeText.Without, all => all.With(what, Entry(what, words))), Deed.Of("without", ("what", what)));
    }

    /// <summary>A new way to keep what was baked: "in a bag at room temperature, 2 d".</summary>
    public static EditAnswer AddKeeping(Recipe recipe, string typed) =>
        Listed(recipe, RecipeText.Keeping, [.. Keepings(recipe), TypedLine.Tidy(typed)], Deed.Of("keeping-added", ("keeping", TypedLine.Tidy(typed))));

    /// <summary>A way to keep it as a text writes it.</summary>
    public static string Said(KeepingAdvice keeping) => KeepingGrammar.Write(keeping);

    /// <summary>Another way in the place of one; nothing typed takes it out.</summary>
    public static EditAnswer Keeping(Recipe recipe, int at, string typed)
    {
        if (recipe.Keeping.ElementAtOrDefault(at) is not { } keeping)
        {
            return Gone(RecipeText.Keeping);
        }

        var words = TypedLine.Tidy(typed);
        var ways = Keepings(recipe);
        if (words.Length == 0)
        {
            ways.RemoveAt(at);
        }
        else
        {
            ways[at] = words;
        }

        return Listed(recipe, RecipeText.Keeping, ways, words.Length == 0 ? Deed.Of("keeping-taken-out", ("keeping", Said(keeping))) : Deed.Of("keeping", ("keeping", words)));
    }

    private static List<string> Swaps(Recipe recipe) => [.. recipe.Swaps.Select(SwapGrammar.Write)];

    private static List<string> Keepings(Recipe recipe) => [.. recipe.Keeping.Select(KeepingGrammar.Write)];

    private static EditAnswer Listed(Recipe recipe, string key, IReadOnlyList<string> items, Deed deed) =>
        Rereading.Of(recipe, tree => tree.With(key, new TreeBuilder().List(key, items).Mapping.Entries.FirstOrDefault()), deed);

    private static TextEntry Entry(string what, string words) => new TreeBuilder().Prose(what, words).Mapping.Entries[0];

    private static EditAnswer Gone(string place) => EditAnswer.Refuse("edit-advice-gone", place);
}
