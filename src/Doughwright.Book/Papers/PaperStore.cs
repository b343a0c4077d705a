using Dapper;
using Doughwright.Book.Opening;
using Doughwright.Engine.TextForm;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Papers;

/// <summary>The papers of a book: what they are called, what they say, and the chain of states each has been in.</summary>
public sealed class PaperStore
{
    private const string Listing = """
        SELECT paper.uid AS Uid, paper.name AS Name, state.id AS State, state.hash AS Hash, state.at AS At, state.did AS Did,
               state.before AS Before, after.did AS Redo, paper.grown_from AS GrownFrom
        FROM paper
        JOIN state ON state.id = paper.now
        LEFT JOIN step_back ON step_back.paper = paper.id AND step_back.state = paper.now
        LEFT JOIN state AS after ON after.id = step_back.onward
        """;

    private readonly BookFile file;
    private readonly TimeProvider clock;

    /// <summary>
    /// Told when a paper of this name is in another state, is taken away or put back. It is on the disk by then. Whoever listens must not take long: the
    /// one who wrote waits. All are told, whatever one of them throws, and then it comes out at the one who wrote. What other programs write is not told.
    /// </summary>
    public event Action<PaperSort, string>? Changed;

    internal PaperStore(BookFile file, TimeProvider clock) => (this.file, this.clock) = (file, clock);

    /// <summary>Papers of a sort that are not taken away, in the order of names.</summary>
    public IReadOnlyList<Paper> All(PaperSort sort) => file.Use(open => Read(open, "WHERE paper.sort = @sort AND paper.taken_away IS NULL ORDER BY paper.name", new { sort = Word(sort) }));

    /// <summary>Those that were taken away.</summary>
    public IReadOnlyList<Paper> TakenAway(PaperSort sort) =>
        file.Use(open => Read(open, "WHERE paper.sort = @sort AND paper.taken_away IS NOT NULL ORDER BY paper.name", new { sort = Word(sort) }));

    /// <summary>A paper; null when none that is not taken away has this name.</summary>
    public Paper? Find(PaperSort sort, string name) => file.Use(open => Find(open, sort, name));

    /// <summary>What a paper says now; null when there is none.</summary>
    /// <exception cref="BookException">It is damaged.</exception>
    public string? Text(PaperSort sort, string name) => file.Use(open => Bodies.Read(
        open,
        file.Path,
        """
        paper JOIN state ON state.id = paper.now JOIN body ON body.hash = state.hash
        WHERE paper.sort = @sort AND paper.name = @name AND paper.taken_away IS NULL
        """,
        new { sort = Word(sort), name }));

    /// <summary>What every paper of a sort says now, by its name, in the order of names.</summary>
    public IReadOnlyList<(string Name, string Text)> Texts(PaperSort sort) => file.Use(open => open
        .Query<(string Name, string Text)>(
            """
            SELECT paper.name, body.text FROM paper JOIN state ON state.id = paper.now JOIN body ON body.hash = state.hash
            WHERE paper.sort = @sort AND paper.taken_away IS NULL ORDER BY paper.name
            """,
            new { sort = Word(sort) })
        .ToArray());

    /// <summary>What is written beside every paper of a sort, by its name: what kept states are called and what is noted of them, and what was put right where.</summary>
    public ILookup<string, string> Beside(PaperSort sort) => file.Use(open => open
        .Query<(string Name, string Words)>(
            """
            SELECT paper.name, kept.name FROM kept JOIN state ON state.id = kept.state JOIN paper ON paper.id = state.paper WHERE paper.sort = @sort
            UNION ALL
            SELECT paper.name, kept.note FROM kept JOIN state ON state.id = kept.state JOIN paper ON paper.id = state.paper WHERE paper.sort = @sort
            UNION ALL
            SELECT paper.name, correction.text FROM correction JOIN kept ON kept.id = correction.kept JOIN state ON state.id = kept.state
            JOIN paper ON paper.id = state.paper WHERE paper.sort = @sort
            UNION ALL
            SELECT paper.name, correction.place FROM correction JOIN kept ON kept.id = correction.kept JOIN state ON state.id = kept.state
            JOIN paper ON paper.id = state.paper WHERE paper.sort = @sort
            """,
            new { sort = Word(sort) })
        .Where(row => row.Words.Length > 0)
        .ToLookup(row => row.Name, row => row.Words, StringComparer.Ordinal));

    /// <summary>What a state says; null when there is none.</summary>
    /// <exception cref="BookException">It is damaged.</exception>
    public string? TextOf(long state) => file.Use(open => TextOf(open, state));

