using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>Runs recipes in kitchens.</summary>
public static class Rehearser
{
    /// <summary>Lanes of an ordinary rehearsal: the likely answer and 31 draws.</summary>
    public const int OrdinaryLanes = 32;

    /// <summary>Rehearses a recipe as asked. What is wrong becomes a finding; what people write never throws.</summary>
    public static Rehearsal Rehearse(Recipe recipe, Larder larder, Request? request = null, int lanes = OrdinaryLanes) =>
        Rehearse(Formula.Balance(recipe, larder), larder, request ?? Request.Home, lanes);

    /// <summary>Rehearses a recipe whose formula is known.</summary>
    public static Rehearsal Rehearse(Formula formula, Larder larder, Request request, int lanes = OrdinaryLanes)
    {
        formula = formula with { Recipe = Believable.Of(formula.Recipe) };
        var priors = Priors.For(lanes, RisePriorsOf(formula));
        var home = Run.Of(new(formula, formula.Recipe.Home, Request.Home, priors, isHome: true), new Dictionary<string, Anchor>());
        if (IsHome(formula.Recipe, request))
        {
            return Report.Of(home, home, [], []);
        }

        var changed = Changes.Apply(formula, larder, request);
        var kitchen = request.Kitchen ?? formula.Recipe.Home;
        var anchors = AnchorsOf(home, request);
        var stage = new Stage(changed, kitchen, request, priors, isHome: false);
        var answers = HeatAnswer.Of(stage, anchors);
        var here = Run.Of(stage.With(answers.Applied), anchors);
        return Report.Of(here, home, answers.Solutions, answers.Findings);
    }

    /// <summary>A kitchen without its name, and with what is left to a default written out: two that are the same are equal.</summary>
    private static Kitchen Told(Kitchen kitchen) => kitchen with { Name = "", Ingredients = kitchen.Shelf };

    private static bool IsHome(Recipe recipe, Request request) =>
        (request.Kitchen is null || Told(request.Kitchen) == Told(recipe.Home))
        && request is { Pour: null, Dough: null, At.Count: 0, Bowls.Count: 0, Ways.Count: 0, Weighed.Count: 0, Free.Count: 0 };

    /// <summary>What the author's measurements fixed. Another way of mixing has its own rise, so the author's does not go with it.</summary>
    private static Dictionary<string, Anchor> AnchorsOf(RunResult home, Request request) => home.Each()
        .Where(pair => pair.Outcome.Anchor is not null && !request.Ways.ContainsKey(pair.Step.Id))
        .ToDictionary(pair => pair.Step.Id, pair => pair.Outcome.Anchor!);

    /// <summary>How far the dough's main flour can rise.</summary>
    private static RisePriors RisePriorsOf(Formula formula)
    {
        var flours = formula.Components.Where(component => component.ShareInDough > 0)
            .SelectMany(component => component.Lines)
            .Where(line => line.Role == Role.Flour && line.Ingredient is not null)
            .ToList();
        var main = flours.MaxBy(line => line.Mass.Grams)?.Ingredient;
        var ceiling = main switch
        {
            null => RisePriors.StrongWhiteCeiling,
            { Id: var id } when id.Contains("rye", StringComparison.Ordinal) => RisePriors.RyeCeiling,
            { Id: var id } when id.Contains("wholemeal", StringComparison.Ordinal) => RisePriors.WholemealCeiling,
            { Id: var id } when id.Contains("bread", StringComparison.Ordinal) => RisePriors.StrongWhiteCeiling,
            _ => RisePriors.PlainCeiling,
        };
        return RisePriors.For(ceiling);
    }
}
