using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>A text taken through the engine, with the larder as shipped.</summary>
internal static class Taken
{
    public static Recipe Recipe(string text) => RecipeText.Read(text).Recipe!;

    public static Rehearsal Rehearsal(string text, Request? request = null) => Rehearser.Rehearse(Recipe(text), Larder.Shipped, request);

    /// <summary>At home but for its air, in °C.</summary>
    public static Rehearsal InAir(string text, double celsius) => Rehearsal(
        text, new() { Kitchen = Recipe(text).Home with { Air = Engine.Kitchens.AirProfile.Constant(Engine.Quantities.Temperature.FromCelsius(celsius)) } });
}
