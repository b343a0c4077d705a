using Doughwright.Engine.Ingredients;
using Quickenshtein;

namespace Doughwright.Bench;

/// <summary>The names of the larder, looked through by plain edit distance: what a general library offers for the same question.</summary>
internal static class LarderNames
{
    private static readonly (string Name, string Id)[] Names =
        [.. Tsv.Read(Tsv.Embedded("names.tsv")).Rows.Select(row => (row["name"].ToLowerInvariant(), row["id"]))];

    /// <summary>A hundred phrases as people write them, with the row that each means: tests/data/larder-phrases.tsv.</summary>
    public static IReadOnlyList<(string Phrase, string Id)> Phrases { get; } = Read("larder-phrases.tsv");

    /// <summary>Phrases that neither the names nor the search were made for: tests/data/larder-phrases-later.tsv.</summary>
    public static IReadOnlyList<(string Phrase, string Id)> Later { get; } = Read("larder-phrases-later.tsv");

    /// <summary>The rows whose names are nearest to a phrase by edit distance, the nearest first.</summary>
    public static IReadOnlyList<string> Nearest(string phrase, int most)
    {
        var wanted = phrase.ToLowerInvariant();
        return [.. Names.Select(name => (name.Id, Distance: Levenshtein.GetDistance(wanted, name.Name))).OrderBy(each => each.Distance).Select(each => each.Id).Distinct().Take(most)];
    }

    private static IReadOnlyList<(string Phrase, string Id)> Read(string table)
    {
        using var reader = new StreamReader(typeof(LarderNames).Assembly.GetManifestResourceStream(table)!);
        return [.. Tsv.Read(reader.ReadToEnd()).Rows.Select(row => (row["phrase"], row["id"]))];
    }
}
