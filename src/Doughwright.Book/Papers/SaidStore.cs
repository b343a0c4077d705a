using Dapper;
using Doughwright.Book.Opening;
using Microsoft.Data.Sqlite;

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

/// <summary>Something that is said anew.</summary>
/// <param name="Shown">What was said before, as far as whoever says it knows; empty for nothing.</param>
/// <param name="Value">What is said now; empty takes back what was said.</param>
public sealed record SaidAnew(Saying What, string Shown, string Value);

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

    /// <summary>Says several things of a paper at once: all of them, or nothing where one of them was said otherwise meanwhile.</summary>
    /// <returns>What was said meanwhile, neither what was shown nor what is said now; nothing when all is written. Null when there is no such paper.</returns>
    public IReadOnlyList<(Saying What, string Now)>? Say(PaperSort sort, string paper, IReadOnlyList<SaidAnew> anew) => file.Write<IReadOnlyList<(Saying What, string Now)>?>(open =>
    {
        if (open.ExecuteScalar<long?>("SELECT id FROM paper WHERE sort = @sort AND name = @paper", new { sort = PaperStore.Word(sort), paper }) is not { } id)
        {
            return null;
        }

        var said = anew.Select(one => (One: one, Now: open.ExecuteScalar<string?>(
            "SELECT value FROM said WHERE paper = @id AND what = @what ORDER BY id DESC LIMIT 1", new { id, what = Word(one.What) }) ?? "")).ToArray();
        if (said.Where(each => each.Now != each.One.Shown && each.Now != each.One.Value).Select(each => (each.One.What, each.Now)).ToArray() is { Length: > 0 } meanwhile)
        {
            return meanwhile;
        }

        foreach (var (one, now) in said)
        {
            if (now != one.Value)
            {
                Write(open, id, one.What, one.Value, clock);
            }
        }

        return [];
    });

    /// <summary>Writes a word down within what is being written.</summary>
    internal static void Write(SqliteConnection open, long paper, Saying what, string value, TimeProvider clock) => open.Execute(
        "INSERT INTO said (paper, at, what, value) VALUES (@paper, @at, @what, @value)", new { paper, at = Instants.Write(clock.GetUtcNow()), what = Word(what), value });

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
