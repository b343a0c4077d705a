using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Editing;

/// <summary>The sizes that a thing is counted in: of eggs "US large", "European medium" and others.</summary>
internal static class LineSizes
{
    private static readonly string[] Words = ["small", "medium", "large", "jumbo"];

    /// <summary>As they can be written; only those of the region where one is said. Empty where one of it is one of it.</summary>
    public static IReadOnlyList<string> Of(Larder larder, Ingredient ingredient, Region? region) =>
    [
        .. larder.MeasuresOf(ingredient)
            .Where(measure => region is not { } here || measure.Regions.Count == 0 || measure.Regions.Contains(here))
            .Select(measure => measure.Unit)
            .Where(unit => Words.Any(word => unit == word || unit.EndsWith(" " + word, StringComparison.Ordinal)))
            .Distinct(),
    ];

    public static string Example(IReadOnlyList<string> sizes) => sizes.FirstOrDefault(size => size == Words[2] || size.EndsWith(" " + Words[2], StringComparison.Ordinal)) ?? sizes[0];
}
