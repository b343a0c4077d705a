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
        Rehearse(HomeRun.Of(formula, lanes, request.SectionMinutes), larder, request);

    /// <summary>
    /// The bakes of a recipe at home over sections through their pieces, found once for whatever kitchen follows. Takes some tenths of a second.
    /// </summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static HomeBakes BakesAtHome(Formula formula, CancellationToken stop = default) => HomeBakes.Of(formula, stop);

    /// <summary>
    /// The bakes of a recipe over sections through their pieces, in the kitchen asked for, and the request with their minutes in it: rehearsed
    /// so, a bake that the author did not time here takes as long as over its section, and all that follows goes by that. Takes some tenths of
    /// a second a bake.
    /// </summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static BakesOverSections OverSections(HomeBakes home, Larder larder, Request request, CancellationToken stop = default) =>
        BakesOverSections.Of(home, larder, request, stop);

    /// <summary>
    /// Rehearses a recipe as it is told in the end: what is told at once, and where a bake is in it that nobody timed here, its minutes over the
    /// section through its piece. Takes some tenths of a second then.
    /// </summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static RehearsedOverSections RehearseOverSections(Formula formula, Larder larder, Request request, CancellationToken stop = default)
    {
        var once = Rehearse(formula, larder, request);
        if (!once.HasComputedBake)
        {
            return new(once, request, null);
        }

        var bakes = OverSections(BakesAtHome(formula, stop), larder, request, stop);
        return new(Rehearse(formula, larder, bakes.Request), bakes.Request, bakes);
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
    private static Kitchen Told(Kitchen kitchen) => kitchen with { Name = "", Ingredients = kitchen.Shelf, Vessels = KitchenVessels.Unsaid };

    /// <summary>Whether every step is done in the vessel it is done in at home: what else stands there changes nothing.</summary>
    private static bool HasSameVessels(Recipe recipe, Kitchen kitchen) => recipe.Steps
        .SelectMany(step => step.Variants.Select(variant => variant.Step).Append(step))
        .All(step => Changes.VesselIn(kitchen, step.Vessel) == step.Vessel);

    private static bool IsHome(Recipe recipe, Request request) =>
        (request.Kitchen is not { } kitchen || (Told(kitchen) == Told(recipe.Home) && HasSameVessels(recipe, kitchen)))
        && request is { Pour: null, Dough: null, At.Count: 0, Bowls.Count: 0, Ways.Count: 0, Variants.Count: 0, Weighed.Count: 0, Free.Count: 0 };
}
