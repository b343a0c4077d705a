using BenchmarkDotNet.Attributes;
using Doughwright.Engine.Ingredients;

namespace Doughwright.Bench;

/// <summary>A hundred phrases looked for in the larder, beside the edit distance of Quickenshtein over the same names.</summary>
[BenchmarkCategory("larder")]
public class LarderProbe
{
    [Benchmark(Baseline = true, Description = "a hundred phrases, edit distance to every name")]
    public int Distance() => LarderNames.Phrases.Sum(each => LarderNames.Nearest(each.Phrase, 10).Count);

    [Benchmark(Description = "a hundred phrases, search of the larder")]
    public int Search() => LarderNames.Phrases.Sum(each => Larder.Shipped.Search(each.Phrase).Count);

    /// <summary>How often the first hit is the row that was meant, of each.</summary>
    public static int TellHits()
    {
        Tell("first hit right", LarderNames.Phrases);
        Tell("of phrases that neither was made for", LarderNames.Later);
        return 0;
    }

    private static void Tell(string what, IReadOnlyList<(string Phrase, string Id)> all)
    {
        var (search, distance) = (all.Count(each => Larder.Shipped.Search(each.Phrase, most: 1) is [var hit] && hit.Ingredient.Id == each.Id),
            all.Count(each => LarderNames.Nearest(each.Phrase, 1) is [var hit] && hit == each.Id));
        Console.WriteLine(FormattableString.Invariant($"{what}, of {all.Count}: search of the larder {search}, edit distance {distance}"));
    }
}
