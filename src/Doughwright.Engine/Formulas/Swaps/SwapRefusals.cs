using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What no swap may do, each with its reason.</summary>
internal static class SwapRefusals
{
    /// <summary>Of a dough, the most that may consist of things nobody knows.</summary>
    private const double MostUnknown = 0.02;

    private const double NextToNothing = 0.02;

    // As the desk shows names that are near.
    private const int MostNear = 3;
    private const double LeastLike = 0.3;

    /// <summary>What is the same in every part is said once.</summary>
    public static IEnumerable<Finding> Of(Formula formula, IReadOnlyList<PlannedSwap> plan)
    {
        var swaps = plan.Where(swap => swap.Manner != Manner.Same).ToArray();
        return
        [
            .. swaps.SelectMany(swap => Everywhere(formula.Larder, swap).OfType<Finding>()).DistinctBy(finding => (finding.Kind, IsOfStandIn(finding) ? "" : finding.Arguments["name"], finding.Arguments["by"])),
            .. swaps.SelectMany(swap => Here(formula, plan, swap).OfType<Finding>()),
        ];
    }

    /// <summary>What is not clear of a stand-in is not clear whatever it stands in for.</summary>
    private static bool IsOfStandIn(Finding finding) => finding.Kind.StartsWith("swap-stand-in-", StringComparison.Ordinal);

    /// <summary>What brings so little of what is missing that next to nothing of it would go in.</summary>
    public static IEnumerable<Finding> Nothing(IReadOnlyList<PartEdit> edits) => edits
        .SelectMany(edit => edit.Lines)
        .Where(change => change.Swap is { Manner: Manner.Solved } swap && change.Mass < swap.Line.Mass * NextToNothing)
        .Select(change => change.Swap!.About("swap-brings-nothing-of-it", Grade.Error));

    /// <summary>
    /// More of the dough, or of a touched part outside it, is unknown than a balance can bear. Of the same things the worst is said. A wash is brushed on as
    /// much as before and is no matter of balance.
    /// </summary>
    public static IEnumerable<Finding> Unknown(Formula before, Formula after, IReadOnlyList<PlannedSwap> plan)
    {
        var found = new List<(PlannedSwap Swap, string[] Names, double Share)>();
        foreach (var swap in plan.Where(swap => swap.Manner is not (Manner.Same or Manner.Flour) && swap.Component.Kind != ComponentKind.Wash).DistinctBy(swap => swap.Component.ShareInDough > 0 ? "" : swap.Component.Id))
        {
            var isDough = swap.Component.ShareInDough > 0;
            var scopes = new[] { before, after }.Select(formula => UnknownIn(formula, isDough ? null : swap.Component.Id)).ToArray();
            var (names, share) = scopes.MaxBy(scope => scope.Share);
            if (share > MostUnknown)
            {
                found.Add((swap, names, share));
            }
        }

        return found.OrderByDescending(each => each.Share)
            .DistinctBy(each => string.Join('\n', each.Names.Order(StringComparer.Ordinal)))
            .Select(each => each.Swap.About("swap-composition-not-known", Grade.Error, ("names", each.Names), ("share", Percent.FromFraction(each.Share))));
    }

    private static (string[] Names, double Share) UnknownIn(Formula formula, string? component)
    {
        var (all, unknown) = (0.0, 0.0);
        var names = new List<string>();
        foreach (var (part, line) in formula.Lines().Where(at => at.Line.Source.Uses is null && (component is null ? at.Component.ShareInDough > 0 : at.Component.Id == component)))
        {
            var grams = line.Mass.Grams * (component is null ? part.ShareInDough : 1);
            all += grams;
            // A flour is held, so that its sugar alone may be blank.
            if (line.Composition is { Water: null } or { Fat: null } || (line.Composition.Sugars is null && line.Role != Role.Flour))
            {
                unknown += grams;
                names.Add(line.Name);
            }
        }

        return ([.. names.Distinct()], all > 0 ? unknown / all : 0);
    }

