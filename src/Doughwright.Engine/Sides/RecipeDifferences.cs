using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>
/// What differs between two recipes as a baker compares them: shares of the flour, lines, temperatures, steps, make and tools, never lines of text. Parts,
/// lines and steps are the same where they have the same id.
/// </summary>
public static class RecipeDifferences
{
    /// <summary>All differences, in the order of the first recipe; what only the second has stands after what it follows there. None between a recipe and itself.</summary>
    /// <param name="larder">By which their formulas are worked out; each recipe's own ingredients are laid over it.</param>
    public static IReadOnlyList<RecipeDifference> Between(Recipe first, Recipe second, Larder larder) =>
        Between(Formula.Balance(first, larder), Formula.Balance(second, larder));

    /// <summary>The same of recipes whose formulas are known.</summary>
    public static IReadOnlyList<RecipeDifference> Between(Formula first, Formula second)
    {
        var (one, other) = (first.Recipe, second.Recipe);
        var whole = Of(WholeTraits.All, one, other).ToList();
        var make = whole.FindIndex(difference => difference.Aspect > Aspect.Scale);
        whole.InsertRange(make < 0 ? whole.Count : make, Amounts.Scale(first, second));
        return
        [
            .. whole.Where(difference => difference.Aspect != Aspect.Words),
            .. PartDifferences.Between(first, second),
            .. StepDifferences.Between(one, other),
            .. Items.All.SelectMany(items => items.Between(one, other)),
            .. whole.Where(difference => difference.Aspect == Aspect.Words),
        ];
    }

    /// <summary>
    /// A recipe with one thing taken over from another, what was typed included. Null where that cannot be done alone: a part that is still
    /// used, a step of a part that is not there.
    /// </summary>
    /// <param name="from">The recipe that is the first of the difference.</param>
    /// <param name="into">The second.</param>
    public static Recipe? Take(Recipe from, Recipe into, RecipeDifference difference) => Taking.Over(from, into, difference);

    internal static IEnumerable<RecipeDifference> Of<T>(IEnumerable<Trait<T>> traits, T first, T second) =>
        traits.Select(trait => trait.Between(first, second)).OfType<RecipeDifference>();

    /// <summary>Ids of both, in order: those of the second alone after the one that they follow there.</summary>
    internal static IReadOnlyList<string> Woven(IEnumerable<string> first, IEnumerable<string> second)
    {
        var ids = first.Distinct(StringComparer.Ordinal).ToList();
        var after = -1;
        foreach (var id in second)
        {
            var at = ids.IndexOf(id);
            if (at < 0)
            {
                at = after + 1;
                ids.Insert(at, id);
            }

            after = at;
        }

        return ids;
    }

    /// <summary>Whether what both have stands in the same order; null where it does, else the names in their orders.</summary>
    internal static RecipeDifference? OrderOf(Aspect aspect, IReadOnlyList<string> first, IReadOnlyList<string> second)
    {
        string[] one = [.. first.Where(second.Contains)];
        string[] other = [.. second.Where(first.Contains)];
        return one.SequenceEqual(other) ? null : new(aspect, one, other);
    }
}
