using Dapper;
using Doughwright.Book.Exchange;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Book.Safety;
using Doughwright.Book.Schema;

namespace Doughwright.Book;

/// <summary>One author's book: everything that was ever written down in it, in one file.</summary>
public sealed class AuthorsBook : IDisposable
{
    private readonly BookFile file;

    private AuthorsBook(BookFile file, TimeProvider clock)
    {
        this.file = file;
        Papers = new(file, clock);
        Kept = new(file, clock);
        Said = new(file, clock);
        Corrections = new(file, clock);
        Photos = new(file, clock);
    }

    /// <summary>Of the file.</summary>
    public string Path => file.Path;

    public PaperStore Papers { get; }

    public KeptStore Kept { get; }

    public SaidStore Said { get; }

    public CorrectionStore Corrections { get; }

    public PhotoStore Photos { get; }

    /// <summary>The file, for what looks behind the stores.</summary>
    internal BookFile Opened => file;

    /// <summary>Opens a book to write in it, and makes it when there is none. One of an older form is copied and then brought forward.</summary>
    /// <exception cref="BookException">It cannot be opened; nothing was changed.</exception>
    public static AuthorsBook Open(string path, TimeProvider clock) => Open(path, clock, Forms.Shipped);

    /// <summary>Opens a book to read in it, whoever writes in it meanwhile.</summary>
    /// <exception cref="BookException">There is none, or it cannot be read.</exception>
    public static AuthorsBook OpenToRead(string path, TimeProvider clock) => new(BookFile.OpenToRead(path, Forms.Shipped), clock);

    /// <summary>Whether a book of any form agrees with itself, its log included.</summary>
    /// <returns>Where it does not; nothing for a sound book.</returns>
    /// <exception cref="BookException">There is none, or it cannot be read at all.</exception>
    public static IReadOnlyList<Flaw> Examine(string path)
    {
        try
        {
            using var file = BookFile.OpenToCopy(path, Forms.Shipped);
            return Verifier.Verify(file);
        }
        catch (BookException problem) when (problem.Trouble is BookTrouble.Damaged or BookTrouble.LogDamaged)
        {
            return [new(problem.Trouble == BookTrouble.LogDamaged ? FlawKind.Log : FlawKind.File, problem.Message)];
        }
    }

    /// <summary>Copies that lie beside a book, the latest first, sound or not.</summary>
    /// <exception cref="BookException">They cannot be read.</exception>
    public static IReadOnlyList<BookCopy> CopiesOf(string path) => Copies.Of(path);

    /// <summary>The latest copy beside a book that agrees with itself; null when there is none.</summary>
    /// <exception cref="BookException">They cannot be read.</exception>
    public static BookCopy? LatestSoundCopy(string path) => Copies.LatestSound(path, Forms.Shipped);

    /// <summary>Brings a book back from a copy. What was the book before is set aside under another name.</summary>
    /// <param name="from">The copy; null takes what is left of a book that lost the end of its log, or else the latest sound copy.</param>
    /// <exception cref="BookException">There is no sound copy, or somebody has the book open, or it cannot be written; the book is as it was.</exception>
    public static BroughtBack BringBack(string path, string? from, TimeProvider clock) => Restoring.Bring(path, from, Forms.Shipped, clock.GetUtcNow());

    /// <summary>Copies a book of any form beside whoever writes in it, and verifies the copy.</summary>
    /// <param name="to">File to be made, which must not be there; null makes one among the copies beside the book, which is never let go.</param>
    /// <returns>The file.</returns>
    /// <exception cref="BookException">No sound copy could be made; what was there is still there.</exception>
    public static string BackUp(string path, string? to, TimeProvider clock)
    {
        using var file = BookFile.OpenToCopy(path, Forms.Shipped);
        if (to is null)
        {
            return Copies.ByHand(file, clock.GetUtcNow());
        }

        if (System.IO.Path.Exists(to))
        {
            throw new BookException(BookTrouble.Taken, to, "");
        }

        Copies.Make(file, to);
        return to;
    }

    /// <summary>Writes the book out as plain files that give an equal book again.</summary>
    /// <param name="to">A folder that is not there or empty, or a file ending in .zip that is not there.</param>
    /// <returns>How many papers were written.</returns>
    /// <exception cref="BookException">It cannot be read, or the files cannot be written; nothing stays of them.</exception>
    public int Export(string to) => Exporting.Write(file, to);

    /// <summary>Takes an export into the book: all of it or nothing.</summary>
    /// <param name="from">A folder or an archive.</param>
    /// <param name="look">Looks at each of its photos.</param>
    /// <exception cref="BookException">The book cannot be written; nothing was changed.</exception>
    public ImportAnswer Import(string from, PhotoLook look) => Importing.Take(file, from, look);

    /// <summary>How much is in it.</summary>
    public BookSize Size() => file.Read(open => open.QuerySingle<BookSize>(
        """
        SELECT (SELECT count(*) FROM paper) AS Papers, (SELECT count(*) FROM state) AS States, (SELECT count(*) FROM kept) AS Kept, (SELECT count(*) FROM photo) AS Photos
        """));

    /// <summary>Whether everything in the file agrees with itself.</summary>
    /// <returns>What does not, line by line; nothing for a sound book.</returns>
    public IReadOnlyList<string> Verify() => [.. Verifier.Verify(file).Select(flaw => flaw.ToString())];

    /// <summary>Copies the book as it is at this moment, and verifies the copy.</summary>
    /// <param name="to">File to be made; what is there is replaced at once when the copy is sound.</param>
    /// <exception cref="BookException">No sound copy could be made; what was there is still there.</exception>
    public void CopyTo(string to) => Copies.Make(file, to);

    /// <summary>Makes the copy of the day beside the book, when there is none yet, and lets go of those too old to be kept.</summary>
    /// <returns>The file, or null when the day had one.</returns>
    /// <exception cref="BookException">No sound copy could be made; no older one was let go.</exception>
    public string? CopyOfTheDay(DateTimeOffset now) => Copies.OfTheDay(file, now);

    public void Dispose() => file.Dispose();

    internal static AuthorsBook Open(string path, TimeProvider clock, Forms forms) => new(
        BookFile.Open(path, forms, (file, form) => _ = Copies.BeforeMigration(file, form, clock.GetUtcNow())), clock);
}
