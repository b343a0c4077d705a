using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Pictures;

/// <summary>Every recipe that comes with the program in every kitchen that does, as written and with a dough temperature asked for.</summary>
internal static class DemoRuns
{
    private static readonly Lazy<IReadOnlyList<(string Name, Rehearsal Run)>> Made = new(() => [.. Make()]);

    public static IReadOnlyList<(string Name, Rehearsal Run)> All => Made.Value;

    public static Rehearsal Of(string recipe, string kitchen, bool asked = false) => All.Single(run => run.Name == $"{recipe} in {kitchen}{(asked ? ", asked" : "")}").Run;

    private static IEnumerable<(string Name, Rehearsal Run)> Make()
    {
        foreach (var file in Files("recipes"))
        {
            var recipe = RecipeText.Read(File.ReadAllText(file)).Recipe!;
            foreach (var (kitchenName, kitchen) in Kitchens())
            {
                foreach (var dough in new Temperature?[] { null, Temperature.FromCelsius(25.5) })
                {
                    var run = Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = kitchen, Dough = dough });
                    yield return ($"{Path.GetFileNameWithoutExtension(file)} in {kitchenName}{(dough is null ? "" : ", asked")}", run);
                }
            }
        }
    }

    private static IEnumerable<(string Name, Kitchen? Kitchen)> Kitchens() =>
        [("home", null), .. Files("kitchens").Select(file => (Path.GetFileNameWithoutExtension(file), KitchenText.Read(File.ReadAllText(file)).Kitchen))];

    private static IEnumerable<string> Files(string folder) => Directory.EnumerateFiles(House.PathTo("demo", folder), "*.yaml").Order(StringComparer.Ordinal);
}
