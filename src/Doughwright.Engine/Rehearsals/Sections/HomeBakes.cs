using Doughwright.Engine.Formulas;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Sections;

/// <summary>The bakes of a recipe at home over sections through their pieces. Immutable; good for every kitchen the recipe is taken to.</summary>
public sealed class HomeBakes
{
    private readonly IReadOnlyDictionary<string, HomeBake> bakes;

    private HomeBakes(HomeRun run, IReadOnlyDictionary<string, HomeBake> bakes) => (Run, this.bakes) = (run, bakes);

    /// <summary>One lane of the home run, bakes that nobody timed as long as over their sections.</summary>
    internal HomeRun Run { get; }

    internal static HomeBakes Of(Formula formula, CancellationToken stop)
    {
        var bakes = new Dictionary<string, HomeBake>();
        var run = HomeRun.Of(formula, lanes: 1);
        foreach (var step in run.Formula.Recipe.Steps.Where(step => step.Kind == StepKind.Bake))
        {
            if (SectionBakes.AtHome(run.Result, step.Id, stop) is { } bake)
            {
                bakes[step.Id] = bake;
                // A bake that nobody timed moves what comes after it.
                run = HomeRun.Of(formula, lanes: 1, bakes.ToDictionary(known => known.Key, known => new SectionMinutes(known.Value.AtHome.Minutes, known.Value.AtHome.Minutes)));
            }
        }

        return new(run, bakes);
    }

    /// <summary>Null where the bake could not be computed at home.</summary>
    internal HomeBake? Find(string step) => bakes.GetValueOrDefault(step);

    /// <summary>The author's own bake where it is done in a way that the author timed as well.</summary>
    internal HomeBake? OfVariant(Step step, StepVariant variant, CancellationToken stop)
    {
        var recipe = Run.Formula.Recipe;
        var made = recipe with { Steps = [.. recipe.Steps.Select(other => other.Id == step.Id ? variant.Step : other)] };
        return SectionBakes.AtHome(HomeRun.Of(Run.Formula with { Recipe = made }, lanes: 1).Result, step.Id, stop);
    }
}
