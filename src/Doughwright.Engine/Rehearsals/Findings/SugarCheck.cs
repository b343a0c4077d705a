using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// How much slower the dough's sugar makes its yeast. All sugar of the dough counts, that of a puree too; filling and icing do not. Ordinary
/// instant yeast works in most sweet home doughs, so this is never more than a hint. Where the sugar alone would let it work, it is the salt
/// that stops it. Source: sugar-and-yeast.
/// </summary>
internal static class SugarCheck
{
    private static readonly Percent Said = Percent.FromValue(10);
    private static readonly Percent OtherYeastHelps = Percent.FromValue(15);
    private static readonly Percent OtherYeastWanted = Percent.FromValue(20);

    public static IEnumerable<Finding> Of(Stage stage)
    {
        var percent = stage.Formula.Percent;
        if (percent is not { TrueSugar: { } sugar, TrueWater: { Value: > 0 } water, FreshYeast.Value: > 0 })
        {
            return [];
        }

        var salt = percent.Salt?.Value ?? 0;
        var without = Speed(water.Value, salt, 0);
        var with = Speed(water.Value, salt, sugar.Value);
        if (with <= 0 && Speed(water.Value, 0, sugar.Value) > 0)
        {
            return [About(stage, "salt-stops-yeast", Grade.Hint, ("salt", Percent.FromValue(salt)), ("sugar", sugar))];
        }

        if (sugar < Said)
        {
            return [];
        }

        var kind = sugar < OtherYeastHelps ? "sugar-slows-yeast" : sugar < OtherYeastWanted ? "sugar-likes-other-yeast" : "sugar-wants-other-yeast";
        (string, object)[] arguments = with > 0
            ? [("percent", sugar), ("times", Math.Round(without / with, 1))]
            : [("percent", sugar)];
        return [About(stage, with > 0 ? kind : "sugar-stops-yeast", Grade.Hint, arguments)];
    }

    private static Finding About(Stage stage, string kind, Grade grade, params (string, object)[] arguments) => new()
    {
        Kind = kind,
        Grade = grade,
        Place = "parts." + (stage.Recipe.Components.LastOrDefault(component => component.Kind == ComponentKind.Dough)?.Id ?? ""),
        Arguments = arguments.ToDictionary(argument => argument.Item1, argument => argument.Item2),
    };

    /// <summary>Speed of ordinary yeast in the dough's water, against plain water; amounts per 100 g of flour.</summary>
    private static double Speed(double water, double salt, double sugar) => OsmoticFactor.Of(
        WaterActivity.OfDough(Mass.FromGrams(water), Mass.FromGrams(salt), Mass.FromGrams(sugar)), OsmoticFactor.StandardMinimum);
}
