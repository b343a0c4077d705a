using Dapper;
using Doughwright.Book.Opening;

namespace Doughwright.Book.Papers;

/// <summary>
/// What is put right of a published state after readers have it. The state itself stays as it is; each correction names a place that it must go to, and
/// is marked when it is there.
/// </summary>
public sealed class CorrectionStore
{
    private readonly BookFile file;
    private readonly TimeProvider clock;

    internal CorrectionStore(BookFile file, TimeProvider clock) => (this.file, this.clock) = (file, clock);

    /// <summary>Notes a correction.</summary>
    /// <param name="kept">The keeping that was published.</param>
    /// <param name="text">What is put right.</param>
    /// <param name="place">Where it must go.</param>
    /// <returns>Whether there is such a keeping, and it is published.</returns>
    public bool Add(long kept, string text, string place) => file.Write(open => open.Execute(
        "INSERT INTO correction (kept, at, text, place) SELECT id, @at, @text, @place FROM kept WHERE id = @kept AND published = 1",
        new { at = Instants.Write(clock.GetUtcNow()), text, place, kept }) == 1);

    /// <summary>Marks a correction as made at its place.</summary>
    /// <returns>Whether there is one that was not made yet.</returns>
    public bool Make(long id) => file.Write(open =>
        open.Execute("UPDATE correction SET done = @at WHERE id = @id AND done IS NULL", new { at = Instants.Write(clock.GetUtcNow()), id }) == 1);

    /// <summary>All of a paper, in the order in which they were noted.</summary>
    public IReadOnlyList<Correction> All(PaperSort sort, string paper) => file.Use(open => open
        .Query<Row>(
            """
            SELECT correction.id AS Id, correction.kept AS Kept, correction.at AS At, correction.text AS Text, correction.place AS Place, correction.done AS Done
            FROM correction JOIN kept ON kept.id = correction.kept JOIN state ON state.id = kept.state JOIN paper ON paper.id = state.paper
            WHERE paper.sort = @sort AND paper.name = @paper ORDER BY correction.id
            """,
            new { sort = PaperStore.Word(sort), paper })
        .Select(row => new Correction(row.Id, row.Kept, Instants.Read(row.At), row.Text, row.Place, row.Done is null ? null : Instants.Read(row.Done)))
        .ToArray());

    private sealed record Row(long Id, long Kept, string At, string Text, string Place, string? Done);
}

/// <summary>A correction of a published state.</summary>
/// <param name="Kept">The keeping that it is of.</param>
/// <param name="Place">Where it must go.</param>
/// <param name="Made">When it was made there; null as long as it waits.</param>
public sealed record Correction(long Id, long Kept, DateTimeOffset At, string Text, string Place, DateTimeOffset? Made);
