using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>
/// What a swap changed in all, summed over the lines that changed, so that something unknown elsewhere does not hide it. The flour's own moisture
/// is no water, as everywhere.
/// </summary>
internal static class SwapResiduals
{
    public static IReadOnlyList<SwapResidual> Of(Formula before, Formula after, IReadOnlyList<PlannedSwap> plan)
    {
        var touched = plan.Select(swap => swap.Component).DistinctBy(component => component.Id).ToArray();
        var outside = touched.Where(component => component.ShareInDough == 0).Select(component => component.Id);
        string?[] scopes = [.. touched.Any(component => component.ShareInDough > 0) ? [null] : Array.Empty<string?>(), .. outside];
        return [.. scopes.Select(scope => Of(before, after, scope))];
    }

    /// <summary>What the percentages of a part outside the dough are of: the line its author names, else all its flour, else its largest line.</summary>
    public static Mass BasisOf(Formula formula, ComponentFormula part) =>
        part.Flour > Mass.Zero && formula.Recipe.FindComponent(part.Id)?.Base is null ? part.Flour : part.Base;

    private static SwapResidual Of(Formula before, Formula after, string? component)
    {
        var part = component is null ? null : before.FindComponent(component)!;
        var basis = part is null ? before.Flour : BasisOf(before, part);
        var (was, now) = (LinesOf(before, component), LinesOf(after, component));
        var keys = was.Keys.Union(now.Keys).Where(key => !was.TryGetValue(key, out var a) || !now.TryGetValue(key, out var b) || a != b).ToArray();
        Percent? Change(Func<Composition, bool, double?> per100)
        {
            double? Sum(Dictionary<(string, string), Weighed> lines) => keys.Where(lines.ContainsKey)
                .Aggregate((double?)0, (sum, key) => sum + (lines[key].Grams == 0 ? 0 : lines[key].Grams * per100(lines[key].Composition, lines[key].IsFlour) / 100));
            return basis > Mass.Zero && Sum(now) - Sum(was) is { } grams ? Percent.Of(Mass.FromGrams(grams), basis) : null;
        }

        return new(
            component,
            Change((composition, isFlour) => isFlour ? 0 : composition.Water),
            Change((composition, _) => composition.Sugars),
            Change((composition, _) => composition.Fat),
            Change((composition, _) => composition.Salt));
    }

    /// <summary>Every ingredient of the dough, as far as it goes into it, or of one part outside.</summary>
    private static Dictionary<(string Component, string Line), Weighed> LinesOf(Formula formula, string? component)
    {
        var lines = new Dictionary<(string, string), Weighed>();
        foreach (var (part, line) in formula.Lines().Where(at => at.Line.Source.Uses is null && (component is null
            ? at.Component.ShareInDough > 0 && at.Line.Role != Role.Topping
            : at.Component.Id == component)))
        {
            lines.TryAdd((part.Id, line.Source.Id), new(line.Mass.Grams * (component is null ? part.ShareInDough : 1), line.Composition, line.Role == Role.Flour));
        }

        return lines;
    }

    private readonly record struct Weighed(double Grams, Composition Composition, bool IsFlour);
}
