using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Book.Safety;

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
    }

    /// <summary>Of the file.</summary>
    public string Path => file.Path;

    public PaperStore Papers { get; }

    public KeptStore Kept { get; }

    public SaidStore Said { get; }

    /// <summary>Opens a book to write in it, and makes it when there is none. One of an older form is copied and then brought forward.</summary>
    /// <exception cref="BookException">It cannot be opened; nothing was changed.</exception>
    public static AuthorsBook Open(string path, TimeProvider clock) => new(
        BookFile.Open(path, (file, form) => _ = Copies.BeforeMigration(file, form, clock.GetUtcNow())), clock);

    /// <summary>Opens a book to read in it, whoever writes in it meanwhile.</summary>
    /// <exception cref="BookException">There is none, or it cannot be read.</exception>
    public static AuthorsBook OpenToRead(string path, TimeProvider clock) => new(BookFile.OpenToRead(path), clock);

    /// <summary>Whether everything in the file agrees with itself.</summary>
    /// <returns>What does not, line by line; nothing for a sound book.</returns>
    public IReadOnlyList<string> Verify() => Verifier.Verify(file);

    /// <summary>Copies the book as it is at this moment, and verifies the copy.</summary>
    /// <param name="to">File to be made; what is there is replaced at once when the copy is sound.</param>
    /// <exception cref="BookException">No sound copy could be made; what was there is still there.</exception>
    public void CopyTo(string to) => Copies.Make(file, to);

    /// <summary>Makes the copy of the day beside the book, when there is none yet, and lets go of those too old to be kept.</summary>
    /// <returns>The file, or null when the day had one.</returns>
    public string? CopyOfTheDay(DateTimeOffset now) => Copies.OfTheDay(file, now);

    public void Dispose() => file.Dispose();
}
