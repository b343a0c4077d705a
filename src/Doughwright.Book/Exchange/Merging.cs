using System.Globalization;
using Dapper;
using Doughwright.Book.Papers;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Exchange;

/// <summary>Takes the papers of one book into another. A paper is known by what it was given once, not by its name.</summary>
internal static class Merging
{
    public static ImportAnswer Take(SqliteConnection book, SqliteConnection staged)
    {
        var coming = RecordReader.All(staged);
        var there = RecordReader.All(book).ToDictionary(paper => paper.Uid, StringComparer.Ordinal);
        var names = there.Values.Select(paper => (paper.Sort, paper.Name)).ToHashSet();
        List<ComingPaper> told = [];
        foreach (var paper in coming)
        {
            var becomes = !there.TryGetValue(paper.Uid, out var present) ? Coming.New : paper.IsLike(present) ? Coming.Same : Coming.Other;
            told.Add(new(Enum.Parse<PaperSort>(paper.Sort, ignoreCase: true), paper.Uid, paper.Name, becomes == Coming.New ? Free(paper, names) : present!.Name, becomes));
        }

        if (told.Any(paper => paper.Becomes == Coming.Other))
        {
            return new(false, told, []);
        }

        book.Execute("INSERT INTO photo (hash, type, bytes) SELECT @Hash, @Type, @Bytes WHERE NOT EXISTS (SELECT 1 FROM photo WHERE hash = @Hash)", Photos(staged));
        var states = StatesOf(book);
        foreach (var (paper, laid) in coming.Zip(told).Where(both => both.Second.Becomes == Coming.New))
        {
            Lay(book, staged, paper, laid.As, states);
        }

        foreach (var paper in coming.Where(paper => paper.GrownFrom is not null))
        {
            book.Execute("UPDATE paper SET grown_from = @from WHERE uid = @Uid", new { from = states[paper.GrownFrom!.Value], paper.Uid });
        }

        return new(true, told, []);
    }

    private static void Lay(SqliteConnection book, SqliteConnection staged, PaperRecord paper, string name, Dictionary<(string, int), long> states)
    {
        var id = book.ExecuteScalar<long>(
            "INSERT INTO paper (uid, sort, name, taken_away) VALUES (@Uid, @Sort, @name, @TakenAway) RETURNING id", new { paper.Uid, paper.Sort, name, paper.TakenAway });
        foreach (var state in paper.States)
        {
            _ = Bodies.Store(book, Bodies.Read(staged, "", "body WHERE body.hash = @Hash", state)!);
            states[(paper.Uid, state.Number)] = book.ExecuteScalar<long>(
                "INSERT INTO state (paper, before, hash, at, did) VALUES (@id, @before, @Hash, @At, @Did) RETURNING id",
                new { id, before = state.Before is { } before ? states[(paper.Uid, before)] : (long?)null, state.Hash, state.At, state.Did });
        }

        long StateOf(int number) => states[(paper.Uid, number)];
        book.Execute("UPDATE paper SET now = @now WHERE id = @id", new { now = StateOf(paper.Now), id });
        book.Execute(
            "INSERT INTO step_back (paper, state, onward) VALUES (@id, @state, @onward)",
            paper.StepsBack.Select(step => new { id, state = StateOf(step.State), onward = StateOf(step.Onward) }));
        foreach (var kept in paper.Kept)
        {
            var made = book.ExecuteScalar<long>(
                "INSERT INTO kept (state, at, name, note, published) VALUES (@state, @At, @Name, @Note, @published) RETURNING id",
                new { state = StateOf(kept.State), kept.At, kept.Name, kept.Note, published = kept.Published ? 1 : 0 });
            book.Execute(
                "INSERT INTO correction (kept, at, text, place, done) VALUES (@made, @At, @Text, @Place, @Done)",
                kept.Corrections.Select(one => new { made, one.At, one.Text, one.Place, one.Done }));
        }

        book.Execute("INSERT INTO said (paper, at, what, value) VALUES (@id, @At, @What, @Value)", paper.Said.Select(said => new { id, said.At, said.What, said.Value }));
        book.Execute("INSERT INTO photo_of (paper, hash, at, words) VALUES (@id, @Hash, @At, @Words)", paper.Photos.Select(photo => new { id, photo.Hash, photo.At, photo.Words }));
    }

    private static Dictionary<(string, int), long> StatesOf(SqliteConnection book)
    {
        Dictionary<(string, int), long> states = [];
        Dictionary<string, int> counted = new(StringComparer.Ordinal);
        foreach (var (uid, id) in book.Query<(string Uid, long Id)>("SELECT paper.uid, state.id FROM state JOIN paper ON paper.id = state.paper ORDER BY state.id"))
        {
            var number = counted[uid] = counted.GetValueOrDefault(uid) + 1;
            states[(uid, number)] = id;
        }

        return states;
    }

    /// <summary>The paper's own name, or the same with a number.</summary>
    private static string Free(PaperRecord paper, HashSet<(string, string)> names) => Enumerable.Range(1, int.MaxValue)
        .Select(number => number == 1 ? paper.Name : string.Create(CultureInfo.InvariantCulture, $"{paper.Name}-{number}"))
        .First(name => names.Add((paper.Sort, name)));

    private static IEnumerable<PhotoRow> Photos(SqliteConnection staged) => staged.Query<PhotoRow>("SELECT hash AS Hash, type AS Type, bytes AS Bytes FROM photo ORDER BY hash", buffered: false);

    private sealed record PhotoRow(string Hash, string Type, byte[] Bytes);
}