    /// <summary>The name of a paper that says exactly this; null when none that is not taken away does.</summary>
    public string? Saying(PaperSort sort, string text) => file.Use(open => open.QueryFirstOrDefault<string>(
        """
        SELECT paper.name FROM paper JOIN state ON state.id = paper.now
        WHERE paper.sort = @sort AND state.hash = @hash AND paper.taken_away IS NULL ORDER BY paper.name
        """,
        new { sort = Word(sort), hash = StateId.OfText(text) }));

    /// <summary>The paper that a state is of, whether it is taken away or not; null when there is no such state.</summary>
    public string? PaperOf(long state) => file.Use(open => open.ExecuteScalar<string?>(
        "SELECT paper.name FROM state JOIN paper ON paper.id = state.paper WHERE state.id = @state", new { state }));

    /// <summary>All states that a paper has been in, the latest first, whatever was taken back.</summary>
    public IReadOnlyList<StateOfPaper> States(PaperSort sort, string name) => file.Use(open => open
        .Query<StateRow>(
            """
            SELECT state.id AS Id, state.before AS Before, state.hash AS Hash, state.at AS At, state.did AS Did
            FROM state JOIN paper ON paper.id = state.paper WHERE paper.sort = @sort AND paper.name = @name ORDER BY state.id DESC
            """,
            new { sort = Word(sort), name })
        .Select(row => new StateOfPaper(row.Id, row.Before, row.Hash, Instants.Read(row.At), row.Did))
        .ToArray());

    /// <summary>Lays a new paper into the book, under the first of the names that is free; a paper that was taken away keeps its name.</summary>
    /// <param name="names">In turn; one of them must be free.</param>
    /// <param name="grownFrom">The state that it is an offshoot of.</param>
    /// <returns>The name it got.</returns>
    public string Lay(PaperSort sort, IEnumerable<string> names, string text, string did, long? grownFrom = null) => file.Write(open =>
    {
        var name = names.First(free => open.ExecuteScalar<int>("SELECT count(*) FROM paper WHERE sort = @sort AND name = @free", new { sort = Word(sort), free }) == 0);
        New(open, new(sort, name, [new(text, did)]), grownFrom);
        return name;
    });

    /// <summary>Fills a book that never held anything: all of it or nothing.</summary>
    /// <returns>Whether it was empty and is filled.</returns>
    public bool Fill(IEnumerable<FirstPaper> papers) => file.Write(open => open.ExecuteScalar<long>("SELECT count(*) FROM paper") == 0 && New(open, papers));

    /// <summary>Lays papers into the book, all of them or none. None of the names may be taken.</summary>
    public void LayAll(IEnumerable<(PaperSort Sort, string Name, string Text)> papers, string did) =>
        file.Write(open => New(open, papers.Select(paper => new FirstPaper(paper.Sort, paper.Name, [new(paper.Text, did)]))));

    /// <summary>Writes a paper down anew.</summary>
    /// <param name="from">The state that was changed.</param>
    public WriteAnswer Write(PaperSort sort, string name, long from, string text, string did) => Changing(sort, name, from, (open, paper, now) =>
    {
        var state = Append(open, paper, now, text, did);
        // What was taken back before is left to its own branch.
        open.Execute("DELETE FROM step_back WHERE paper = @paper", new { paper });
        return state;
    });

    /// <summary>Steps back to the state before.</summary>
    public WriteAnswer Undo(PaperSort sort, string name, long from) => Changing(sort, name, from, (open, paper, now) =>
    {
        if (open.ExecuteScalar<long?>("SELECT before FROM state WHERE id = @now", new { now }) is not { } before)
        {
            return null;
        }

        open.Execute("INSERT OR REPLACE INTO step_back (paper, state, onward) VALUES (@paper, @before, @now)", new { paper, before, now });
        return before;
    });

    /// <summary>Steps forward again to the state that was stepped back from.</summary>
    public WriteAnswer Redo(PaperSort sort, string name, long from) => Changing(sort, name, from, (open, paper, now) =>
        open.ExecuteScalar<long?>("SELECT onward FROM step_back WHERE paper = @paper AND state = @now", new { paper, now }));

    /// <summary>Takes a paper away. All its states stay in the book.</summary>
    /// <returns>Whether there was one.</returns>
    public bool TakeAway(PaperSort sort, string name) => Told(sort, name, file.Write(open =>
        open.Execute(
            "UPDATE paper SET taken_away = @at WHERE sort = @sort AND name = @name AND taken_away IS NULL",
            new { at = Instants.Write(clock.GetUtcNow()), sort = Word(sort), name }) == 1));

