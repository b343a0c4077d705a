using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What decides the mass of a stand-in.</summary>
internal enum Manner
{
    /// <summary>The same ingredient by another name: nothing changes.</summary>
    Same,

    /// <summary>Nothing stands in.</summary>
    Without,

    /// <summary>Flour is held.</summary>
    Flour,

    /// <summary>As much leavening as before.</summary>
    Yeast,

    /// <summary>As much by mass: a wash, a topping, what is there for its taste, and what is not known well enough.</summary>
    AsMuch,

    /// <summary>As much as keeps water, sugar and fat nearest.</summary>
    Solved,
}

/// <summary>One line that is to be swapped, and what stands in; null when nothing does.</summary>
internal sealed record PlannedSwap(ComponentFormula Component, LineFormula Line, StandIn? By)
{
    public Manner Manner => By switch
    {
        null => Manner.Without,
        { Ingredient: { } row } when row.Id == Line.Ingredient?.Id => Manner.Same,
        { Ingredient: null } when Phrase.Normal(By.Name) == Phrase.Normal(Line.Name) => Manner.Same,
        { Ingredient.Role: Role.Flour } when Line.Role == Role.Flour => Manner.Flour,
        { Ingredient.Yeast: not null } when Line.Ingredient?.Yeast is not null => Manner.Yeast,
        { Ingredient.Role: Role.Salt } when Line.Role == Role.Salt => Manner.AsMuch,
        { Ingredient.Role: Role.Flavour } when Line.Role == Role.Flavour => Manner.AsMuch,
        _ when Component.Kind == ComponentKind.Wash || Line.Role == Role.Topping => Manner.AsMuch,
        { Ingredient: { } row } when Known(row.Composition) && Known(Line.Composition) => Manner.Solved,
        _ => Manner.AsMuch,
    };

    /// <summary>The mass of the stand-in where no solving is needed.</summary>
    public Mass FixedMass => Manner switch
    {
        Manner.Yeast => OfKind(YeastEquivalents.FromFresh(YeastEquivalents.ToFresh(Line.Mass, Line.Ingredient!.Yeast!.Value)), By!.Ingredient!.Yeast!.Value),
        Manner.Without => Mass.Zero,
        _ => Line.Mass,
    };

    /// <summary>
    /// How many times the mass of the line what stands in may weigh. A liquid stays a liquid and its like its like; between different things
    /// anything goes, down to nothing, which is then refused.
    /// </summary>
    public (double Least, double Most) Times => (Line.Role, By?.Ingredient?.Role) switch
    {
        (Role.Water or Role.Liquid, Role.Water or Role.Liquid) => (0.5, 2),
        var (was, becomes) when was == becomes => (0.2, 4),
        _ => (0, 4),
    };

    public Finding About(string kind, Grade grade, params (string, object)[] arguments) =>
        (Component, Line).About(kind, grade, [("name", Line.Name), ("by", By?.Name ?? ""), ("part", Component.Name), .. arguments]);

    public static bool Known(Composition composition) => composition is { Water: not null, Sugars: not null, Fat: not null };

    private static Mass OfKind(YeastEquivalents yeast, YeastKind kind) => kind switch
    {
        YeastKind.Fresh => yeast.Fresh,
        YeastKind.ActiveDry => yeast.ActiveDry,
        _ => yeast.Instant,
    };
}
