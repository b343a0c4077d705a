using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Sides;

/// <summary>How much there is of a line in two recipes. Bakers compare by the flour: a line that goes with it is the same.</summary>
internal static class Amounts
{
    private const double Same = 1e-9;

    /// <summary>The difference in how much there is of a line; null where there is none to tell.</summary>
    public static RecipeDifference? Of(Formula first, LineFormula one, Formula second, LineFormula other)
    {
        // All of a part is as much as its own lines come to.
        if (one.Source is { Uses: not null, Mass: null } && other.Source is { Uses: not null, Mass: null })
        {
            return one.Source.Typed == other.Source.Typed ? null : new(Aspect.Typed, one.Source.Typed, other.Source.Typed);
        }

        if (one.Source.Mass is null != other.Source.Mass is null || !GoTogether(first, one, second, other))
        {
            return new(Aspect.Amount, LineAmount.Of(one), LineAmount.Of(other));
        }

        return one.Source.Mass == other.Source.Mass && (one.Source.Typed, one.Source.Household) != (other.Source.Typed, other.Source.Household)
            ? new(Aspect.Typed, one.Source.Typed, other.Source.Typed)
            : null;
    }

    /// <summary>All weights by one factor, where lines that stand in both keep their shares and weigh otherwise.</summary>
    public static IEnumerable<RecipeDifference> Scale(Formula first, Formula second)
    {
        var pairs = Pairs(first, second).Where(pair => pair.First.Source.Mass is not null && pair.Second.Source.Mass is not null).ToList();
        var scaled = pairs.Where(pair => Of(first, pair.First, second, pair.Second)?.Aspect != Aspect.Amount && !Close(pair.First.Mass.Grams, pair.Second.Mass.Grams));
        if (scaled.Any())
        {
            yield return new(Aspect.Scale, Weight(first), Weight(second));
        }
    }

    /// <summary>Lines that stand in both.</summary>
    public static IEnumerable<(LineFormula First, LineFormula Second)> Pairs(Formula first, Formula second) =>
        from part in first.Components
        from line in part.Lines
        let other = second.FindComponent(part.Id)?.Lines.FirstOrDefault(other => other.Id == line.Id)
        where other is not null
        select (line, other);

    /// <summary>Whether a line weighs as much on all flour in both. In another size it is weighed on a scale again, so half a step of that does not count.</summary>
    private static bool GoTogether(Formula first, LineFormula one, Formula second, LineFormula other)
    {
        var (flour, changed) = (first.Flour.Grams, second.Flour.Grams);
        if (flour <= 0 || changed <= 0)
        {
            return Close(one.Mass.Grams, other.Mass.Grams);
        }

        var (share, now) = (one.Mass.Grams / flour, other.Mass.Grams / changed);
        var step = first.Recipe.Home.Scale.Grams / flour + second.Recipe.Home.Scale.Grams / changed;
        return Close(share, now) || (!Close(flour, changed) && Math.Abs(share - now) <= step / 2);
    }

    private static Mass Weight(Formula formula) =>
        formula.Dough.Grams > 0 ? formula.Dough : Mass.FromGrams(formula.Components.Sum(part => part.Mass.Grams));

    private static bool Close(double one, double other) => Math.Abs(one - other) <= Same * Math.Max(Math.Abs(one), Math.Abs(other));
}
