using CsCheck;
using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;

namespace Doughwright.Engine.Tests.Formulas.Resizing;

/// <summary>Recipes to be resized, and short words for it.</summary>
internal static class Sizes
{
    /// <summary>Doughs of whole grams with a scald, a filling inside a filling, a wash, and a dose that a scale of 1 g does not show.</summary>
    public static Gen<Recipe> OnTheScale { get; } =
        Gen.Select(Gen.Int[60, 3000], Gen.Int[50, 2000], Gen.Int[1, 400], Gen.Int[1, 60], Gen.Int[1, 90], Gen.Int[1, 300], Gen.Int[1, 24])
            .Select((flour, water, butter, salt, scald, plums, pieces) =>
            {
                var recipe = RecipeBuilder.Recipe(
                    Part("scald", ComponentKind.Scald, Of("strong white flour", scald), Of("water", scald + 20)),
                    Dough(Of("strong white flour", flour), AllOf("scald"), Of("water", water), Of("butter", butter), Of("salt", salt), Of("egg", 50), Of("instant yeast", 3)),
                    Part("syrup", ComponentKind.Syrup, Of("sugar", plums), Of("water", plums)),
                    Part("filling", ComponentKind.Filling, AllOf("syrup"), Of("butter", plums)),
                    Part("wash", ComponentKind.Wash, Of("milk", 15)));
                var dough = (2 * scald) + 20 + flour + water + butter + salt + 50 + 3;
                return recipe with { Make = new(pieces, "rolls", Grams(dough / (double)pieces)) };
            });

    public static Resized To(this Recipe recipe, ResizeWish wish, params (string Line, int Count)[] take) => Engine.Rehearsals.Resizing.Resize(
        recipe,
        Larder.Shipped,
        new(wish) { Take = take.ToDictionary(pair => pair.Line, pair => pair.Count) });

    /// <summary>By a factor: so much of the dough's largest line as makes it.</summary>
    public static Resized By(this Recipe recipe, double factor) => recipe.To(new ResizeWish.HaveLine("butter", MassOf(recipe, "butter") * factor));

    public static ResizedLine The(this Resized resized, string component, string line) =>
        resized.Lines.Single(each => each.Component == component && each.Line == line);

    public static IEnumerable<string> Kinds(this Resized resized) => resized.Findings.Select(finding => finding.Kind);

    private static Mass MassOf(Recipe recipe, string line) =>
        recipe.Components.SelectMany(part => part.Lines).Where(each => each.Id == line).Aggregate(Mass.Zero, (sum, each) => sum + each.Mass!.Value);

    /// <summary>A box of so many centimetres inside.</summary>
    public static VesselSize Box(double length, double width, double depth) =>
        new(Length.FromMillimetres(length * 10), Length.FromMillimetres(width * 10), Length.FromMillimetres(depth * 10), null);
}
