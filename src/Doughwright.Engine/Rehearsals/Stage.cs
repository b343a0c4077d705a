using Doughwright.Engine.Formulas;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>What every step of one run shares: the recipe as made here, the kitchen, what was asked and the drawn parameters.</summary>
internal sealed class Stage
{
    private readonly IReadOnlySet<string> met;

    /// <param name="met">Ids of the steps that meet what was measured though others are done in another way; all do at home.</param>
    public Stage(Formula formula, Kitchen kitchen, Request request, Priors priors, bool isHome, IReadOnlySet<string>? met = null)
    {
        (Formula, Kitchen, Request, Priors, IsHome, this.met) = (formula, kitchen, request, priors, isHome, met ?? new HashSet<string>());
        Pressure = StandardAtmosphere.PressureAt(kitchen.Altitude);
        Boils = SaturatedWater.BoilingPoint(Pressure);
    }

    /// <summary>The same stage with something else asked for.</summary>
    public Stage With(Request request) => new(Formula, Kitchen, request, Priors, IsHome, met);

    /// <summary>The same stage in another room.</summary>
    public Stage In(AirProfile air) => new(Formula, Kitchen with { Air = air }, Request, Priors, IsHome, met);

    /// <summary>The same stage at the altitude of the author's kitchen.</summary>
    public Stage AtHomeAltitude => new(Formula, Kitchen with { Altitude = Recipe.Home.Altitude }, Request, Priors, IsHome, met);

    public Formula Formula { get; }

    public Recipe Recipe => Formula.Recipe;

    public Kitchen Kitchen { get; }

    public Request Request { get; }

    public Priors Priors { get; }

    public int Lanes => Priors.Lanes;

    /// <summary>Whether this is the author's own kitchen with nothing changed, so that what was measured is to be met.</summary>
    public bool IsHome { get; }

    /// <summary>Whether what was measured in a step is to be met.</summary>
    public bool Meets(Step step) => IsHome || met.Contains(step.Id);

    public Pressure Pressure { get; }

    public Temperature Boils { get; }

    public ComponentFormula Component(string id) => Formula.Components.First(component => component.Id == id);

    /// <summary>Number of a component among those that rise, in the order of the recipe.</summary>
    public int DoughIndex(string component) =>
        Math.Max(0, Recipe.Components.Where(other => other.Kind is ComponentKind.Dough or ComponentKind.Preferment).Select(other => other.Id).ToList().IndexOf(component));

    /// <summary>How warm a line of ingredients goes in here. What is asked of a part is not asked of the raw thing of the same name that it is made from.</summary>
    public double WarmthOf(string component, Line line) =>
        Request.At.TryGetValue(Request.LineOf(component, line.Id), out var asked)
        || (Request.At.TryGetValue(line.Id, out asked) && Recipe.FindComponent(line.Id) is null)
        ? asked.Celsius
        : Believable.Of(line.Warmth) switch
        {
            { Kind: WarmthKind.Boiling } => Request.Pour?.Celsius ?? Boils.Celsius,
            { Kind: WarmthKind.Fridge } => Kitchen.Fridge.Celsius,
            { Kind: WarmthKind.Tap } => Kitchen.Tap.Celsius,
            // No watery liquid is hotter than it boils here; TooHotToBeLiquid tells it. Oil and what is dry may well be.
            { Stated: { } stated } when IsWatery(component, line) => Math.Min(stated.Celsius, Boils.Celsius),
            { Stated: { } stated } => stated.Celsius,
            _ => Kitchen.Shelf.Celsius,
        };

    private bool IsWatery(string component, Line line) => Component(component).Lines.Any(weighed => weighed.Id == line.Id && weighed.Role is Role.Water or Role.Liquid);

    /// <summary>
    /// How warm a part was asked to go in that no step cools or warms, a poolish say; null when nothing was asked. Where a step cools or warms
    /// it, that step says what comes of it.
    /// </summary>
    public Temperature? AskedWithoutCooling(string part) =>
        Request.At.TryGetValue(part, out var asked)
        && !Recipe.Steps.Any(step => step.Component == part && (step.Kind is StepKind.Cool or StepKind.Warm || step.IsPoured))
            ? asked
            : null;

    /// <summary>
    /// How the oven is set here. An oven of the same kind as the author's is set as the author set it, static for one loaf in an oven with a
    /// fan, say; another kind of oven has one way only. Source: oven-pairs.
    /// </summary>
    public OvenMode ModeOf(OvenSetting? oven) => Kitchen.Oven == Recipe.Home.Oven ? WrittenModeOf(oven) : Kitchen.Oven;

    /// <summary>How the author set the oven.</summary>
    public OvenMode WrittenModeOf(OvenSetting? oven) => oven?.Mode ?? Recipe.Home.Oven;

    /// <summary>How warm a vessel is before anything is in it.</summary>
    public double WarmthOf(Vessel vessel) => vessel.Warmed ? WarmedVessel.Celsius : Kitchen.Shelf.Celsius;

    /// <summary>A bowl that was filled with boiling water, emptied and dried at once. Source: warmed-vessel.</summary>
    public static Temperature WarmedVessel { get; } = Temperature.FromCelsius(60);

    /// <summary>Constant while a step runs: air with the proofing place where the step stands in it.</summary>
    public AirProfile AirOf(Step step, Duration start) => step switch
    {
        { Where: Where.Fridge } => AirProfile.Constant(Kitchen.Fridge),
        { Where: Where.Bath } => AirProfile.Constant(Kitchen.Tap),
        { Kind: StepKind.Proof } or { Where: Where.ProofingPlace } when Kitchen.ProofingPlace is { } place => AirProfile.Constant(place),
        _ => Kitchen.Air.StartingAt(start),
    };
}
