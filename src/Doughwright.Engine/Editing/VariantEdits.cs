using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>Changes of the other ways to do a step. A way says again what is done otherwise; all else is as in the step.</summary>
public static class VariantEdits
{
    /// <summary>What a way says for itself, by key, as a text writes it.</summary>
    public static IReadOnlyDictionary<string, string> Said(Recipe recipe, Step step, string variant) =>
        StepWriter.Write(step, recipe.FindComponent(step.Component)).Entries.FirstOrDefault(entry => entry.Key == VariantsSection.Key)?.Value is TextMapping ways
            && ways.Entries.FirstOrDefault(entry => entry.Key == variant)?.Value is TextMapping way
            ? way.Entries.ToDictionary(entry => entry.Key, entry => StepEdits.Words(entry.Value))
            : new Dictionary<string, string>();

    /// <summary>Says something else under a key of a way; nothing typed leaves it as in the step.</summary>
    public static EditAnswer Say(Recipe recipe, string step, string variant, string key, string typed)
    {
        if (recipe.FindStep(step)?.FindVariant(variant) is not { } found)
        {
            return Gone(step, variant);
        }

        var words = TypedStep.Of(found.Step.Kind, key, StepEdits.Tidy(typed));
        if (TypedStep.Refusal(step, key, words) is { } refused)
        {
            return refused;
        }

        return Rereading.Of(
            recipe,
            tree => Ways(tree, step, ways => ways.In(variant, way => Named(way.With(key, words.Length == 0 ? null : StepEdits.Entry(key, words)), found.Step.Name))),
            Deed.Of(words.Length == 0 ? "variant-silent" : "variant-said", ("step", recipe.FindStep(step)!.Name), ("variant", found.Step.Name), ("what", key), ("to", words)));
    }

    /// <summary>Another way, which is done as the step until it says otherwise.</summary>
    /// <param name="typed">What it is called: "by machine".</param>
    public static EditAnswer Add(Recipe recipe, string step, string typed)
    {
        if (recipe.FindStep(step) is not { } found)
        {
            return EditAnswer.Refuse("edit-step-gone", Places.OfStep(step), ("step", step));
        }

        var name = TypedLine.Tidy(typed);
        var id = Slug.Of(name);
        return id.Length == 0 ? EditAnswer.Refuse("edit-name-missing", Places.OfStep(step), ("was", ""))
            : found.FindVariant(id) is { } there ? EditAnswer.Refuse("edit-variant-there", Places.OfStep(step), ("variant", there.Step.Name))
            : Rereading.Of(
                recipe,
                tree => Ways(tree, step, ways => ways.In(id, way => Named(way, char.ToUpperInvariant(name[0]) + name[1..]))),
                Deed.Of("variant-added", ("step", found.Name), ("variant", name)));
    }

    /// <summary>Takes a way out.</summary>
    public static EditAnswer TakeOut(Recipe recipe, string step, string variant) => recipe.FindStep(step)?.FindVariant(variant) is { } found
        ? Rereading.Of(recipe, tree => Ways(tree, step, ways => ways.With(variant, null)), Deed.Of("variant-taken-out", ("step", recipe.FindStep(step)!.Name), ("variant", found.Step.Name)))
        : Gone(step, variant);

    private static TextMapping Ways(TextMapping tree, string step, Func<TextMapping, TextMapping> change) =>
        tree.In(RecipeText.Steps, steps => steps.In(step, one => one.In(VariantsSection.Key, change)));

    /// <summary>A way of nothing is none, so it has its name at least.</summary>
    private static TextMapping Named(TextMapping way, string name) =>
        way.Entries.Count > 0 ? way : way.With(StepKeys.Name, StepEdits.Entry(StepKeys.Name, name));

    private static EditAnswer Gone(string step, string variant) => EditAnswer.Refuse("edit-variant-gone", Places.OfStep(step), ("variant", variant));
}
