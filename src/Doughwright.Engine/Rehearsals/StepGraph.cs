using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals;

/// <summary>
/// The order that the method really needs. Steps of one component follow one another as listed; the step that mixes a component waits for
/// the components it uses; a wash or filling goes onto the dough where it is listed; an oven is heated beside everything else.
/// </summary>
internal sealed class StepGraph
{
    /// <summary>Id of the step that heats the oven when the author did not write one.</summary>
    public const string PreheatId = "preheat";

    private const string TakeOutSuffix = "-out";

    private readonly IReadOnlyList<(string Part, int Step)> fillings;

    private StepGraph(IReadOnlyList<Step> steps, int[][] before, string[] worksOn, IReadOnlyList<(string Part, int Step)> fillings) =>
        (Steps, Before, WorksOn, this.fillings) = (steps, before, worksOn, fillings);

    /// <summary>The author's steps, with what nobody writes down put in: heating the oven, taking butter out of the fridge.</summary>
    public IReadOnlyList<Step> Steps { get; }

    /// <summary>For each step the indices of those that must have ended before it.</summary>
    public int[][] Before { get; }

    /// <summary>For each step the component whose portion it changes: for a wash the dough it goes onto.</summary>
    public string[] WorksOn { get; }

    public static StepGraph Of(Recipe recipe, Kitchen kitchen)
    {
        var steps = WithAdded(recipe, kitchen);
        var before = new int[steps.Count][];
        var worksOn = new string[steps.Count];
        var last = new Dictionary<string, int>();
        var fed = new HashSet<string>();
        for (var index = 0; index < steps.Count; index++)
        {
            var step = steps[index];
            worksOn[index] = Target(recipe, steps, index);
            var needs = new SortedSet<int>();
            if (!IsBeside(step))
            {
                AddLast(last, worksOn[index], needs);
                AddLast(last, step.Component, needs);
                if (Feeds(steps, index, worksOn[index]) && fed.Add(worksOn[index]))
                {
                    foreach (var used in Uses(recipe, worksOn[index]))
                    {
                        AddLast(last, used, needs);
                    }
                }

                last[worksOn[index]] = index;
            }

            needs.UnionWith(Enumerable.Range(0, index).Where(other => step.Kind switch
            {
                StepKind.Bake => steps[other].Kind == StepKind.Preheat,
                StepKind.Mix => IsTakeOut(steps[other]) && steps[other].Component == step.Component,
                _ => false,
            }));

            before[index] = [.. needs];
        }

        var fillings = Fillings.Of(recipe, steps, worksOn);
        ReadyBefore(recipe, steps, before, worksOn, fillings);
        return new(steps, before, worksOn, fillings);
    }

    /// <summary>The fillings that a step lays in.</summary>
    public IReadOnlyList<string> FillingsAt(int index) => [.. fillings.Where(filling => filling.Step == index).Select(filling => filling.Part)];

    /// <summary>The step that lays in a filling; -1 for any other part.</summary>
    public int LaidInAt(string part)
    {
        foreach (var filling in fillings)
        {
            if (filling.Part == part)
            {
                return filling.Step;
            }
        }

        return -1;
    }

    /// <summary>
    /// A filling is ready when the dough is shaped round it; an icing, or what else is made on its own, before the next step of the dough that is
    /// listed after it.
    /// </summary>
    private static void ReadyBefore(
        Recipe recipe, IReadOnlyList<Step> steps, int[][] before, string[] worksOn, IReadOnlyList<(string Part, int Step)> fillings)
    {
        for (var index = 0; index < steps.Count; index++)
        {
            var own = worksOn[index];
            if (IsBeside(steps[index]) || recipe.FindComponent(own) is not { BelongsToDough: false })
            {
                continue;
            }

            var laid = fillings.Where(filling => filling.Part == own).Select(filling => filling.Step).FirstOrDefault(-1);
            var next = laid >= 0 ? laid : Enumerable.Range(index + 1, steps.Count - index - 1)
                .FirstOrDefault(later => !IsBeside(steps[later]) && recipe.FindComponent(worksOn[later]) is { BelongsToDough: true }, -1);
            // What needs the very step that lays it in can only come after it: a circle could not be laid on any clock.
            if (next >= 0 && next != index && !before[next].Contains(index) && !Needs(before, index, next))
            {
                before[next] = [.. before[next], index];
            }
        }
    }

