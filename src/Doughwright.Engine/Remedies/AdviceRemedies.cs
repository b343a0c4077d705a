using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Remedies;

/// <summary>Entries about what is not in the recipe go.</summary>
internal static class AdviceRemedies
{
    public static IEnumerable<KeyValuePair<string, Func<Found, IEnumerable<Remedy>>>> All =>
    [
        new("swap-of-nothing", found => Drop(found, "swaps")),
        new("without-of-nothing", found => Drop(found, "without")),
    ];

    private static IEnumerable<Remedy> Drop(Found found, string section)
    {
        if (found.Word("what") is { } what)
        {
            yield return found.Remedy(
                Verbs.DropEntry,
                recipe => section == "swaps"
                    ? recipe with { Swaps = [.. recipe.Swaps.Where(swap => swap.What != what || swap.By != found.Word("by") || (swap.Part ?? "") != (found.Word("part") ?? ""))] }
                    : recipe with { Without = [.. recipe.Without.Where(entry => Slug.Of(entry.What) != Slug.Of(what))] },
                ("what", what),
                ("section", section));
        }
    }
}
