using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>
/// Water that a stand-in brings into a part without a liquid of its own is taken from the largest liquid of the parts it uses: fresh yeast goes
/// into a dough whose water stands in the scald.
/// </summary>
internal static class LiquidElsewhere
{
    public static IReadOnlyList<PartEdit> Held(Formula formula, IReadOnlyList<PartEdit> edits)
    {
        foreach (var edit in edits.Where(edit => edit.Component is { ShareInDough: > 0, Flour.Grams: > 0 } && !HasLiquid(edit.Component)).ToArray())
        {
            var scale = formula.Recipe.Home.Scale;
            if (More(edit) is not { } more || more < Math.Max(scale.Grams, PartSwap.WaterWorthALine * edit.Component.Flour.Grams))
            {
                continue;
            }

            var found = Used(formula, edit.Component, 1)
                .Where(at => at.Line is { Role: Role.Water or Role.Liquid, Source.Uses: null, Composition.Water: > 0, Mass.Grams: > 0 })
                .Where(at => edits.All(other => other.Component.Id != at.Component.Id || other.Lines.All(line => line.Line != at.Line.Source.Id)))
                .OrderByDescending(at => at.Line.Mass.Grams * at.Share)
                .FirstOrDefault();
            if (found.Line is not null)
            {
                edits = With(edits, found.Component, Less(found.Line, more / found.Share, scale));
            }
        }

        return edits;
    }

    private static LineEdit Less(LineFormula liquid, double water, Mass scale)
    {
        var (low, high) = (Correctors.Least * liquid.Mass.Grams, liquid.Mass.Grams);
        var left = Math.Max(low, high - (water / (liquid.Composition.Water!.Value / 100)));
        return new(liquid.Source.Id, ScaleStep.Within(Mass.FromGrams(left), low, high, scale), null);
    }

    private static IReadOnlyList<PartEdit> With(IReadOnlyList<PartEdit> edits, ComponentFormula component, LineEdit line) => edits.Any(edit => edit.Component.Id == component.Id)
        ? [.. edits.Select(edit => edit.Component.Id == component.Id ? edit with { Lines = [.. edit.Lines, line] } : edit)]
        : [.. edits, new(component, [line], Mass.Zero)];

    private static bool HasLiquid(ComponentFormula component) => component.Lines.Any(line => line is { Source.Uses: null, Role: Role.Water or Role.Liquid });

    /// <summary>Every line of the parts that go into this one and into no other, and how much of each gram there comes here.</summary>
    private static IEnumerable<(ComponentFormula Component, LineFormula Line, double Share)> Used(Formula formula, ComponentFormula component, double share)
    {
        foreach (var line in component.Lines)
        {
            if (line.UsesComponent is { } id && formula.FindComponent(id) is { Mass.Grams: > 0 } part && formula.Lines().Count(at => at.Line.UsesComponent == id) == 1)
            {
                var here = share * (line.Mass / part.Mass);
                foreach (var each in part.Lines.Select(inner => (part, inner, here)).Concat(Used(formula, part, here)))
                {
                    yield return each;
                }
            }
        }
    }

    /// <summary>Grams of water that a part holds more; null when it is not known. A flour's own moisture is no water.</summary>
    private static double? More(PartEdit edit)
    {
        double? more = edit.Water.Grams;
        foreach (var change in edit.Lines)
        {
            var before = edit.Component.Lines.First(line => line.Source.Id == change.Line);
            if (before.Role != Role.Flour)
            {
                var after = change.Swap is { By: { } by } ? by.Composition : before.Composition;
                more += ((change.Mass.Grams == 0 ? 0 : change.Mass.Grams * after.Water) - (before.Mass.Grams * before.Composition.Water)) / 100;
            }
        }

        return more;
    }
}
