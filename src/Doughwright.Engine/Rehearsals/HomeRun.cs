using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Sections;

namespace Doughwright.Engine.Rehearsals;

/// <summary>The recipe in its own kitchen, where what the author measured fixes what is carried elsewhere: the same for every rehearsal of it.</summary>
/// <param name="Formula">With what nobody can believe left out.</param>
internal sealed record HomeRun(Formula Formula, Priors Priors, RunResult Result)
{
    /// <param name="sections">As of <see cref="Request.SectionMinutes"/>, for bakes that nobody timed at home.</param>
    public static HomeRun Of(Formula formula, int lanes, IReadOnlyDictionary<string, SectionMinutes>? sections = null)
    {
        formula = formula with { Recipe = Believable.Of(formula.Recipe) };
        var priors = Priors.For(lanes, RisePriorsOf(formula));
        var request = sections is null ? Request.Home : Request.Home with { SectionMinutes = sections };
        return new(formula, priors, Run.Of(new(formula, formula.Recipe.Home, request, priors, isHome: true), new Dictionary<string, Anchor>()));
    }

    /// <summary>How far the dough's main flour can rise.</summary>
    private static RisePriors RisePriorsOf(Formula formula)
    {
        var seen = formula.Recipe.Steps.Select(step => (step.End as StepEnd.AtGrowth)?.Times ?? 1).DefaultIfEmpty(1).Max();
        return RisePriors.For(FlourOf(formula).Ceiling.WithSeen(seen));
    }

    /// <summary>The dough's main flour, null when there is none, and how far doughs of it rise.</summary>
    public static (Ingredient? Flour, RiseCeiling Ceiling) FlourOf(Formula formula)
    {
        var flours = formula.Components.Where(component => component.ShareInDough > 0)
            .SelectMany(component => component.Lines)
            .Where(line => line.Role == Role.Flour && line.Ingredient is not null)
            .ToList();
        var main = flours.MaxBy(line => line.Mass.Grams)?.Ingredient;
        var ceiling = main switch
        {
            null => RiseCeiling.StrongWhite,
            { Id: var id } when id.Contains("rye", StringComparison.Ordinal) => RiseCeiling.Rye,
            { Id: var id } when id.Contains("wholemeal", StringComparison.Ordinal) => RiseCeiling.Wholemeal,
            { Id: var id } when id.Contains("bread", StringComparison.Ordinal) => RiseCeiling.StrongWhite,
            _ => RiseCeiling.Plain,
        };
        return (main, ceiling);
    }
}
