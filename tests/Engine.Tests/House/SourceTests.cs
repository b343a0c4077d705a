using System.Text.Json;
using System.Text.RegularExpressions;

namespace Doughwright.Engine.Tests.House;

/// <summary>What an equation or table rests on is listed in Sources, and everything listed is used.</summary>
public partial class SourceTests
{
    private static readonly string[] Marks = ["read", "from memory", "common practice, no source"];
    private static readonly string[] Fields = ["id", "authors", "title", "year", "where", "use", "mark"];
    private static readonly IReadOnlyList<JsonElement> Entries = [.. ReadEntries()];
    private static readonly HashSet<string> Ids = [.. Entries.Select(IdOf)];

    [Fact]
    public void Ids_AreWordsAndUnique()
    {
        Assert.Equal(Ids.Count, Entries.Count);
        Assert.All(Ids, id => Assert.Matches("^[a-z0-9.]+(-[a-z0-9.]+)*$", id));
    }

    [Fact]
    public void Entries_SayAllThereIsToSay_WithAnHonestMark() => Assert.All(Entries, entry =>
    {
        Assert.Equal(Fields, entry.EnumerateObject().Select(field => field.Name));
        Assert.Contains(entry.GetProperty("mark").GetString(), Marks);
        Assert.All(["title", "where", "use"], field => Assert.False(string.IsNullOrWhiteSpace(entry.GetProperty(field).GetString()), IdOf(entry)));
        Assert.True(entry.GetProperty("year").ValueKind is JsonValueKind.Number or JsonValueKind.Null, IdOf(entry));
    });

    [Fact]
    public void EveryCitation_IsListed()
    {
        var unlisted = Cited().Where(citation => !Ids.Contains(citation.Id)).Distinct().ToList();
        Assert.Empty(unlisted);
    }

    [Fact]
    public void EveryEntry_IsCited() => Assert.Empty(Ids.Except(Cited().Select(citation => citation.Id)));

    private static IEnumerable<(string Id, string File)> Cited() =>
        from file in Directory.EnumerateFiles(Tree.PathTo("src", "Doughwright.Engine"), "*.*", SearchOption.AllDirectories)
        where (file.EndsWith(".cs", StringComparison.Ordinal) && !file.Contains("/obj/", StringComparison.Ordinal)) || file.EndsWith(".tsv", StringComparison.Ordinal)
        from id in file.EndsWith(".tsv", StringComparison.Ordinal) ? CitedInTable(File.ReadAllLines(file)) : CitedInCode(File.ReadAllText(file))
        select (id, Path.GetFileName(file));

    private static IEnumerable<string> CitedInCode(string code)
    {
        var comments = CommentStart().Replace(code, " ");
        var inComments = Citation().Matches(comments).SelectMany(match => Parenthesis().Replace(match.Groups["ids"].Value, "").Split(',', StringSplitOptions.TrimEntries));
        return inComments.Concat(Named().Matches(code).Select(match => match.Groups["id"].Value));
    }

    private static IEnumerable<string> CitedInTable(string[] lines)
    {
        var rows = lines.Where(line => line.Length > 0 && line[0] != '#').Select(line => line.Split('\t')).ToList();
        var column = Array.IndexOf(rows[0], "source");
        return column < 0 ? [] : rows.Skip(1).Select(row => row[column]).Where(id => id.Length > 0);
    }

    private static string IdOf(JsonElement entry) => entry.GetProperty("id").GetString()!;

    private static IEnumerable<JsonElement> ReadEntries()
    {
        foreach (var file in Directory.EnumerateFiles(Tree.PathTo("src", "Doughwright.Engine", "Sources"), "*.json"))
        {
            using var document = JsonDocument.Parse(File.ReadAllText(file));
            foreach (var entry in document.RootElement.EnumerateArray())
            {
                yield return entry.Clone();
            }
        }
    }

    [GeneratedRegex(@"\n\s*///?")]
    private static partial Regex CommentStart();

    // "Source: one-id, another-id (what of it is meant)." up to the end of the sentence or of the tag.
    [GeneratedRegex(@"Sources?:\s+(?<ids>[a-z0-9]+(?:[.-][a-z0-9]+)*(?:\s*\([^)]*\))?(?:,\s*[a-z0-9]+(?:[.-][a-z0-9]+)*(?:\s*\([^)]*\))?)*)")]
    private static partial Regex Citation();

    [GeneratedRegex(@"\([^)]*\)")]
    private static partial Regex Parenthesis();

    [GeneratedRegex("""(?:source: |PriorLaw\.\w+, |Source = )"(?<id>[^"]+)\x22""")]
    private static partial Regex Named();
}