    /// <summary>Puts back a paper that was taken away.</summary>
    /// <returns>Whether there was one.</returns>
    public bool PutBack(PaperSort sort, string name) => Told(sort, name, file.Write(open =>
        open.Execute("UPDATE paper SET taken_away = NULL WHERE sort = @sort AND name = @name AND taken_away IS NOT NULL", new { sort = Word(sort), name }) == 1));

    internal static string Word(PaperSort sort) => sort.ToString().ToLowerInvariant();

    private string? TextOf(SqliteConnection open, long state) =>
        Bodies.Read(open, file.Path, "state JOIN body ON body.hash = state.hash WHERE state.id = @state", new { state });

    private static Paper? Find(SqliteConnection open, PaperSort sort, string name) =>
        Read(open, "WHERE paper.sort = @sort AND paper.name = @name AND paper.taken_away IS NULL", new { sort = Word(sort), name }).SingleOrDefault();

    private static Paper[] Read(SqliteConnection open, string where, object given) =>
    [
        .. open.Query<PaperRow>($"{Listing} {where}", given).Select(row =>
            new Paper(row.Uid, row.Name, row.State, row.Hash, Instants.Read(row.At), row.Did, row.Before is null ? null : row.Did, row.Redo, row.GrownFrom) { Before = row.Before }),
    ];

    /// <param name="change">Gives the state that the paper is in afterwards; null when there is none to go to.</param>
    private WriteAnswer Changing(PaperSort sort, string name, long from, Func<SqliteConnection, long, long, long?> change)
    {
        var answer = Change(sort, name, from, change);
        Told(sort, name, answer is WriteAnswer.Written);
        return answer;
    }

    /// <summary>Tells who listens, outside of the turn in which it was written.</summary>
    private bool Told(PaperSort sort, string name, bool isChanged)
    {
        if (isChanged)
        {
            Listeners.Tell(Changed, sort, name);
        }

        return isChanged;
    }

    private WriteAnswer Change(PaperSort sort, string name, long from, Func<SqliteConnection, long, long, long?> change) => file.Write<WriteAnswer>(open =>
    {
        var found = open.QuerySingleOrDefault<MarkRow>(
            "SELECT id AS Id, now AS Now FROM paper WHERE sort = @sort AND name = @name AND taken_away IS NULL", new { sort = Word(sort), name });
        if (found is null)
        {
            return new WriteAnswer.NoPaper();
        }

        if (found.Now != from)
        {
            return new WriteAnswer.Meanwhile(found.Now, HashOf(open, found.Now), TextOf(open, found.Now)!);
        }

        if (change(open, found.Id, found.Now) is not { } state)
        {
            return new WriteAnswer.Nothing();
        }

        open.Execute("UPDATE paper SET now = @state WHERE id = @paper", new { state, paper = found.Id });
        return new WriteAnswer.Written(state, HashOf(open, state));
    });

    private bool New(SqliteConnection open, IEnumerable<FirstPaper> papers)
    {
        foreach (var paper in papers)
        {
            New(open, paper, null);
        }

        return true;
    }

    private void New(SqliteConnection open, FirstPaper first, long? grownFrom)
    {
        var paper = open.ExecuteScalar<long>(
            "INSERT INTO paper (uid, sort, name, grown_from, taken_away) VALUES (@uid, @sort, @Name, @grownFrom, @away) RETURNING id",
            new
            {
                uid = Guid.NewGuid().ToString("N"),
                sort = Word(first.Sort),
                first.Name,
                grownFrom,
                away = first.IsTakenAway ? Instants.Write(clock.GetUtcNow()) : null,
            });
        long? state = null;
        foreach (var (text, did, at) in first.States)
        {
            state = Append(open, paper, state, text, did, at);
        }

        open.Execute("UPDATE paper SET now = @state WHERE id = @paper", new { state, paper });
    }

    private static string HashOf(SqliteConnection open, long state) => open.ExecuteScalar<string>("SELECT hash FROM state WHERE id = @state", new { state })!;

    /// <param name="then">When; null for now.</param>
    private long Append(SqliteConnection open, long paper, long? before, string text, string did, DateTimeOffset? then = null)
    {
        var hash = Bodies.Store(open, text);
        return open.ExecuteScalar<long>(
            "INSERT INTO state (paper, before, hash, at, did) VALUES (@paper, @before, @hash, @at, @did) RETURNING id",
            new { paper, before, hash, at = Instants.Write(then ?? clock.GetUtcNow()), did });
    }

    private sealed record PaperRow(string Uid, string Name, long State, string Hash, string At, string Did, long? Before, string? Redo, long? GrownFrom);

    private sealed record StateRow(long Id, long? Before, string Hash, string At, string Did);

    private sealed record MarkRow(long Id, long Now);
}
