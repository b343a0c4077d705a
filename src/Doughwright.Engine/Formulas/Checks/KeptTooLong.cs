using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// What the author says of keeping, against what goes on raw or moist after the last heat, against soft cheese that is baked in, and against
/// garlic or herbs under oil. Two hours out of the fridge: source home-safety. Three to four days in it: common practice, from memory.
/// </summary>
internal static class KeptTooLong
{
    // Less soft cheese in a filling is a flavour, and the filling keeps as the bread does. Common practice, no source.
    private const double CheeseFilling = 0.25;

    // With less oil nothing lies under it, shut off from air. Common practice, no source.
    private const double UnderOilFromPercent = 30;

    private static readonly Duration OutOfTheFridge = Duration.FromHours(2);
    private static readonly Duration InTheFridge = Duration.FromHours(4 * 24);
    private static readonly string[] Frozen = ["frozen", "freeze", "freezer"];
    private static readonly string[] Cold = ["fridge", "refrigerator", "refrigerated", "chilled", "cold"];
    private static readonly string[] UnderOil = ["garlic", "herb", "herbs", "basil", "rosemary", "thyme", "oregano", "sage", "chilli", "chili", "wild garlic"];
    private static readonly string[] SoftCheeses = ["cream-cheese", "neufchatel", "ricotta-whole", "ricotta-part-skim", "cottage-cheese-creamed", "cottage-cheese-dry-curd"];

    public static IEnumerable<Finding> Check(Formula formula)
    {
        if (formula.Recipe.Keeping.Count == 0)
        {
            yield break;
        }

        var finishing = Finishing.Of(formula).Select(put => put.Part).DistinctBy(part => part.Id).ToArray();
        var spoils = formula.Components.Where(part => Spoils(part, formula, finishing.Contains(part))).ToArray();
        foreach (var advice in formula.Recipe.Keeping)
        {
            var words = advice.Words;
            if (Says(words, Frozen))
            {
                continue;
            }

            var isCold = Says(words, Cold);
            var most = isCold ? InTheFridge : OutOfTheFridge;

            // Without a time, "at room temperature" is as long as anybody likes, and "best on the day" is no advice to keep.
            if (advice.For is { } time ? time <= most : isCold || !Says(words, ["room"]))
            {
                continue;
            }

            var place = $"keeping.{Slug.Of(advice.Words)}";
            if ((Says(words, ["oil"]) && Says(words, UnderOil)) || finishing.Any(IsUnderOil))
            {
                yield return isCold
                    ? Report.Make("garlic-oil-kept-cold", Grade.Warning, place, advice.Position, ("keeping", advice.Words), ("most", most)) with { Safety = true }
                    : Report.Make("garlic-oil-kept-warm", Grade.Warning, place, advice.Position, ("keeping", advice.Words), ("most", most)) with { Safety = true };
            }

            if (spoils.Length > 0)
            {
                (string, object)[] arguments = [("keeping", advice.Words), ("parts", spoils.Select(part => part.Name).ToArray()), ("most", most)];
                yield return isCold
                    ? Report.Make("kept-cold-too-long", Grade.Warning, place, advice.Position, arguments) with { Safety = true }
                    : Report.Make("kept-warm-too-long", Grade.Warning, place, advice.Position, arguments) with { Safety = true };
            }
        }
    }

    private static bool Says(string text, string[] words) => Array.Exists(words, word => Phrase.Says(text, word));

    private static bool Spoils(ComponentFormula part, Formula formula, bool goesOnLast) => goesOnLast
        ? part.Lines.Any(EatenRaw.IsRawEgg) || (Perishable.IsMoist(part) && Perishable.Holds(part, formula))
        : part.Kind is ComponentKind.Filling or ComponentKind.Topping && part.Mass > Mass.Zero
            && part.Lines.Where(line => line.Ingredient is { } food && SoftCheeses.Contains(food.Id)).Sum(line => line.Mass.Grams) >= CheeseFilling * part.Mass.Grams;

    private static bool IsUnderOil(ComponentFormula part) =>
        part.Composition.Fat >= UnderOilFromPercent && part.Lines.Any(line => line.UsesComponent is null && Says(line.Name, UnderOil) && !IsDry(line));

    /// <summary>Without water nothing grows.</summary>
    private static bool IsDry(LineFormula line) => line.Composition.Water < 15 || line.Name.Contains("dried", StringComparison.OrdinalIgnoreCase);
}