    /// <summary>Whether a step must wait for another one, by way of whatever lies between.</summary>
    private static bool Needs(int[][] before, int step, int other)
    {
        var (seen, open) = (new HashSet<int> { step }, new Stack<int>([step]));
        while (open.TryPop(out var next))
        {
            foreach (var earlier in before[next].Where(seen.Add))
            {
                if (earlier == other)
                {
                    return true;
                }

                open.Push(earlier);
            }
        }

        return false;
    }

    /// <summary>Whether this is the step in which a component takes in the components it uses: its first mix, or its first step when it is never mixed.</summary>
    public static bool Feeds(IReadOnlyList<Step> steps, int index, string component)
    {
        var own = steps.Where(step => step.Component == component && !IsBeside(step)).ToList();
        var feeder = own.FirstOrDefault(step => step.Kind is StepKind.Mix or StepKind.Scald) ?? own.FirstOrDefault();
        return ReferenceEquals(feeder, steps[index]);
    }

    /// <summary>Whether a step runs beside the portions: it makes ready an oven or an ingredient.</summary>
    public static bool IsBeside(Step step) => step.Kind == StepKind.Preheat || IsTakeOut(step);

    /// <summary>Whether a step was put in here.</summary>
    public static bool IsAdded(Step step) => step.Id == PreheatId || IsTakeOut(step);

    /// <summary>Whether a step takes something out of the fridge early.</summary>
    public static bool IsTakeOut(Step step) => step.Kind == StepKind.Warm && step.Id.EndsWith(TakeOutSuffix, StringComparison.Ordinal);

    /// <summary>
    /// Butter that the author wants soft lies in the fridge until somebody takes it out. In a room where it never softens, or where it would
    /// run, its own check says so and nothing is put in.
    /// </summary>
    private static IEnumerable<Step> TakeOuts(Recipe recipe, Step mix, Kitchen kitchen) => !TakeOutStep.Suits(kitchen) ? [] : (recipe.FindComponent(mix.Component)?.Lines ?? [])
        .Where(line => line.Uses is null && line.Warmth.Kind == WarmthKind.AsTheRoom && (line.Is("soft") || line.Is("softened")))
        .Select(line => new Step
        {
            Id = $"{mix.Component}-{line.Id}{TakeOutSuffix}",
            Name = line.Name,
            Kind = StepKind.Warm,
            Component = mix.Component,
            Order = [line.Id],
            Position = line.Position,
        });

    private static IEnumerable<string> Uses(Recipe recipe, string component) =>
        recipe.FindComponent(component)?.Lines.Select(line => line.Uses).OfType<string>() ?? [];

    private static void AddLast(Dictionary<string, int> last, string component, SortedSet<int> needs)
    {
        if (last.TryGetValue(component, out var index))
        {
            needs.Add(index);
        }
    }

    private static string Target(Recipe recipe, IReadOnlyList<Step> steps, int index)
    {
        var step = steps[index];
        if (step.Kind is not (StepKind.Glaze or StepKind.Finish) || recipe.FindComponent(step.Component) is { BelongsToDough: true })
        {
            return step.Component;
        }

        return steps.Take(index).LastOrDefault(earlier => recipe.FindComponent(earlier.Component) is { Kind: ComponentKind.Dough })?.Component
            ?? step.Component;
    }

    private static List<Step> WithAdded(Recipe recipe, Kitchen kitchen)
    {
        var steps = new List<Step>();
        foreach (var step in recipe.Steps)
        {
            if (step.Kind == StepKind.Mix)
            {
                steps.AddRange(TakeOuts(recipe, step, kitchen));
            }

            if (step.Kind == StepKind.Bake && !steps.Any(earlier => earlier.Kind == StepKind.Preheat))
            {
                steps.Add(new Step
                {
                    Id = PreheatId,
                    Name = "",
                    Kind = StepKind.Preheat,
                    Component = step.Component,
                    Where = Where.Oven,
                    Oven = step.Oven is { } oven ? oven with { Then = null } : null,
                    Position = step.Position,
                });
            }

            steps.Add(step);
        }

        return steps;
    }
}
