using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>Changes of whole parts.</summary>
public static class PartEdits
{
    /// <summary>Words for the kinds of part, as a text writes them.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. EnumWords<ComponentKind>.All];

    /// <summary>A new part with its first line: a part needs at least one.</summary>
    /// <param name="kind">One of <see cref="Kinds"/>.</param>
    /// <param name="name">What it is called; empty takes the kind.</param>
    /// <param name="after">Id of the part it comes after; null puts it first.</param>
    /// <param name="firstLine">In words: "butter 50 g".</param>
    public static EditAnswer Add(Recipe recipe, string kind, string name, string? after, string firstLine)
    {
        if (EnumWords<ComponentKind>.Find(kind) is not { } known)
        {
            return EditAnswer.Refuse("edit-kind-unknown", "parts", ("kind", kind), ("known", string.Join(", ", Kinds)));
        }

        var called = TypedLine.Tidy(name) is { Length: > 0 } words ? words : FreeName(recipe, kind);
        var id = Slug.Of(called);
        if (id.Length == 0)
        {
            return EditAnswer.Refuse("edit-name-missing", "parts", ("was", ""));
        }

        if (recipe.FindComponent(id) is { } there)
        {
            return EditAnswer.Refuse("edit-part-there", Places.OfPart(id), ("part", there.Name));
        }

        var part = new Component(id, char.ToUpperInvariant(called[0]) + called[1..], known, [], Position.None);
        var at = after is null ? 0 : recipe.Components.ToList().FindIndex(one => one.Id == after) + 1;
        if (after is not null && at == 0)
        {
            return EditAnswer.Refuse("edit-part-gone", Places.OfPart(after), ("part", after));
        }

        var parts = recipe.Components.ToList();
        parts.Insert(at, part);
        return LineEdits.Add(recipe with { Components = parts }, id, firstLine) switch
        {
            EditAnswer.Done done => done with { Deed = Deed.Of("part-added", ("part", part.Name)) },
            var refused => refused,
        };
    }

    /// <summary>Another name. The word by which lines and steps mean the part stays.</summary>
    public static EditAnswer Rename(Recipe recipe, string part, string typed) => recipe.WithPart(part, component =>
        TypedLine.Tidy(typed) is not { Length: > 0 } name
            ? EditAnswer.Refuse("edit-name-missing", Places.OfPart(part), ("was", component.Name))
            : new EditAnswer.Done(recipe.Replace(component, component with { Name = name }), Deed.Of("part-renamed", ("from", component.Name), ("to", name))));

    /// <summary>Takes a part out, with the lines that use it and the steps that make it.</summary>
    public static EditAnswer TakeOut(Recipe recipe, string part) => recipe.WithPart(part, component =>
    {
        var without = recipe with
        {
            Components = [.. recipe.Components.Where(one => one.Id != part)],
            Steps = [.. recipe.Steps.Where(step => step.Component != part)],
        };
        foreach (var user in without.Components)
        {
            foreach (var line in user.Lines.Where(line => line.Uses == part))
            {
                if (LineEdits.TakeOut(without, user.Id, line.Id) is EditAnswer.Done done)
                {
                    without = done.Recipe;
                }
            }
        }

        var steps = recipe.Steps.Count - without.Steps.Count;
        return new EditAnswer.Done(without, steps switch
        {
            0 => Deed.Of("part-taken-out", ("part", component.Name)),
            1 => Deed.Of("part-taken-out-step", ("part", component.Name)),
            _ => Deed.Of("part-taken-out-steps", ("part", component.Name), ("steps", steps)),
        });
    });

    /// <summary>Moves a part up or down among the parts.</summary>
    /// <param name="by">-1 for up, 1 for down.</param>
    public static EditAnswer Move(Recipe recipe, string part, int by) => recipe.WithPart(part, component =>
        Places.Moved(recipe.Components, recipe.Components.ToList().IndexOf(component), by) is { } parts
            ? new EditAnswer.Done(recipe with { Components = parts }, Deed.Of(by < 0 ? "part-up" : "part-down", ("part", component.Name)))
            : EditAnswer.Refuse("edit-at-the-end", Places.OfPart(part), ("name", component.Name)));

    /// <summary>The kind itself, or with a number behind it: filling, filling 2.</summary>
    private static string FreeName(Recipe recipe, string kind) =>
        Enumerable.Range(1, recipe.Components.Count + 1).Select(number => number == 1 ? kind : FormattableString.Invariant($"{kind} {number}")).First(name => recipe.FindComponent(Slug.Of(name)) is null);
}
