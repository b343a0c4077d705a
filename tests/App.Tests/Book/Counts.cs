using Dapper;
using Doughwright.Book;

namespace Doughwright.App.Tests.Book;

/// <summary>How much is in a book.</summary>
/// <param name="Said">What was said alone: what is said of a recipe in the same go as it is published is no thing of its own.</param>
/// <param name="Made">Corrections that are made at their place.</param>
internal sealed record Counts(long States, long Kept, long Published, long Said, long Photos, long Corrections, long Made)
{
    public static readonly Counts None = new(0, 0, 0, 0, 0, 0, 0);

    private static readonly string[] Rows =
    [
        "state", "kept WHERE published = 0", "kept WHERE published = 1", "said WHERE value <> 'published'", "photo_of", "correction", "correction WHERE done IS NOT NULL",
    ];

    public static Counts Of(AuthorsBook book) => book.Opened.Use(open =>
    {
        var counted = Rows.Select(rows => open.ExecuteScalar<long>("SELECT count(*) FROM " + rows)).ToArray();
        return new Counts(counted[0], counted[1], counted[2], counted[3], counted[4], counted[5], counted[6]);
    });

    /// <summary>How much was done and not said any more: at most one thing, the one that was being done.</summary>
    public static int Ahead(Counts before, Counts now, IReadOnlyList<Acknowledged> told)
    {
        // A state that was gone back to is acknowledged again; it is no new one.
        var states = told.Where(line => line.What == "now").Select(line => line.Number).Where(state => state > before.States).Distinct().Count();
        long Told(string what) => told.Count(line => line.What == what);
        long[] ahead =
        [
            now.States - before.States - states,
            now.Kept - before.Kept - Told("kept"),
            now.Published - before.Published - Told("published"),
            now.Said - before.Said - Told("said"),
            now.Photos - before.Photos - Told("photo"),
            now.Corrections - before.Corrections - Told("correction"),
            now.Made - before.Made - Told("made"),
        ];
        Assert.All(ahead, one => Assert.True(one >= 0, "Something acknowledged is missing."));
        Assert.InRange(ahead.Sum(), 0, 1);
        return (int)ahead.Sum();
    }
}
