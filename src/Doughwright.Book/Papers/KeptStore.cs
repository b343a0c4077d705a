using Dapper;
using Doughwright.Book.Opening;

namespace Doughwright.Book.Papers;

/// <summary>States that were kept under a name.</summary>
public sealed class KeptStore
{
    private readonly BookFile file;
    private readonly TimeProvider clock;

    internal KeptStore(BookFile file, TimeProvider clock) => (this.file, this.clock) = (file, clock);

    /// <summary>Keeps the state that a paper is in.</summary>
    /// <param name="standing">How the paper stands from then on, said in the same go; null says nothing of it.</param>
    /// <returns>The keeping; null when there is no such paper, or it is in another state by now.</returns>
    public KeptState? Keep(PaperSort sort, string paper, long state, string name, string note, bool published = false, string? standing = null)
    {
        var id = file.Write(open =>
        {
            var kept = open.ExecuteScalar<long?>(
                """
                INSERT INTO kept (state, at, name, note, published)
                SELECT now, @at, @name, @note, @published FROM paper WHERE sort = @sort AND name = @paper AND now = @state AND taken_away IS NULL
                RETURNING id
                """,
                new { at = Instants.Write(clock.GetUtcNow()), name, note, published = published ? 1 : 0, sort = PaperStore.Word(sort), paper, state });
            if (kept is not null && standing is not null)
            {
                SaidStore.Write(open, open.ExecuteScalar<long>("SELECT paper FROM state WHERE id = @state", new { state }), Saying.Standing, standing, clock);
            }

            return kept;
        });
        return id is { } made ? All(sort, paper).Single(kept => kept.Id == made) : null;
    }

    /// <summary>All that were kept of a paper, the latest first.</summary>
    public IReadOnlyList<KeptState> All(PaperSort sort, string paper) => file.Use(open => open
        .Query<Row>(
            """
            SELECT kept.id AS Id, kept.state AS State, state.hash AS Hash, kept.at AS At, kept.name AS Name, kept.note AS Note, kept.published AS Published
            FROM kept JOIN state ON state.id = kept.state JOIN paper ON paper.id = state.paper
            WHERE paper.sort = @sort AND paper.name = @paper ORDER BY kept.id DESC
            """,
            new { sort = PaperStore.Word(sort), paper })
        .Select(row => new KeptState(row.Id, row.State, row.Hash, Instants.Read(row.At), row.Name, row.Note, row.Published != 0))
        .ToArray());

    private sealed record Row(long Id, long State, string Hash, string At, string Name, string Note, long Published);
}
