using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>
/// Steps done in another way that the text has: what the author measured in that way fixes that step, and whatever does not hang on it stays
/// as it was measured.
/// </summary>
internal static class Variants
{
    /// <summary>The variant asked for; null for a step done as written.</summary>
    public static StepVariant? Asked(Step step, Request request) => request.Variants.TryGetValue(step.Id, out var id) ? step.FindVariant(id) : null;

    /// <summary>The step as it is done when it is asked for.</summary>
    public static Step Of(Step step, Request request) => Asked(step, request)?.Step ?? step;

    /// <summary>
    /// What the author's measurements fixed. Another way of mixing has its own rise, so the author's does not go with it; a variant has its
    /// own measurement, or as much of the step's as holds for both.
    /// </summary>
    public static Dictionary<string, Anchor> Anchors(HomeRun home, Request request)
    {
        var anchors = home.Result.Each()
            .Where(pair => pair.Outcome.Anchor is not null && !request.Ways.ContainsKey(pair.Step.Id))
            .ToDictionary(pair => pair.Step.Id, pair => pair.Outcome.Anchor!);
        foreach (var step in home.Formula.Recipe.Steps.Where(step => !request.Ways.ContainsKey(step.Id)))
        {
            if (Asked(step, request) is not { } variant)
            {
                continue;
            }

            var written = anchors.GetValueOrDefault(step.Id);
            var own = variant.Step.Measured is not null ? OwnAnchor(home, step, variant, [])
                : StatesTime(step, variant.Step) ? OwnAnchor(home, step, variant, RateOf(step, written))
                : null;
            var anchor = own ?? CarriedOver(step, variant.Step, written);
            anchors.Remove(step.Id);
            if (anchor is not null)
            {
                anchors[step.Id] = anchor;
            }
        }

        return anchors;
    }

    /// <summary>
    /// The steps that are at home what the author measured, though others are done in another way: those that nothing done otherwise goes
    /// into, and a variant that was measured itself.
    /// </summary>
    public static IReadOnlySet<string> Met(Recipe asWritten, Recipe asMade, Request request)
    {
        var graph = StepGraph.Of(asMade, asMade.Home);
        var (met, other) = (new HashSet<string>(), new HashSet<string>());
        for (var index = 0; index < graph.Steps.Count; index++)
        {
            var (step, part) = (graph.Steps[index], graph.WorksOn[index]);
            var variant = asWritten.FindStep(step.Id) is { } written ? Asked(written, request) : null;
            var reads = other.Contains(part) || other.Contains(step.Component)
                || asMade.FindComponent(part) is { } component && component.Lines.Any(line => line.Uses is { } used && other.Contains(used));
            if (!reads && variant is null or { Step.Measured: not null })
            {
                met.Add(step.Id);
            }

            if (!StepGraph.IsBeside(step) && (reads || variant is not null))
            {
                other.Add(part);
            }
        }

        return met;
    }

    /// <summary>Whether a variant says itself how long it takes: at home it takes that long, and elsewhere until it has come as far.</summary>
    private static bool StatesTime(Step step, Step variant) => variant.End is StepEnd.AfterTime or StepEnd.ByCue or StepEnd.WhenRipe { About: not null } && variant.End != step.End;

    /// <summary>How fast the dough rises does not hang on how long it is left.</summary>
    private static Dictionary<string, Anchor> RateOf(Step step, Anchor? written) =>
        step.Kind == StepKind.Bulk && written?.Scale is not null ? new() { [step.Id] = written with { Growth = [], HomeMinutes = null } } : [];

    /// <summary>The author's kitchen with this one step done in the other way.</summary>
    private static Anchor? OwnAnchor(HomeRun home, Step step, StepVariant variant, Dictionary<string, Anchor> known)
    {
        var recipe = home.Formula.Recipe;
        var made = recipe with { Steps = [.. recipe.Steps.Select(other => other.Id == step.Id ? variant.Step : other)] };
        var stage = new Stage(home.Formula with { Recipe = made }, recipe.Home, Request.Home, home.Priors, isHome: true);
        return Run.Of(stage, known).Find(step.Id)?.Anchor;
    }

    private static Anchor? CarriedOver(Step step, Step variant, Anchor? anchor)
    {
        if (anchor is null || variant.Way != step.Way || variant.Oven?.Mode != step.Oven?.Mode)
        {
            return null;
        }

        // Another end has another growth or core; other folds fall where the variant says.
        return variant.End != step.End ? anchor with { Growth = [] }
            : variant.Folds.SequenceEqual(step.Folds) ? anchor
            : anchor with { Growth = [.. anchor.Growth.TakeLast(1)] };
    }
}
