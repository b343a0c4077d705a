using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Formulas.Swaps;

/// <summary>Short words for swaps in tests.</summary>
internal static class Swaps
{
    public static Recipe Rolls { get; } = Read("demo/recipes/potato-rolls.yaml");

    public static Recipe TinLoaf { get; } = Read("demo/recipes/tin-loaf.yaml");

    public static Recipe HearthLoaf { get; } = Read("demo/recipes/hearth-loaf.yaml");

    public static Recipe Ring { get; } = Read("demo/recipes/pilot-ring.yaml");

    public static Recipe Buns { get; } = Read("tests/data/texts/harbour-buns.yaml");

    public static IReadOnlyList<Recipe> All { get; } = [Rolls, TinLoaf, HearthLoaf, Buns];

    public static Swapped Of(Recipe recipe, params string[] replace) => Swapping.Swap(recipe, [.. replace.Select(Wish)], Larder.Shipped);

    /// <summary>"butter@dough=olive oil".</summary>
    public static Wish Wish(string typed)
    {
        var halves = typed.Split('=', 2);
        var what = halves[0].Split('@', 2);
        return new(what[0], halves[1], what.Length == 2 ? what[1] : null);
    }

    public static double Grams(this Swapped swapped, string component, string line) =>
        swapped.Recipe!.FindComponent(component)!.Lines.Single(each => each.Id == line).Mass!.Value.Grams;

    public static Finding The(this Swapped swapped, string kind) => swapped.Consequences.First(finding => finding.Kind == kind);

    public static IEnumerable<string> Kinds(this Swapped swapped) => swapped.Consequences.Select(finding => finding.Kind);

    public static SwapResidual OfDough(this Swapped swapped) => swapped.Residuals.Single(residual => residual.Component is null);

    private static Recipe Read(string path) => RecipeText.Read(Texts.Read(path)).Recipe!;
}
