namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What is bought more, less, newly or no longer.</summary>
internal static class BuyChanges
{
    public static IReadOnlyList<BuyChange> Of(Formula before, Formula after)
    {
        var (was, now) = (before.Buy.ToDictionary(Key), after.Buy.ToDictionary(Key));
        return
        [
            .. was.Keys.Union(now.Keys)
                .Select(key => (Was: was.GetValueOrDefault(key), Now: now.GetValueOrDefault(key)))
                .Where(pair => pair.Was?.Used != pair.Now?.Used)
                .Select(pair => new BuyChange((pair.Now ?? pair.Was)!.Name, (pair.Now ?? pair.Was)!.Ingredient?.Id, pair.Was?.Used, pair.Now?.Used)),
        ];
    }

    /// <summary>An ingredient may be bought under two names, such as salt and flaky salt.</summary>
    private static (string? Ingredient, string Name) Key(BuyItem item) => (item.Ingredient?.Id, item.Name);
}
