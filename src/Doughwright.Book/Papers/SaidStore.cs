using Dapper;
using Doughwright.Book.Opening;

namespace Doughwright.Book.Papers;

/// <summary>What an author says of a paper beside its text.</summary>
public enum Saying
{
    /// <summary>idea, trying, right or published.</summary>
    Standing,

    /// <summary>A day on which it was baked, as yyyy-MM-dd.</summary>
    Baked,

    Family,

    Season,
}

/// <summary>What is said of papers. The last word of each sort holds; the earlier ones stay.</summary>
public sealed class SaidStore
{
    private readonly BookFile file;
    private readonly TimeProvider clock;

    internal SaidStore(BookFile file, TimeProvider clock) => (this.file, this.clock) = (file, clock);

    /// <summary>Says something of a paper; an empty value takes back what was said.</summary>
    /// <returns>Whether there is such a paper.</returns>
    public bool Say(PaperSort sort, string paper, Saying what, string value) => file.Write(open => open.Execute(
        "INSERT INTO said (paper, at, what, value) SELECT id, @at, @what, @value FROM paper WHERE sort = @sort AND name = @paper",
        new { at = Instants.Write(clock.GetUtcNow()), what = Word(what), value, sort = PaperStore.Word(sort), paper }) == 1);

    /// <summary>The last word on each paper of a sort, by the paper's name. What was taken back is left out.</summary>
    public IReadOnlyDictionary<string, IReadOnlyDictionary<Saying, string>> All(PaperSort sort) => file.Use(open => open
        .Query<Row>(
            """
            SELECT paper.name AS Name, said.what AS What, said.value AS Value FROM said JOIN paper ON paper.id = said.paper
            WHERE paper.sort = @sort AND said.id IN (SELECT max(id) FROM said GROUP BY paper, what) AND said.value <> ''
            """,
            new { sort = PaperStore.Word(sort) })
        .GroupBy(row => row.Name, StringComparer.Ordinal)
        .ToDictionary(
            rows => rows.Key,
            rows => (IReadOnlyDictionary<Saying, string>)rows.ToDictionary(row => Enum.Parse<Saying>(row.What, ignoreCase: true), row => row.Value),
            StringComparer.Ordinal));

    private static string Word(Saying what) => what.ToString().ToLowerInvariant();

    private sealed record Row(string Name, string What, string Value);
}
