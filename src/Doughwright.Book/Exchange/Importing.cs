using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Book.Safety;
using Doughwright.Book.Schema;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Exchange;

/// <summary>What becomes of a paper that is to be taken in.</summary>
public enum Coming
{
    /// <summary>It is not in the book: it is laid into it.</summary>
    New,

    /// <summary>It is there to the last word.</summary>
    Same,

    /// <summary>It is there and says something else; as long as there is one of these, nothing is taken in.</summary>
    Other,
}

/// <summary>A paper of an export, and what becomes of it.</summary>
/// <param name="As">Its name in the book: another one when the name was taken by another paper.</param>
public sealed record ComingPaper(PaperSort Sort, string Uid, string Name, string As, Coming Becomes);

/// <summary>What came of an export.</summary>
/// <param name="Done">Whether it was taken in; otherwise nothing was changed.</param>
public sealed record ImportAnswer(bool Done, IReadOnlyList<ComingPaper> Papers, IReadOnlyList<ExchangeFault> Faults);

/// <summary>Takes an export into a book: all of it or nothing.</summary>
internal static class Importing
{
    /// <exception cref="BookException">The book cannot be written; nothing was changed.</exception>
    public static ImportAnswer Take(BookFile book, string from, PhotoLook look)
    {
        var faults = new ExchangeFaults();
        using var source = Source.Of(from, faults);
        var files = source is null ? null : Guard.Look(source, faults);
        if (files is null || faults.Any)
        {
            return new(false, [], faults.All);
        }

        var beside = $"{book.Path}.{Path.GetRandomFileName()}.unfinished";
        try
        {
            using var staged = Stage(beside, new(files, faults), look, faults);
            return faults.Any ? new(false, [], faults.All) : book.Write(open => Merging.Take(open, staged));
        }
        finally
        {
            foreach (var rest in new[] { "", "-wal", "-shm", "-journal" })
            {
                Copies.DeleteQuietly(beside + rest);
            }
        }
    }

    private static SqliteConnection Stage(string path, Unpacked files, PhotoLook look, ExchangeFaults faults)
    {
        var staged = BookFile.Connect(path, SqliteOpenMode.ReadWriteCreate);
        try
        {
            Forms.Shipped.BringForward(staged, path, 0);
            using var all = staged.BeginTransaction();
            new Staging(staged, files, look, faults).Take();
            if (!faults.Any)
            {
                foreach (var flaw in Verifier.Verify(staged, Forms.Shipped))
                {
                    faults.Add("import-flaw", ("what", flaw.ToString()));
                }
            }

            all.Commit();
            return staged;
        }
        catch (Exception problem)
        {
            staged.Dispose();
            if (problem is SqliteException library && BookException.Of(library, path) is { } told)
            {
                throw told;
            }

            throw;
        }
    }
}
