using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Tests.Formulas;

/// <summary>Short words for building recipes in tests.</summary>
internal static class RecipeBuilder
{
    public static Kitchen Home { get; } = new() { Air = AirProfile.Constant(Temperature.FromCelsius(21)) };

    public static Mass Grams(double grams) => Mass.FromGrams(grams);

    public static Line Of(string name, double grams, params string[] conditions) => new()
    {
        Id = name.Replace(' ', '-'),
        Name = name,
        Mass = Grams(grams),
        Typed = $"{grams} g",
        Conditions = conditions,
        Position = Position.None,
    };

    public static Line AllOf(string component) => PartOf(component, null);

    public static Line PartOf(string component, double? grams) => new()
    {
        Id = component,
        Name = component,
        Uses = component,
        Mass = grams is { } some ? Grams(some) : null,
        Typed = grams is null ? "all of it" : $"{grams} g",
        Position = Position.None,
    };

    public static Component Part(string id, ComponentKind kind, params Line[] lines) => new(id, id, kind, lines, Position.None);

    public static Component Dough(params Line[] lines) => Part("dough", ComponentKind.Dough, lines);

    public static Recipe Recipe(params Component[] components) =>
        new() { Title = "Test", Home = Home, Components = components, Steps = [] };

    public static Step Step(string id, StepKind kind, string component = "dough") => new()
    {
        Id = id,
        Name = id,
        Kind = kind,
        Component = component,
        Position = Position.None,
    };

    public static Formula Balance(params Component[] components) => Formula.Balance(Recipe(components), Larder.Shipped);

    public static Formula Balance(Recipe recipe) => Formula.Balance(recipe, Larder.Shipped);

    public static ComponentFormula The(this Formula formula, string component) => formula.Components.Single(part => part.Id == component);

    public static LineFormula The(this ComponentFormula component, string line) => component.Lines.Single(each => each.Id == line);
}
