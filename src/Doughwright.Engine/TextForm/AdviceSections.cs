using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>What a recipe says beside its method: what to do without something, which swaps its author allows, how it keeps.</summary>
internal static class AdviceSections
{
    public static IReadOnlyList<Without> Without(TextMapping? mapping, string place, FindingLog log)
    {
        var read = new List<Without>();
        var taken = new Dictionary<string, Position>();
        foreach (var entry in mapping?.Entries ?? [])
        {
            var isFirst = IdCheck.Take(entry, taken, place, log);
            if (Section.ProseOf(entry, $"{place}.{Slug.Of(entry.Key)}", log) is { } words && isFirst)
            {
                read.Add(new(entry.Key, words, entry.KeyPosition));
            }
        }

        return read;
    }

    public static IReadOnlyList<AllowedSwap> Swaps(Section root, string key, PartsSection parts) =>
        [.. root.Lines(key).Select(words => SwapGrammar.Read(words, parts)).OfType<AllowedSwap>()];

    public static IReadOnlyList<KeepingAdvice> Keeping(Section root, string key) =>
        [.. root.Lines(key).Select(KeepingGrammar.Read).OfType<KeepingAdvice>()];

    public static TextMapping Write(IReadOnlyList<Without> without)
    {
        var mapping = new TreeBuilder();
        foreach (var one in without)
        {
            mapping.Prose(one.What, one.Words);
        }

        return mapping.Mapping;
    }
}
