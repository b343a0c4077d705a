using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>Lists whose items go by a name: tools, own ingredients, advice, photos. In which order they stand does not matter to a baker.</summary>
/// <param name="Named">The items by name; what a name stands for is compared.</param>
/// <param name="Take">From the first into the second, the items of one name.</param>
internal sealed record Items(Aspect Aspect, Func<Recipe, IEnumerable<(string Name, object Value)>> Named, Func<Recipe, Recipe, string, Recipe> Take)
{
    /// <summary>Photos of the whole. They go by their bytes, so that other words for the same photo are no other photo.</summary>
    public static Items Photos { get; } = Of(Aspect.Photo, recipe => recipe.Photos, photo => photo.Name, photo => photo.Words, (recipe, all) => recipe with { Photos = all });

    public static IReadOnlyList<Items> All { get; } =
    [
        Photos,
        new(Aspect.Tool, recipe => (recipe.Tools ?? []).Select(tool => (tool, (object)tool)), TakeTools),
        Of(Aspect.Own, recipe => recipe.Own, own => own.Name, own => own, (recipe, all) => recipe with { Own = all }),
        Of(Aspect.Without, recipe => recipe.Without, one => one.What, one => one.Words, (recipe, all) => recipe with { Without = all }),
        Of(Aspect.Swap, recipe => recipe.Swaps, NameOf, swap => new[] { swap.Tried, swap.Words }, (recipe, all) => recipe with { Swaps = all }),
        Of(Aspect.Keeping, recipe => recipe.Keeping, keeping => keeping.Words, keeping => (object?)keeping.For ?? "", (recipe, all) => recipe with { Keeping = all }),
        Of(Aspect.Accepted, recipe => recipe.Accepted, one => one.FindingId, one => (one.Reason, one.PlaceMark), (recipe, all) => recipe with { Accepted = all }),
    ];

    public IEnumerable<RecipeDifference> Between(Recipe first, Recipe second)
    {
        var (one, other) = (ByName(first), ByName(second));
        foreach (var name in one.Keys.Concat(other.Keys).Distinct())
        {
            var (before, after) = (one.GetValueOrDefault(name, []), other.GetValueOrDefault(name, []));
            if (!Alikeness.Of(before, after))
            {
                yield return new(Aspect, Told(before), Told(after)) { Item = name };
            }
        }
    }

    /// <summary>What differs in the photos of one step, told as those of a whole are.</summary>
    public static IEnumerable<RecipeDifference> PhotosBetween(Step first, Step second, Recipe one, Recipe other) =>
        Photos.Between(one with { Photos = first.Photos }, other with { Photos = second.Photos });

    /// <summary>The photos of a step with those of one name taken over. The other ways of the step show them, too.</summary>
    public static Step TakePhoto(Step from, Step into, Recipe whole, string name)
    {
        var photos = Photos.Take(whole with { Photos = from.Photos }, whole with { Photos = into.Photos }, name).Photos;
        return into with { Photos = photos, Variants = [.. into.Variants.Select(variant => variant with { Step = variant.Step with { Photos = photos } })] };
    }

    private Dictionary<string, object[]> ByName(Recipe recipe) =>
        Named(recipe).GroupBy(item => item.Name, StringComparer.Ordinal).ToDictionary(items => items.Key, items => items.Select(item => item.Value).ToArray(), StringComparer.Ordinal);

    private static object? Told(object[] values) => values.Length == 0 ? null : values[0];

    private static Items Of<T>(Aspect aspect, Func<Recipe, IReadOnlyList<T>> list, Func<T, string> name, Func<T, object> value, Func<Recipe, IReadOnlyList<T>, Recipe> with) => new(
        aspect,
        recipe => list(recipe).Select(item => (name(item), value(item))),
        (from, into, item) => with(into, Merged(list(from), list(into), one => name(one) == item)));

    private static Recipe TakeTools(Recipe from, Recipe into, string name)
    {
        var tools = Merged(from.Tools ?? [], into.Tools ?? [], tool => tool == name);
        return into with { Tools = tools.Count == 0 && from.Tools is null ? null : tools };
    }

    /// <summary>The items meant go, and those of the other list come after the one that they follow there.</summary>
    private static IReadOnlyList<T> Merged<T>(IReadOnlyList<T> from, IReadOnlyList<T> into, Func<T, bool> meant)
    {
        var merged = into.Where(item => !meant(item)).ToList();
        foreach (var (item, index) in from.Select((item, index) => (item, index)).Where(pair => meant(pair.item)))
        {
            merged.Insert(Math.Min(index, merged.Count), item);
        }

        return merged;
    }

    private static string NameOf(AllowedSwap swap) => string.Join('\n', swap.What, swap.By, swap.Part);
}
