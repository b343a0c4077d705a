using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Sections;

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
    public static Rehearsal Rehearse(Formula formula, Larder larder, Request request, int lanes = OrdinaryLanes) =>
        Rehearse(HomeRun.Of(formula, lanes), larder, request);

    /// <summary>
    /// A bake over a section through its piece, in the kitchen asked for: the likely answer in two dimensions, beside that of the rehearsal, which
    /// goes along one radius. Takes some tenths of a second. Null where the step is no bake, its dough or its oven is not known, or no oven bakes
    /// it in the author's minutes.
    /// </summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static BakedSection? Section(Formula formula, Larder larder, Request request, string step, CancellationToken stop = default)
    {
        var home = HomeRun.Of(formula, lanes: 1);
        return SectionBakes.Of(home.Result, Rehearse(home, larder, request).Kept, step, stop);
    }

    /// <summary>
    /// Rehearses a recipe that nobody measured, with what was measured of the one it was made from: the same hands, bowls and oven, another dough.
    /// Steps that both have under one id carry it over.
    /// </summary>
    public static Rehearsal RehearseSwapped(Recipe tested, Recipe swapped, Larder larder, Request? request = null, int lanes = OrdinaryLanes)
    {
        return RehearseOther(HomeRun.Of(Formula.Balance(tested, larder), lanes), swapped, larder, request ?? Request.Home);
    }

    /// <summary>The same where the home run of what was tested is known.</summary>
    internal static Rehearsal RehearseOther(HomeRun home, Recipe swapped, Larder larder, Request request)
    {
        var asked = InAKitchen(request);
        var other = Formula.Balance(Believable.Of(swapped), larder);
        var anchors = Variants.Anchors(home, asked);
        var stage = new Stage(Changes.Apply(other, larder, asked), asked.Kitchen ?? home.Formula.Recipe.Home, asked, home.Priors, isHome: false);
        var answers = HeatAnswer.Of(stage, anchors);
        return Report.Of(Run.Of(stage.With(answers.Applied), anchors), home.Result, answers.Solutions, answers.Findings);
    }

    /// <summary>Rehearses a recipe whose home run is known.</summary>
    internal static Rehearsal Rehearse(HomeRun home, Larder larder, Request request)
    {
        var formula = home.Formula;
        request = InAKitchen(request);
        if (IsHome(formula.Recipe, request))
        {
            return Report.Of(home.Result, home.Result, [], []);
        }

        var changed = Changes.Apply(formula, larder, request);
        var kitchen = request.Kitchen ?? formula.Recipe.Home;
        var anchors = Variants.Anchors(home, request);
        var isHomeOtherwise = IsHome(formula.Recipe, request with { Variants = Request.Home.Variants });
        var met = isHomeOtherwise ? Variants.Met(formula.Recipe, changed.Recipe, request) : new HashSet<string>();
        var stage = new Stage(changed, kitchen, request, home.Priors, isHome: false, met);
        var answers = HeatAnswer.Of(stage, anchors);
        var here = Run.Of(stage.With(answers.Applied), anchors);
        return Report.Of(here, home.Result, answers.Solutions, answers.Findings);
    }

    /// <summary>A kitchen that is asked for is one as believable as the author's own, which it often is with something changed.</summary>
    private static Request InAKitchen(Request request) => request.Kitchen is { } kitchen ? request with { Kitchen = Believable.Of(kitchen) } : request;

    /// <summary>A kitchen without its name, and with what is left to a default written out: two that are the same are equal.</summary>
    private static Kitchen Told(Kitchen kitchen) => kitchen with { Name = "", Ingredients = kitchen.Shelf };

    private static bool IsHome(Recipe recipe, Request request) =>
        (request.Kitchen is null || Told(request.Kitchen) == Told(recipe.Home))
        && request is { Pour: null, Dough: null, At.Count: 0, Bowls.Count: 0, Ways.Count: 0, Variants.Count: 0, Weighed.Count: 0, Free.Count: 0 };
}
