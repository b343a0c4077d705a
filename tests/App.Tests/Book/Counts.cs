using Dapper;
using Doughwright.Book;

namespace Doughwright.App.Tests.Book;

/// <summary>How much is in a book.</summary>
internal sealed record Counts(long States, long Kept, long Said)
{
    public static readonly Counts None = new(0, 0, 0);

    public static Counts Of(AuthorsBook book) => book.Opened.Use(open => new Counts(
        open.ExecuteScalar<long>("SELECT count(*) FROM state"), open.ExecuteScalar<long>("SELECT count(*) FROM kept"), open.ExecuteScalar<long>("SELECT count(*) FROM said")));

    /// <summary>How much was done and not said any more: at most one thing, the one that was being done.</summary>
    public static int Ahead(Counts before, Counts now, IReadOnlyList<Acknowledged> told)
    {
        // A state that was gone back to is acknowledged again; it is no new one.
        var states = told.Where(line => line.What == "now").Select(line => line.Number).Where(state => state > before.States).Distinct().Count();
        long[] ahead =
        [
            now.States - before.States - states,
            now.Kept - before.Kept - told.Count(line => line.What == "kept"),
            now.Said - before.Said - told.Count(line => line.What == "said"),
        ];
        Assert.All(ahead, one => Assert.True(one >= 0, "Something acknowledged is missing."));
        Assert.InRange(ahead.Sum(), 0, 1);
        return (int)ahead.Sum();
    }
}
