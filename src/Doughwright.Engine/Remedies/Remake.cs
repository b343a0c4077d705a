using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Remedies;

/// <summary>A recipe with one place of it made anew.</summary>
internal static class Remake
{
    public static Recipe Step(this Recipe recipe, string id, Func<Step, Step> change) =>
        recipe with { Steps = [.. recipe.Steps.Select(step => step.Id == id ? change(step) : step)] };

    public static Recipe Part(this Recipe recipe, string id, Func<Component, Component> change) =>
        recipe with { Components = [.. recipe.Components.Select(part => part.Id == id ? change(part) : part)] };

    public static Recipe Line(this Recipe recipe, string part, string id, Func<Line, Line> change) =>
        recipe.Part(part, component => component with { Lines = [.. component.Lines.Select(line => line.Id == id ? change(line) : line)] });

    /// <summary>The recipe with a line more, at the end of its part and of every order that names the lines of that part.</summary>
    public static Recipe AddLine(this Recipe recipe, string part, Line line) =>
        recipe.Part(part, component => component with { Lines = [.. component.Lines, line] }) with
        {
            Steps = [.. recipe.Steps.Select(step => step.Component == part ? step.Ordered(order => order.Count > 0 ? [.. order, line.Id] : order) : step)],
        };

    /// <summary>The recipe without a line, in its part and in every order.</summary>
    public static Recipe DropLine(this Recipe recipe, string part, string id) =>
        recipe.Part(part, component => component with { Lines = [.. component.Lines.Where(line => line.Id != id)] }) with
        {
            Steps = [.. recipe.Steps.Select(step => step.Component == part ? step.Ordered(order => [.. order.Where(line => line != id)]) : step)],
        };

    /// <summary>The recipe without a part, its lines elsewhere and its steps.</summary>
    public static Recipe DropPart(this Recipe recipe, string id) => recipe with
    {
        Components = [.. recipe.Components.Where(part => part.Id != id)
            .Select(part => part with { Lines = [.. part.Lines.Where(line => line.Uses != id)] })],
        Steps = [.. recipe.Steps.Where(step => step.Component != id).Select(step => step.Ordered(order => [.. order.Where(line => line != id)]))],
    };

    /// <summary>The recipe with a step put in before the one at an index.</summary>
    public static Recipe Insert(this Recipe recipe, int index, Step step) =>
        recipe with { Steps = [.. recipe.Steps.Take(index), step, .. recipe.Steps.Skip(index)] };

    /// <summary>Some steps taken out and put in again, in their order, before another step; at the end when that is null.</summary>
    public static Recipe Move(this Recipe recipe, Func<Step, bool> which, string? before)
    {
        var rest = recipe.Steps.Where(step => !which(step)).ToList();
        var at = before is null ? rest.Count : rest.FindIndex(step => step.Id == before);
        rest.InsertRange(at < 0 ? rest.Count : at, recipe.Steps.Where(which));
        return recipe with { Steps = rest };
    }

    /// <summary>The step with another order, in every way in which it can be done.</summary>
    public static Step Ordered(this Step step, Func<IReadOnlyList<string>, IReadOnlyList<string>> order) => step with
    {
        Order = order(step.Order),
        Variants = [.. step.Variants.Select(variant => variant with { Step = variant.Step with { Order = order(variant.Step.Order) } })],
    };

    /// <summary>Another mass; what was typed goes with the old one.</summary>
    public static Line Weighing(this Line line, Mass mass) => line with { Mass = mass, Typed = ExactText.Of(mass), Household = null };

    /// <summary>A line that uses all of a part.</summary>
    public static Line AllOf(string part) => new()
    {
        Id = part,
        Name = part,
        Uses = part,
        Typed = LineGrammar.AllOfIt,
        Position = Position.None,
    };

    /// <summary>An id that no step has yet.</summary>
    public static string FreeStepId(this Recipe recipe, string wanted)
    {
        var id = wanted;
        for (var number = 2; recipe.FindStep(id) is not null; number++)
        {
            id = FormattableString.Invariant($"{wanted}-{number}");
        }

        return id;
    }
}
