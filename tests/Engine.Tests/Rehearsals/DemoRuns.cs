using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>Every recipe of the demo book at home and in every kitchen of the demo.</summary>
internal static class DemoRuns
{
    public static IReadOnlyList<Rehearsal> All { get; } = [.. Recipes.SelectMany(recipe => Requests.Select(request => Rehearser.Rehearse(recipe, Larder.Shipped, request)))];

    public static Rehearsal PotatoRolls { get; } = Rehearser.Rehearse(RecipeText.Read(Texts.PotatoRolls).Recipe!, Larder.Shipped);

    /// <summary>The potato rolls in the winter cottage, with both parts free for a dough of 26 °C.</summary>
    public static Rehearsal Warmed { get; } = Rehearser.Rehearse(
        RecipeText.Read(Texts.PotatoRolls).Recipe!,
        Larder.Shipped,
        new() { Kitchen = Kitchen("winter-cottage"), Dough = Temperature.FromCelsius(26), Free = ["potato", "scald"] });

    /// <summary>The hearth loaf in the summer class, its water free for a dough of 24 °C: colder than any water from the tap.</summary>
    public static Rehearsal Iced { get; } = Rehearser.Rehearse(
        RecipeText.Read(Texts.Read("demo/recipes/hearth-loaf.yaml")).Recipe!,
        Larder.Shipped,
        new() { Kitchen = Kitchen("summer"), Dough = Temperature.FromCelsius(24), Free = ["water"] });

    private static IEnumerable<Engine.Recipes.Recipe> Recipes =>
        Texts.Recipes.Where(path => path.StartsWith("demo/", StringComparison.Ordinal)).Select(path => RecipeText.Read(Texts.Read(path)).Recipe!);

    private static IEnumerable<Request> Requests =>
        Texts.Kitchens.Select(path => new Request { Kitchen = KitchenText.Read(Texts.Read(path)).Kitchen }).Prepend(Request.Home);

    private static Kitchens.Kitchen Kitchen(string name) => KitchenText.Read(Texts.Read($"demo/kitchens/{name}.yaml")).Kitchen!;
}
