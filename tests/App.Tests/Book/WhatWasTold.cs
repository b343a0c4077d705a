using Dapper;
using Doughwright.Book;
using Doughwright.Book.Papers;

namespace Doughwright.App.Tests.Book;

/// <summary>
/// What the writing program was told to be done, looked for in the book: every state has its text, every keeping, photo and correction is there, and at most the last thing
/// done is ahead of what was said.
/// </summary>
internal static class WhatWasTold
{
    private const PaperSort Sort = PaperSort.Recipe;

    public static void IsThere(AuthorsBook fallen, IReadOnlyList<Acknowledged> told)
    {
        foreach (var line in told)
        {
            Look(fallen, line);
        }

        var (there, away) = (fallen.Papers.All(Sort), fallen.Papers.TakenAway(Sort));
        var states = there.Concat(away).ToDictionary(paper => paper.Name, paper => paper.State, StringComparer.Ordinal);
        Assert.InRange(Last(told, "now").Count(line => states[line.Name] != line.Number), 0, 1);
        Assert.InRange(Last(told, "away", "back").Count(line => away.Any(paper => paper.Name == line.Name) != (line.What == "away")), 0, 1);
        // A photo and what it is of are one thing; so are a published state and what is said of its recipe.
        Assert.Equal((0, 0), fallen.Opened.Use(open => open.QuerySingle<(int, int)>(
            """
            SELECT (SELECT count(*) FROM photo) - (SELECT count(*) FROM photo_of),
                   (SELECT count(*) FROM kept WHERE published = 1) - (SELECT count(*) FROM said WHERE value = 'published')
            """)));
    }

    private static void Look(AuthorsBook fallen, Acknowledged line)
    {
        switch (line.What)
        {
            case "now":
                Assert.Equal(line.Hash, fallen.Opened.Use(open => open.ExecuteScalar<string>("SELECT hash FROM state WHERE id = @Number", line)));
                break;
            case "kept" or "published":
                Assert.Contains(fallen.Kept.All(Sort, line.Name), one => (one.Id, one.Hash, one.Published) == (line.Number, line.Hash, line.What == "published"));
                break;
            case "photo":
                Assert.Equal(line.Hash, Photos.HashOf(fallen.Photos.Find(line.Hash)!.Bytes));
                Assert.Equal(line.Name, fallen.Opened.Use(open => open.ExecuteScalar<string>(
                    "SELECT paper.name FROM photo_of JOIN paper ON paper.id = photo_of.paper WHERE photo_of.hash = @Hash", line)));
                break;
            case "correction":
                Assert.Contains(fallen.Corrections.All(Sort, line.Name), one => (one.Kept, one.Text) == (line.Number, line.Hash));
                break;
            case "made":
                Assert.NotNull(fallen.Corrections.All(Sort, line.Name).Single(one => one.Id == line.Number).Made);
                break;
        }
    }

    /// <summary>The last line of these kinds for each paper.</summary>
    private static IEnumerable<Acknowledged> Last(IReadOnlyList<Acknowledged> told, params string[] kinds) =>
        told.Where(line => kinds.Contains(line.What)).GroupBy(line => line.Name).Select(lines => lines.Last());
}