    private static IEnumerable<Finding?> Everywhere(Larder larder, PlannedSwap swap)
    {
        yield return NotClear(larder, swap);
        yield return swap.By is { Ingredient: null } ? null : Held(swap);
    }

    private static IEnumerable<Finding?> Here(Formula formula, IReadOnlyList<PlannedSwap> plan, PlannedSwap swap)
    {
        yield return Sets(swap);
        yield return Emptied(formula, plan, swap);
        yield return swap.By is { } by && Slug.Of(by.Name) is var id && id != swap.Component.Id && formula.FindComponent(id) is not null
            ? swap.About("swap-name-is-part", Grade.Error)
            : null;
    }

    private static Finding? NotClear(Larder larder, PlannedSwap swap) => swap.By switch
    {
        { Match.Kind: MatchKind.NotClear or MatchKind.RawOrCookedNotSaid } by =>
            swap.About("swap-stand-in-not-clear", Grade.Error, ("candidates", by.Match.Candidates.Select(row => row.Name).ToArray())),
        { Match.Kind: MatchKind.Unknown } by => Near(larder, by.Name) is { Length: > 0 } near
            ? swap.About("swap-stand-in-not-known", Grade.Error, ("nearest", near))
            : swap.About("swap-stand-in-not-known-at-all", Grade.Error),
        _ => null,
    };

    /// <summary>Names a person may have meant, for that person to choose from.</summary>
    private static string[] Near(Larder larder, string name) =>
        [.. larder.Search(name, most: MostNear).Where(hit => hit.Likeness >= LeastLike).Select(hit => hit.Name).Distinct()];

    /// <summary>Flour, salt, yeast and what else raises make the dough what it is: only their like can stand in.</summary>
    private static Finding? Held(PlannedSwap swap)
    {
        var (was, becomes) = (swap.Line.Role, swap.By?.Ingredient?.Role);
        bool Breaks(Role role) => was == role != (becomes == role);
        return Breaks(Role.Flour) ? swap.About("swap-flour-held", Grade.Error)
            : Breaks(Role.Salt) ? swap.About("swap-salt-held", Grade.Error)
            : Breaks(Role.Yeast) || (was == Role.Yeast && swap.Manner != Manner.Yeast) ? swap.About("swap-yeast-held", Grade.Error)
            : swap.By is not null && was != Role.Flour && Raising(swap.Line.Ingredient) != Raising(swap.By.Ingredient) ? swap.About("swap-raising-held", Grade.Error)
            : null;
    }

    /// <summary>A filling or an icing stands because its fat is firm when cold.</summary>
    private static Finding? Sets(PlannedSwap swap)
    {
        if (swap.Component.Kind is not (ComponentKind.Filling or ComponentKind.Icing)
            || !Traits.Of(swap.Line.Ingredient).Contains(Trait.SetsCold)
            || Traits.Of(swap.By?.Ingredient).Contains(Trait.SetsCold))
        {
            return null;
        }

        return swap.Component.Kind == ComponentKind.Icing
            ? swap.About("swap-icing-stands-by-fat", Grade.Error)
            : swap.About("swap-filling-stands-by-fat", Grade.Error);
    }

    /// <summary>How something raises: soda several times as strongly as baking powder, and only with something sour.</summary>
    private static (bool Raises, bool NeedsAcid) Raising(Ingredient? ingredient)
    {
        var traits = Traits.Of(ingredient);
        return (traits.Contains(Trait.Raises), traits.Contains(Trait.NeedsAcid));
    }

    private static Finding? Emptied(Formula formula, IReadOnlyList<PlannedSwap> plan, PlannedSwap swap)
    {
        var gone = plan.Where(other => other.Component.Id == swap.Component.Id && other.By is null).Select(other => other.Line.Source.Id);
        var isNeeded = formula.Recipe.FindComponent(swap.Component.Id) is { BelongsToDough: true }
            || formula.Lines().Any(at => at.Line.UsesComponent == swap.Component.Id);
        return swap.By is null && isNeeded && !swap.Component.Lines.Select(line => line.Source.Id).Except(gone).Any()
            ? swap.About("swap-empties-part", Grade.Error)
            : null;
    }
}
