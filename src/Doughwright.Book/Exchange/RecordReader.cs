using Dapper;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Exchange;

/// <summary>Reads what a book says of its papers, in an order that goes by names alone.</summary>
internal static class RecordReader
{
    public static IReadOnlyList<PaperRecord> All(SqliteConnection open)
    {
        var states = open.Query<StateRow>("SELECT id AS Id, paper AS Paper, before AS Before, hash AS Hash, at AS At, did AS Did FROM state ORDER BY id").ToArray();
        Dictionary<long, int> numbers = [];
        foreach (var paper in states.GroupBy(state => state.Paper))
        {
            foreach (var (index, state) in paper.Index())
            {
                numbers[state.Id] = index + 1;
            }
        }

        var papers = open.Query<PaperRow>("SELECT id AS Id, uid AS Uid, sort AS Sort, name AS Name, now AS Now, grown_from AS GrownFrom, taken_away AS TakenAway FROM paper").ToArray();
        var uids = papers.ToDictionary(paper => paper.Id, paper => paper.Uid);
        var paperOf = states.ToDictionary(state => state.Id, state => state.Paper);
        var corrections = open.Query<CorrectionRow>("SELECT kept AS Kept, at AS At, text AS Text, place AS Place, done AS Done FROM correction ORDER BY id")
            .ToLookup(row => row.Kept, row => new CorrectionRecord(row.At, row.Text, row.Place, row.Done));
        var statesOf = states.ToLookup(state => state.Paper, state => new StateRecord(numbers[state.Id], state.Before is { } before ? numbers[before] : null, state.Hash, state.At, state.Did));
        var stepsOf = open.Query<StepRow>("SELECT paper AS Paper, state AS State, onward AS Onward FROM step_back ORDER BY state")
            .ToLookup(row => row.Paper, row => new StepBackRecord(numbers[row.State], numbers[row.Onward]));
        var keptOf = open.Query<KeptRow>("SELECT id AS Id, state AS State, at AS At, name AS Name, note AS Note, published AS Published FROM kept ORDER BY id")
            .ToLookup(row => paperOf[row.State], row => new KeptRecord(numbers[row.State], row.At, row.Name, row.Note, row.Published != 0) { Corrections = [.. corrections[row.Id]] });
        var saidOf = open.Query<SaidRow>("SELECT paper AS Paper, at AS At, what AS What, value AS Value FROM said ORDER BY id")
            .ToLookup(row => row.Paper, row => new SaidRecord(row.At, row.What, row.Value));
        var photosOf = open.Query<PhotoRow>("SELECT paper AS Paper, hash AS Hash, at AS At, words AS Words FROM photo_of ORDER BY hash")
            .ToLookup(row => row.Paper, row => new PhotoOfRecord(row.Hash, row.At, row.Words));
        return
        [
            .. papers
                .OrderBy(paper => paper.Sort, StringComparer.Ordinal)
                .ThenBy(paper => paper.Name, StringComparer.Ordinal)
                .Select(paper => new PaperRecord(
                    paper.Uid, paper.Sort, paper.Name, numbers[paper.Now], paper.GrownFrom is { } from ? (uids[paperOf[from]], numbers[from]) : null, paper.TakenAway)
                {
                    States = [.. statesOf[paper.Id]],
                    StepsBack = [.. stepsOf[paper.Id]],
                    Kept = [.. keptOf[paper.Id]],
                    Said = [.. saidOf[paper.Id]],
                    Photos = [.. photosOf[paper.Id]],
                }),
        ];
    }

    private sealed record PaperRow(long Id, string Uid, string Sort, string Name, long Now, long? GrownFrom, string? TakenAway);

    private sealed record StateRow(long Id, long Paper, long? Before, string Hash, string At, string Did);

    private sealed record StepRow(long Paper, long State, long Onward);

    private sealed record KeptRow(long Id, long State, string At, string Name, string Note, long Published);

    private sealed record CorrectionRow(long Kept, string At, string Text, string Place, string? Done);

    private sealed record SaidRow(long Paper, string At, string What, string Value);

    private sealed record PhotoRow(long Paper, string Hash, string At, string Words);
}
