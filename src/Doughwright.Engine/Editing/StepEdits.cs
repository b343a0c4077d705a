using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>Changes of the method. What a step says is typed as the text writes it, key by key: "ends", "at 2 times its volume".</summary>
public static class StepEdits
{
    /// <summary>Words for the kinds of step, as a text writes them.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. EnumWords<StepKind>.All];

    /// <summary>The words that can stand under a key; null where it is written freely.</summary>
    public static IReadOnlyList<string>? Choices(string key) => key switch
    {
        KindWord.Key => Kinds,
        StepKeys.Where => [.. EnumWords<Where>.All],
        StepKeys.Way => [.. EnumWords<MixingWay>.All],
        StepKeys.Cover => [.. EnumWords<Cover>.All],
        StepKeys.On => [.. EnumWords<BakedOn>.All],
        _ => null,
    };

    /// <summary>What a step says, by key; what it leaves unsaid is missing. A list has one item on each line.</summary>
    public static IReadOnlyDictionary<string, string> Said(Recipe recipe, Step step)
    {
        var said = StepWriter.Write(step, recipe.FindComponent(step.Component)).Entries.ToDictionary(entry => entry.Key, entry => Words(entry.Value));
        said.TryAdd(KindWord.Key, EnumWords<StepKind>.Of(step.Kind));
        said.TryAdd(StepKeys.Where, EnumWords<Where>.Of(step.Where));
        return said;
    }

    /// <summary>Says something else under a key of a step; nothing typed takes the key out.</summary>
    public static EditAnswer Say(Recipe recipe, string step, string key, string typed)
    {
        if (recipe.FindStep(step) is not { } found)
        {
            return EditAnswer.Refuse("edit-step-gone", Places.OfStep(step), ("step", step));
        }

        var words = TypedStep.Of(found.Kind, key, Tidy(typed));
        if (TypedStep.Refusal(step, key, words) is { } refused)
        {
            return refused;
        }

        var was = Said(recipe, found).GetValueOrDefault(key, "");
        return Rereading.Of(
            recipe,
            tree => tree.In(RecipeText.Steps, steps => steps.In(step, one => one.With(key, words.Length == 0 ? null : Entry(key, words)))),
            Deed.Of(words.Length == 0 ? "step-silent" : "step-said", ("step", found.Name), ("what", key), ("from", was), ("to", words)));
    }

    /// <summary>A new step after another.</summary>
    /// <param name="after">Id of the step it comes after; null puts it first.</param>
    /// <param name="kind">One of <see cref="Kinds"/>.</param>
    /// <param name="part">Id of the part that is worked on.</param>
    /// <param name="typed">What it is called; empty takes the kind.</param>
    public static EditAnswer Add(Recipe recipe, string? after, string kind, string part, string typed)
    {
        var name = TypedLine.Tidy(typed) is { Length: > 0 } words ? words : kind;
        var id = Slug.Of(name);
        if (id.Length == 0)
        {
            return EditAnswer.Refuse("edit-name-missing", RecipeText.Steps, ("was", ""));
        }

        if (recipe.FindStep(id) is { } there)
        {
            return EditAnswer.Refuse("edit-step-there", Places.OfStep(id), ("step", there.Name));
        }

        if (EnumWords<StepKind>.Find(kind) is not { } known)
        {
            return EditAnswer.Refuse("edit-kind-unknown", RecipeText.Steps, ("kind", kind), ("known", string.Join(", ", Kinds)));
        }

        var at = after is null ? 0 : recipe.Steps.ToList().FindIndex(one => one.Id == after) + 1;
        if (after is not null && at == 0)
        {
            return EditAnswer.Refuse("edit-step-gone", Places.OfStep(after), ("step", after));
        }

        return recipe.WithPart(part, component =>
        {
            var step = new Step { Id = id, Name = char.ToUpperInvariant(name[0]) + name[1..], Kind = known, Component = component.Id, Position = Position.None };
            var steps = recipe.Steps.ToList();
            steps.Insert(at, step);
            return new EditAnswer.Done(recipe with { Steps = steps }, Deed.Of("step-added", ("step", step.Name)));
        });
    }

    /// <summary>Takes a step out.</summary>
    public static EditAnswer TakeOut(Recipe recipe, string step) => recipe.FindStep(step) is { } found
        ? new EditAnswer.Done(recipe with { Steps = [.. recipe.Steps.Where(one => one.Id != step)] }, Deed.Of("step-taken-out", ("step", found.Name)))
        : EditAnswer.Refuse("edit-step-gone", Places.OfStep(step), ("step", step));

    /// <summary>Moves a step up or down in the method.</summary>
    /// <param name="by">By how many places; up is below zero.</param>
    public static EditAnswer Move(Recipe recipe, string step, int by)
    {
        if (recipe.FindStep(step) is not { } found)
        {
            return EditAnswer.Refuse("edit-step-gone", Places.OfStep(step), ("step", step));
        }

        return Places.Moved(recipe.Steps, recipe.Steps.ToList().IndexOf(found), by) is { } steps
            ? new EditAnswer.Done(recipe with { Steps = steps }, Deed.Of(by < 0 ? "step-up" : "step-down", ("step", found.Name)))
            : EditAnswer.Refuse("edit-at-the-end", Places.OfStep(step), ("name", found.Name));
    }

    internal static string Tidy(string typed) => string.Join('\n', typed.ReplaceLineEndings("\n").Split('\n').Select(line => line.TrimEnd())).Trim();

    internal static TextEntry Entry(string key, string words) => new TreeBuilder() switch
    {
        var builder when key is StepKeys.Words or StepKeys.Cue => builder.Prose(key, words).Mapping.Entries[0],
        var builder when words.Contains('\n') => builder.List(key, words.Split('\n', StringSplitOptions.RemoveEmptyEntries)).Mapping.Entries[0],
        var builder => builder.Words(key, words).Mapping.Entries[0],
    };

    internal static string Words(TextNode value) => value switch
    {
        TextScalar scalar => scalar.Text.Trim(),
        TextList list => string.Join('\n', list.Items.Select(item => item.Value.Text)),
        _ => "",
    };
}
